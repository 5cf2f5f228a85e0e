import { handbook } from '../../src/propeller/sources.js';
import { FOOT, INCH } from '../../src/units/constants.js';
import { formula } from './held-formula.js';

/** Least diameter that suits the hull, from its beam and the draught of its body. */
export const handbookLeastDiameter = /* @__PURE__ */ formula({
  name: 'least propeller diameter, handbook',
  symbol: 'Dmin',
  dimension: 'length',
  inputs: { waterlineBeam: 'length', hullDraught: 'length', screws: 'number' },
  units: { waterlineBeam: 'ft', hullDraught: 'ft' },
  unit: 'in',
  text: 'Dmin = 4.07 √(BWL Hd) (in, ft), times 0.8 for twin and 0.65 for triple screw',
  symbols: { waterlineBeam: 'BWL', hullDraught: 'Hd' },
  source: handbook('5-5, minimum diameter'),
  range: [
    { condition: '1 to 3 screws', met: ({ screws }) => screws === 1 || screws === 2 || screws === 3 },
    { condition: 'beam and hull draught above zero', met: si => si.waterlineBeam > 0 && si.hullDraught > 0 },
  ],
  compute: ({ waterlineBeam, hullDraught, screws }) => {
    const share = screws >= 3 ? 0.65 : screws >= 2 ? 0.8 : 1;
    return 4.07 * Math.sqrt(Math.max(0, waterlineBeam * hullDraught)) * (INCH / FOOT) * share;
  },
});
