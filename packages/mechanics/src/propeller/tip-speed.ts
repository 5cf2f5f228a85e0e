import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { DEFINITION } from './sources.js';

export const tipSpeed = /* @__PURE__ */ formula({
  name: 'propeller tip speed',
  symbol: 'u',
  dimension: 'speed',
  inputs: { shaftSpeed: 'rotational speed', diameter: 'length' },
  text: 'u = ω D / 2',
  symbols: { shaftSpeed: 'ω', diameter: 'D' },
  source: DEFINITION,
  range: 'Geometry; forward speed is left out, as in the limits in use.',
  compute: ({ shaftSpeed, diameter }) => (shaftSpeed * diameter) / 2,
});

/** Limits in common use, m/s. They advise; no publication of them was found, so nothing is judged by them alone. */
export const TIP_SPEED_ADVICE: readonly {
  readonly craft: string;
  readonly from: number;
  readonly to: number;
}[] = [
  { craft: 'ordinary commercial propellers', from: 35, to: 40 },
  { craft: 'planing craft with ample blade area', from: 46, to: 50 },
];

export const TIP_SPEED_SOURCE: Source = {
  title: 'tip speed limits of the propeller trade',
  confidence: 'common practice',
};
