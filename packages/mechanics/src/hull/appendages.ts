import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const TERMS: Source = { title: 'definition of the terms', confidence: 'derived' };

/** Resistance of a hull with its shafts, brackets and rudders. */
export const resistanceWithAppendages = /* @__PURE__ */ formula({
  name: 'resistance with appendages',
  symbol: 'R',
  dimension: 'force',
  inputs: { bareResistance: 'force', appendageEfficiency: 'ratio' },
  text: 'R = R0 / ηA',
  symbols: { bareResistance: 'R0', appendageEfficiency: 'ηA' },
  source: TERMS,
  range: [
    {
      condition: 'appendage efficiency above 0, at most 1',
      met: ({ appendageEfficiency: e }) => e > 0 && e <= 1,
    },
  ],
  compute: ({ bareResistance, appendageEfficiency }) => bareResistance / appendageEfficiency,
});

/** The same efficiency where the resistance of the appendages is known as a share of the bare hull's. */
export const appendageEfficiencyFromShare = /* @__PURE__ */ formula({
  name: 'appendage efficiency from their share of resistance',
  symbol: 'ηA',
  dimension: 'ratio',
  inputs: { share: 'ratio' },
  text: 'ηA = 1 / (1 + a)',
  symbols: { share: 'a' },
  source: TERMS,
  range: [{ condition: 'share zero or more', met: ({ share }) => share >= 0 }],
  compute: ({ share }) => 1 / (1 + share),
});
