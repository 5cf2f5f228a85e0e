import { compareSpecs } from '@tailshaft/drivetrain';
import { formatText } from '@tailshaft/language';
import checkSchema from 'tailshaft/schema/check.schema.json' with { type: 'json' };
import compareSchema from 'tailshaft/schema/compare.schema.json' with { type: 'json' };
import { checkJson, questionJson, specJson } from '../report/check-json.js';
import { comparisonJson } from '../report/compare-json.js';
import { OpenQuestions } from '../report/open-questions.js';
import { addTo, emptyTally } from '../report/tally.js';
import { comparable, type NamedSet } from '../specs/spec-set.js';
import { VERSION } from '../version.js';
import type { Library } from './api.js';
import { type JudgedText, judgeText } from './judge.js';

/** A margin that shrinks by so much is lost, as on the command line. */
const MARGIN_LOST = 0.1;

const library: Library = {
  async check(text, files = {}, options = {}) {
    const { spec, spots, today } = await judgeText(text, files, options);
    const tally = emptyTally();
    addTo(tally, { spec });
    const questions = new OpenQuestions();
    questions.take(questions.askedIn(spots, spec));
    const asked = questions.list.map(one => questionJson(one));
    return checkJson([specJson(spots, spec)], [], tally, today, asked);
  },

  async compare(before, after, options = {}) {
    const [one, other] = [
      setOf('before', await judgeText(before.text, before.files ?? {}, options)),
      setOf('after', await judgeText(after.text, after.files ?? {}, options)),
    ];
    const sets = comparable(one, other);
    return comparisonJson('before', 'after', compareSpecs(sets.before, sets.after), MARGIN_LOST);
  },

  format: formatText,
  schemas: { check: checkSchema, compare: compareSchema },
  version: VERSION,
};

function setOf(label: string, { spec }: JudgedText): NamedSet {
  return { label, specs: [spec], below: path => path, refused: [] };
}

export const { check, compare, format, schemas, version } = library;
