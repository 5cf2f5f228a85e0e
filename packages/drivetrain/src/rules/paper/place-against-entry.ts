import type { LineContext } from '../../judge/context.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf, type Part } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';

const AT_PLACE = '      engine Kittiwake-9 at medium { flywheel aft }';

const INFO: RuleInfo = {
  id: 'paper/place-against-entry',
  title: 'Facts of a part in its line agree with its catalogue entry',
  mistakes: [],
  severity: 'note',
  criterion: 'facts stated for a part in its line against the same facts of its catalogue entry',
  source: { title: 'two statements of one fact', confidence: 'common practice' },
  manual:
    'A fact stated for a part in its line takes precedence over its catalogue entry, because this one was ' +
    'modified or measured. It can also be used to force a maker’s figure to fit, and every check then uses ' +
    'the forced figure. Each difference is therefore reported for review. State the evidence in the line, ' +
    'correct the entry, or remove the figure from the line.',
  caution: 'The rule cannot know which of the two is right.',
  noFigure: 'two statements of one thing, either of which may be true',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, [AT_PLACE, AT_PLACE.replace('flywheel aft', 'flywheel aft  cylinders 8')]),
    passing: changed(SINGLE_LINE, [AT_PLACE, AT_PLACE.replace('flywheel aft', 'flywheel aft  cylinders 6')]),
    cannotTell: 'It speaks only where both are known.',
  })),
};

export const placeAgainstEntry: Rule = { ...INFO, scope: 'line', check, judgesEvidence: true };

function check({ line }: LineContext): Apart<Verdict> {
  return each(line.chain, part => judge(line.name, part));
}

function judge(line: string, part: Part): Verdict | undefined {
  const { restated = [] } = part;
  const say = sayFor(INFO, part.path);
  const [first] = restated;
  if (!first) return undefined;
  const other = restated.filter(one => !one.same);
  if (other.length === 0)
    return say.holds({
      place: first.atPlace.origin,
      message: `${line}: ${nameOf(part)} agrees with its catalogue entry.`,
    });
  const words = other.map(one => `${one.property} ${one.atPlace.written}, against ${one.inEntry.written}`);
  return say.fails({
    place: other[0]!.atPlace.origin,
    message: `${line}: the facts of ${nameOf(part)} in the line differ from its catalogue entry: ${words.join('; ')}. Checks use the figure in the line: state its evidence, or correct the entry.`,
    related: other.map(one => ({ at: one.inEntry.origin, message: `${one.property} of the entry` })),
  });
}
