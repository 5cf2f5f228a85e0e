import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import type { Value } from '../core/value.js';
import { atMost } from '../geometry/rounding-slack.js';

const ISO281: Source = { title: 'ISO 281', clause: 'basic rating life', year: 2007, confidence: 'published' };

/** Exponent of the life equation. */
export const lifeExponent = { ball: 3, roller: 10 / 3 } as const;

const exponentRule = {
  condition: 'the exponent is 3 for ball or 10/3 for roller bearings',
  met: (si: { readonly exponent: number }) => si.exponent === 3 || Math.abs(si.exponent - 10 / 3) < 1e-3,
};

/** Equivalent load of radial and axial loads. P, F_r, F_a N; V 1 when the inner ring turns, 1.2 when the outer does. */
export const equivalentBearingLoad = /* @__PURE__ */ formula({
  name: 'equivalent bearing load',
  symbol: 'P',
  dimension: 'force',
  inputs: {
    radialLoad: 'force',
    axialLoad: 'force',
    radialFactor: 'number',
    axialFactor: 'number',
    ringFactor: 'number',
  },
  text: 'P = X V F_r + Y F_a',
  symbols: { radialLoad: 'F_r', axialLoad: 'F_a', radialFactor: 'X', axialFactor: 'Y', ringFactor: 'V' },
  source: ISO281,
  range: 'X and Y come from the bearing catalogue for this ratio of loads.',
  compute: ({ radialLoad, axialLoad, radialFactor, axialFactor, ringFactor }) =>
    radialFactor * ringFactor * radialLoad + axialFactor * axialLoad,
});

/** Life that 90 % reach, in revolutions. C, P N; p 3 or 10/3. */
export const basicRatingLife = /* @__PURE__ */ formula({
  name: 'basic rating life',
  symbol: 'L₁₀',
  dimension: 'number',
  inputs: { dynamicRating: 'force', equivalentLoad: 'force', exponent: 'number' },
  text: 'L₁₀ = 10⁶ (C/P)^p',
  symbols: { dynamicRating: 'C', equivalentLoad: 'P', exponent: 'p' },
  source: ISO281,
  range: [
    exponentRule,
    {
      condition: 'the load is at most half the dynamic rating',
      met: si => atMost(si.equivalentLoad, 0.5 * si.dynamicRating),
    },
  ],
  compute: ({ dynamicRating, equivalentLoad, exponent }) =>
    1e6 * (dynamicRating / equivalentLoad) ** exponent,
});

/** The life of so many revolutions in time at constant speed. s; L revolutions; ω rad/s. */
export const ratingLifeTime = /* @__PURE__ */ formula({
  name: 'rating life in time',
  symbol: 'L_h',
  dimension: 'time',
  inputs: { revolutions: 'number', speed: 'rotational speed' },
  units: { speed: 'rpm' },
  unit: 'min',
  text: 'L_h = L / n, rpm',
  symbols: { revolutions: 'L', speed: 'n' },
  source: ISO281,
  range: 'Constant speed.',
  compute: ({ revolutions, speed }) => (revolutions * 2 * Math.PI) / speed,
});

/** Life at a reliability other than 90 %. L revolutions; a₁ from the table. */
export const modifiedRatingLife = /* @__PURE__ */ formula({
  name: 'rating life at a reliability',
  symbol: 'L_n',
  dimension: 'number',
  inputs: { basicLife: 'number', reliabilityFactor: 'number' },
  text: 'L_n = a₁ L₁₀',
  symbols: { basicLife: 'L₁₀', reliabilityFactor: 'a₁' },
  source: ISO281,
  range: [
    {
      condition: 'a₁ is above 0 and at most 1',
      met: si => si.reliabilityFactor > 0 && si.reliabilityFactor <= 1,
    },
  ],
  compute: ({ basicLife, reliabilityFactor }) => reliabilityFactor * basicLife,
});

/** Running time over some years of duty. s; hours a year; years. */
export const dutyTime = /* @__PURE__ */ formula({
  name: 'running time over years of duty',
  symbol: 't',
  dimension: 'time',
  inputs: { hoursPerYear: 'number', years: 'number' },
  unit: 'h',
  text: 't = h a, hours a year times years',
  symbols: { hoursPerYear: 'h', years: 'a' },
  source: { title: 'Product of hours a year and years', confidence: 'derived' },
  range: [
    {
      condition: 'hours a year from 0 to the 8766 of a year, years not negative',
      met: ({ hoursPerYear, years }) => hoursPerYear >= 0 && hoursPerYear <= 8766 && years >= 0,
    },
  ],
  compute: ({ hoursPerYear, years }) => 3600 * hoursPerYear * years,
});

/** a₁ by percent of bearings that reach the life. */
export const reliabilityFactors = {
  90: 1,
  95: 0.64,
  96: 0.55,
  97: 0.47,
  98: 0.37,
  99: 0.25,
  source: { ...ISO281, clause: 'Table of a₁', confidence: 'from memory' } satisfies Source,
} as const;

/** Under keys load1, speed1, time1, load2 …, exponent; `equivalentDutyLoad` takes a list of steps. P N. */
export const dutyCycleLoad = /* @__PURE__ */ formula({
  name: 'equivalent load of a duty cycle',
  symbol: 'P',
  dimension: 'force',
  inputs: {} as Record<string, 'force' | 'rotational speed' | 'time' | 'number'>,
  text: 'P = (Σ n_i t_i P_i^p / Σ n_i t_i)^(1/p)',
  source: { ...ISO281, clause: 'mean load of steps' },
  range: 'Steps of constant speed and load.',
  compute: si => {
    let revolutions = 0;
    let damage = 0;
    for (let step = 1; `load${step}` in si; step++) {
      const turned = si[`speed${step}`]! * si[`time${step}`]!;
      revolutions += turned;
      damage += turned * si[`load${step}`]! ** si.exponent!;
    }
    return (damage / revolutions) ** (1 / si.exponent!);
  },
});

/** One step of a duty cycle. Time may be a share of the whole in any unit, the same in all steps. */
export interface DutyStep {
  readonly load: Value<'force'>;
  readonly speed: Value<'rotational speed'>;
  readonly time: Value<'time'>;
}

/** Constant load that wears the bearing as much as these steps together. P N; ω rad/s; t s; p 3 or 10/3. */
export function equivalentDutyLoad(steps: readonly DutyStep[], exponent: Value<'number'>): Value<'force'> {
  const inputs: Record<string, Value<'force' | 'rotational speed' | 'time' | 'number'>> = { exponent };
  steps.forEach((step, i) => {
    inputs[`load${i + 1}`] = step.load;
    inputs[`speed${i + 1}`] = step.speed;
    inputs[`time${i + 1}`] = step.time;
  });
  return dutyCycleLoad(inputs);
}
