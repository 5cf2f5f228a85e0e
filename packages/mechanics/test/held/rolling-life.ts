import type { Source } from '../../src/core/source.js';
import type { Value } from '../../src/core/value.js';
import { formula } from './held-formula.js';

const ISO281: Source = { title: 'ISO 281', clause: 'basic rating life', year: 2007, confidence: 'published' };

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
