import type { Dimension, Source } from '@tailshaft/mechanics';
import { spell } from '@tailshaft/vocabulary';
import type { UnitsContext } from '../../judge/context.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
import type { UnitConcern } from '../../model/vessel.js';
import type { Rule, RuleInfo } from '../rule.js';

export const SP811: Source = {
  title: 'Guide for the Use of the International System of Units (SI), NIST Special Publication 811',
  author: 'A. Thompson, B. N. Taylor',
  year: 2008,
  clause: 'Appendix B',
  confidence: 'published',
};

/** What a rule on units says of each thing that may be wrong with one. */
export interface UnitWords {
  /** Dimensions that the rule is for. */
  readonly dimensions: readonly Dimension[];
  /** Spellings that it takes from other rules, whatever the dimension. */
  readonly spellings?: readonly string[];
  /** Why it matters, with numbers. */
  readonly why: string;
}

/** A rule over the quantities as written: it fails for each one whose unit cannot be relied on. */
export function unitRule(info: RuleInfo, words: UnitWords): Rule {
  return {
    ...info,
    curesRecord: true,
    scope: 'units',
    check: context => judge(info, context, concern => concerns(words, concern), words),
  };
}

function concerns(words: UnitWords, concern: UnitConcern): boolean {
  return (
    words.dimensions.includes(concern.dimension) ||
    (concern.unit !== undefined && words.spellings?.includes(concern.unit) === true)
  );
}

function judge(
  info: RuleInfo,
  context: UnitsContext,
  mine: (concern: UnitConcern) => boolean,
  words: UnitWords,
): Verdict | Apart<Verdict> | undefined {
  const say = sayFor(info, context.subject);
  const own = context.concerns.filter(mine);
  if (own.length > 0) {
    return each(own, concern =>
      say.fails({
        place: concern.origin,
        message: `${whatIsWrong(concern)} ${concern.meant ? NOTHING_COMPUTED : words.why}`,
        routes: () =>
          concern.choices.map(choice => ({
            title: `Write ${spell(choice.value)}${choice.means ? `: ${choice.means}` : ''}`,
            edits: [{ do: 'replace' as const, at: concern.origin, value: choice.value }],
          })),
      }),
    );
  }
  const judged = context.quantities.filter(one => words.dimensions.includes(one.value.dimension));
  if (judged.length === 0) return undefined;
  return say.holds({
    place: judged[0]!.origin,
    message: `${context.subject}: ${judged.length === 1 ? 'the quantity has' : `all ${judged.length} quantities have`} a unit with one meaning.`,
  });
}

/** A misspelt unit is told as such: what its kinds differ by is beside the point. */
const NOTHING_COMPUTED = 'Nothing is computed with it until then.';

function whatIsWrong(concern: UnitConcern): string {
  const { kind, property, written, unit, dimension, meant } = concern;
  if (kind === 'no unit') return `"${property} ${written}" has no unit.`;
  if (kind === 'ambiguous unit') return `"${unit}" in "${property} ${written}" means more than one unit.`;
  if (kind === 'wrong dimension')
    return `"${property}" is a ${dimension}, and "${unit}" does not measure one.`;
  const near = meant ? ` Did you mean ${meant}?` : '';
  return `"${unit}" in "${property} ${written}" is not a known unit.${near}`;
}
