import { PLACE_VOCABULARY, VESSEL_VOCABULARY, type Vocabulary } from '@tailshaft/vocabulary';
import {
  type DatedFact,
  type Disagreeing,
  datedIn,
  disagreeingIn,
  disagreeingInPart,
} from '../../analysis/disagreeing.js';
import type { LineContext } from '../../judge/context.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf, type Part } from '../../model/part.js';
import { type Apart, apart, each, KeptBy } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';

const AT_PLACE = '      engine Kittiwake-9 at medium { flywheel aft }';

const INFO: RuleInfo = {
  id: 'paper/place-against-entry',
  title: 'Facts of a part agree with its catalogue entry and with one another',
  mistakes: [],
  severity: 'note',
  criterion:
    'facts stated for a part in its line against its catalogue entry; figures against those that they cannot exceed, ' +
    'and points of one curve at one speed; dates against today',
  source: { title: 'two statements of one fact', confidence: 'common practice' },
  manual:
    'A fact stated for a part in its line takes precedence over its catalogue entry, because this one was ' +
    'modified or measured. It can also be used to force a maker’s figure to fit, and every check then uses ' +
    'the forced figure. Each difference is therefore reported for review. State the evidence in the line, ' +
    'correct the entry, or remove the figure from the line. A taper thicker than its shaft, a yield above the ' +
    'strength, two torques at one speed or a measurement dated tomorrow cannot be: it is a warning, and what rests ' +
    'on either figure waits.',
  caution: 'The rule cannot know which of the two is right.',
  noFigure: 'two statements of one thing, either of which may be true',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, [AT_PLACE, AT_PLACE.replace('flywheel aft', 'flywheel aft  cylinders 8')]),
    passing: changed(SINGLE_LINE, [AT_PLACE, AT_PLACE.replace('flywheel aft', 'flywheel aft  cylinders 6')]),
    cannotTell: 'It speaks only where both are known.',
  })),
};

export const placeAgainstEntry: Rule = { ...INFO, scope: 'line', check, judgesEvidence: true };

function check(context: LineContext): Apart<Verdict> {
  const { line, vessel } = context;
  const { hull } = vessel;
  // The hull is told once: with the first line there is.
  const isFirst = vessel.arrangements[0]?.lines[0]?.path === line.path;
  return apart(
    () => each(line.chain, part => judge(line.name, part)),
    () =>
      each(line.chain, part => {
        const vocabulary = PLACE_VOCABULARY[part.role]!;
        const about = { subject: part.path, who: `${line.name}: ${nameOf(part)}`, context };
        const { disagreeing, dated } = statedOf(part, vocabulary);
        return against(
          about,
          disagreeing,
          dated.filter(one => one.date > context.today),
        );
      }),
    () =>
      hull && isFirst
        ? against(
            { subject: vessel.name, who: `the hull of ${vessel.name}`, context },
            disagreeingIn(hull, VESSEL_VOCABULARY.hull!),
            datedIn(hull, VESSEL_VOCABULARY.hull!).filter(one => one.date > context.today),
          )
        : undefined,
  );
}

/** What a part states against itself, and when: looked through once, for all candidates of a study in which it is the same. */
function statedOf(part: Part, vocabulary: Vocabulary) {
  return stated.once(part, () => ({
    disagreeing: disagreeingInPart(part),
    dated: datedIn(part, vocabulary),
  }));
}

const stated = new KeptBy<Part>();

interface About {
  readonly subject: string;
  readonly who: string;
  readonly context: LineContext;
}

/** What cannot be, whichever of two figures is wrong. */
function against(
  { subject, who, context }: About,
  all: readonly Disagreeing[],
  dated: readonly DatedFact[],
): Apart<Verdict> {
  const say = sayFor(INFO, subject);
  return apart(
    () =>
      each(all, ({ facts: [one, other], words, onlyFirst }) =>
        say.fails({
          severity: 'warning',
          place: one.origin,
          message: `${who} cannot be as stated: ${words}. One of the two ${onlyFirst ? 'statements' : 'figures'} is wrong: look both up.`,
          disputes: onlyFirst ? [one] : [one, other],
          related: [{ at: other.origin, message: `the other ${onlyFirst ? 'statement' : 'figure'}` }],
        }),
      ),
    () =>
      each(dated, ({ fact, date, words }) =>
        say.fails({
          severity: 'warning',
          place: fact.origin,
          message: `${who}: ${words} ${fact.written} is dated ${date}, and today is ${context.today}. Correct the date, or mark what is only planned as assumed.`,
        }),
      ),
  );
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
