import type { Source } from '@tailshaft/mechanics';
import type { EntryContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { USUAL_YEARS, yearsBetween } from './years.js';

const PRACTICE: Source = {
  title: 'Data sheets older than about ten years are renewed',
  confidence: 'common practice',
};

const INFO: RuleInfo = {
  id: 'paper/source-age',
  title: 'Data sheets are named, dated and current',
  mistakes: ['U09'],
  severity: 'warning',
  criterion:
    'source of an engine, motor, gear, transfer or coupling not older than 10 years on the day of the check',
  source: PRACTICE,
  manual:
    'Ratings are revised: the same model name has carried different torque limits in different years. A ' +
    'catalogue entry names the document that its figures come from, with its date. Ask for the current issue ' +
    'where the document is old; one without a date cannot be judged.',
  caution:
    'A gear that has been in service for twenty years may need the sheet of its own year: state that in the ' +
    'title of the source.',
  noFigure: 'a record or its dates',
  standsWithout: 'anything',
  curesRecord: true,
  noCure: 'Only a newer sheet settles it.',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['issue 4" dated 2025-02-10', 'issue 1" dated 2013-02-10']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, ['issue 4" dated 2025-02-10', 'issue 4"']),
  })),
};

export const sourceAge: Rule = { ...INFO, scope: 'entry', check };

const RATED = ['engine', 'motor', 'gear', 'transfer', 'coupling'];

function check({ entry: one, today }: EntryContext): Verdict | undefined {
  if (!RATED.includes(one.kind)) return undefined;
  const { name, origin, nameOrigin, facts } = one.entry;
  const say = sayFor(INFO, name);
  const needs = new Needs();
  const source = needs.fact(facts.source, {
    what: `source of ${one.kind} ${name}`,
    host: origin,
    property: 'source',
  });
  if (source && !source.dated)
    needs.miss(
      { what: `date of the source of ${one.kind} ${name}`, host: origin, property: 'source' },
      facts.source?.origin,
    );
  if (!source?.dated) {
    return say.cannotTell(needs, {
      place: source && facts.source ? facts.source.origin : nameOrigin,
      message: source
        ? `The source of ${one.kind} ${name}, "${source.title}", has no date: write it as source "${source.title}" dated 2025-01-31.`
        : `${one.kind} ${name} has no source: write source "title of the sheet" dated 2025-01-31.`,
    });
  }
  const age = yearsBetween(source.dated, today);
  const place = facts.source!.origin;
  if (source.dated > today)
    return say.fails({
      place,
      message: `"${source.title}", from which the figures of ${name} come, is dated ${source.dated}, which is still to come: a sheet that nobody has yet proves nothing. Write the date of the sheet in hand.`,
    });
  if (age <= USUAL_YEARS)
    return say.holds({ place, message: `${name}: "${source.title}" is ${age.toFixed(1)} years old.` });
  return say.fails({
    place,
    message: `"${source.title}", from which the figures of ${name} come, is ${Math.floor(age)} years old (limit ${USUAL_YEARS}). Ratings change under the same name: ask for the current sheet, or say in the title why the old one governs.`,
  });
}
