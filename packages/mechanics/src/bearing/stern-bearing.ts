import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import type { Value } from '../core/value.js';
import { atLeast, atMost, below } from '../geometry/rounding-slack.js';
import { type SternBearingRule, sternBearingRules } from '../tables/stern-bearings.js';

/** Length of a plain bearing in shaft diameters. –; L, d m. */
export const bearingLengthInDiameters = /* @__PURE__ */ formula({
  name: 'bearing length in diameters',
  symbol: 'L/d',
  dimension: 'ratio',
  inputs: { length: 'length', diameter: 'length' },
  text: 'L / d',
  symbols: { length: 'L', diameter: 'd' },
  source: { title: 'definition', confidence: 'derived' },
  range: 'A definition.',
  compute: ({ length, diameter }) => length / diameter,
});

/** What the rule says to a bearing: enough by length, enough by pressure as well, too short, or not to be told. */
export type SternBearingVerdict =
  | { readonly result: 'long enough'; readonly rule: SternBearingRule }
  | {
      readonly result: 'short, allowed on a condition';
      readonly rule: SternBearingRule;
      readonly condition: string;
    }
  | { readonly result: 'too short'; readonly rule: SternBearingRule }
  | { readonly result: 'length needed' | 'pressure needed'; readonly rule: SternBearingRule };

/** Judges an aft stern bearing by IACS UR M52 and M85; the pressure matters only between the two lengths. */
export function judgeSternBearing(
  kind: SternBearingRule['kind'],
  lengthInDiameters: Value<'ratio'>,
  pressure?: Value<'pressure'>,
): SternBearingVerdict {
  const rule = sternBearingRules.find(one => one.kind === kind)!;
  const { shorter } = rule;
  if (Number.isNaN(lengthInDiameters.si)) return { result: 'length needed', rule };
  if (atLeast(lengthInDiameters.si, rule.lengthOverDiameter)) return { result: 'long enough', rule };
  if (!shorter || !atLeast(lengthInDiameters.si, shorter.lengthOverDiameter))
    return { result: 'too short', rule };
  if (shorter.pressure) {
    if (!pressure || Number.isNaN(pressure.si)) return { result: 'pressure needed', rule };
    const { limit, strictly } = shorter.pressure;
    const held = strictly ? below(pressure.si, limit) : atMost(pressure.si, limit);
    if (!held) return { result: 'too short', rule };
  }
  return { result: 'short, allowed on a condition', rule, condition: shorter.condition };
}

const STRUT: Source = {
  title: "strut maker's page on small-craft and navy practice",
  clause: 'bearing length and wall',
  confidence: 'published',
};

/** Least length of a small-craft strut bearing. L, d m. */
export const strutBearingLength = /* @__PURE__ */ formula({
  name: 'strut bearing length',
  symbol: 'L',
  dimension: 'length',
  inputs: { diameter: 'length' },
  text: 'L = 4 d',
  symbols: { diameter: 'd' },
  source: STRUT,
  range: 'Water-lubricated strut bearings of small craft.',
  compute: ({ diameter }) => 4 * diameter,
});

/** Least outside diameter of the strut or tube bearing that a shaft needs, wall a quarter of the shaft. m. */
export const strutBearingOutside = /* @__PURE__ */ formula({
  name: 'outside diameter that a strut bearing needs',
  symbol: 'D_b',
  dimension: 'length',
  inputs: { diameter: 'length' },
  text: 'D_b = d + 2 (d/4)',
  symbols: { diameter: 'd' },
  source: STRUT,
  range: 'Water-lubricated strut bearings of small craft.',
  compute: ({ diameter }) => 1.5 * diameter,
});
