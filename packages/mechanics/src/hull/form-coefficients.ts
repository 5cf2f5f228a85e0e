import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const TERMS: Source = { title: 'definition of the terms', confidence: 'derived' };

/** Volume of water that a floating hull displaces. m kg, ρ kg/m³. */
export const displacedVolume = /* @__PURE__ */ formula({
  name: 'displaced volume',
  symbol: '∇',
  dimension: 'volume',
  inputs: { displacement: 'mass', density: 'density' },
  text: '∇ = Δ / ρ',
  symbols: { displacement: 'Δ', density: 'ρ' },
  source: { title: "Archimedes' principle", confidence: 'published' },
  range: 'Every floating hull.',
  compute: ({ displacement, density }) => displacement / density,
});

/** How much of the box around it the immersed hull fills. */
export const blockCoefficient = /* @__PURE__ */ formula({
  name: 'block coefficient',
  symbol: 'CB',
  dimension: 'ratio',
  inputs: { displacedVolume: 'volume', waterlineLength: 'length', beam: 'length', draught: 'length' },
  text: 'CB = ∇ / (L B T)',
  symbols: { displacedVolume: '∇', waterlineLength: 'L', beam: 'B', draught: 'T' },
  source: TERMS,
  range: [
    {
      condition: 'displaced volume at most length × beam × draught',
      met: si => si.displacedVolume <= si.waterlineLength * si.beam * si.draught,
    },
  ],
  compute: si => si.displacedVolume / (si.waterlineLength * si.beam * si.draught),
});

/** Midship coefficient of a hull whose prismatic coefficient is known. */
export const midshipFromPrismatic = /* @__PURE__ */ formula({
  name: 'midship coefficient from prismatic',
  symbol: 'CM',
  dimension: 'ratio',
  inputs: { blockCoefficient: 'ratio', prismaticCoefficient: 'ratio' },
  text: 'CM = CB / CP',
  symbols: { blockCoefficient: 'CB', prismaticCoefficient: 'CP' },
  source: TERMS,
  range: [
    { condition: 'block at most prismatic', met: si => si.blockCoefficient <= si.prismaticCoefficient },
  ],
  compute: ({ blockCoefficient: cb, prismaticCoefficient: cp }) => cb / cp,
});
