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
  title: 'Facts of a part at its place agree with its catalogue entry',
  mistakes: [],
  severity: 'note',
  criterion: 'what is written at the place of a part against the same property of its entry',
  source: { title: 'two statements of one fact', confidence: 'common practice' },
  manual:
    'A fact at the place of a part takes precedence over that of its catalogue entry: this one was modified, or measured. ' +
    'It is also how a maker’s figure is made to agree with what it does not fit, and every check then uses the figure of ' +
    'the place. Each such difference is told, so that somebody sees it. Say at the place how it is known, correct the entry, ' +
    'or leave the figure of the entry alone.',
  caution: 'It does not say which of the two is true.',
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
      message: `${line}: ${nameOf(part)} says at its place what its entry says.`,
    });
  const words = other.map(
    one => `${one.property} ${one.atPlace.written}, where the entry says ${one.inEntry.written}`,
  );
  return say.fails({
    place: other[0]!.atPlace.origin,
    message: `${line}: at its place ${nameOf(part)} has ${words.join('; ')}. Every check uses the figure of the place: say how it is known, or correct the entry.`,
    related: other.map(one => ({ at: one.inEntry.origin, message: `${one.property} of the entry` })),
  });
}
