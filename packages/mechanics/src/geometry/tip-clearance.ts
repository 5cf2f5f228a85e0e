import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';

const GEOMETRY: Source = { title: 'plane geometry of the propeller aperture', confidence: 'derived' };

/** Shaft axis to hull along the propeller's own plane, from the height straight up to the hull. h m; α, δ rad. */
export const axisToHull = /* @__PURE__ */ formula({
  name: 'shaft axis to hull in the propeller plane',
  symbol: 's',
  dimension: 'length',
  inputs: { verticalHeight: 'length', shaftAngle: 'angle', hullRise: 'angle' },
  text: 's = h cos δ / cos(α + δ)',
  symbols: { verticalHeight: 'h', shaftAngle: 'α', hullRise: 'δ' },
  source: GEOMETRY,
  range: [
    {
      condition:
        'hull straight over the disc, rising aft by δ; shaft falling aft by α; together below 45 degrees',
      met: si => Math.abs(si.shaftAngle + si.hullRise) < Math.PI / 4,
    },
  ],
  compute: ({ verticalHeight, shaftAngle, hullRise }) =>
    (verticalHeight * Math.cos(hullRise)) / Math.cos(shaftAngle + hullRise),
});

/** Gap between blade tip and hull. c, s, D m; its share of the diameter is judged by the propeller criteria. */
export const tipGap = /* @__PURE__ */ formula({
  name: 'tip gap in the aperture',
  symbol: 'c',
  dimension: 'length',
  inputs: { axisToHull: 'length', propellerDiameter: 'length' },
  text: 'c = s − D/2',
  symbols: { axisToHull: 's', propellerDiameter: 'D' },
  source: GEOMETRY,
  range: [{ condition: 'the tip clears the hull', met: si => si.axisToHull > si.propellerDiameter / 2 }],
  compute: si => si.axisToHull - si.propellerDiameter / 2,
});

/** Largest propeller that keeps a share of its diameter clear. D, s m; c/D –. */
export const largestPropeller = /* @__PURE__ */ formula({
  name: 'largest propeller for the tip clearance',
  symbol: 'D_max',
  dimension: 'length',
  inputs: { axisToHull: 'length', clearanceShare: 'ratio' },
  text: 'D_max = 2 s / (1 + 2 c/D)',
  symbols: { axisToHull: 's', clearanceShare: 'c/D' },
  source: GEOMETRY,
  range: [{ condition: 'the clearance share is not negative', met: si => si.clearanceShare >= 0 }],
  compute: si => (2 * si.axisToHull) / (1 + 2 * si.clearanceShare),
});

/** Gap that a guide asks for. c, D m. */
export const tipGapNeeded = /* @__PURE__ */ formula({
  name: 'tip gap by a share of diameter',
  symbol: 'c',
  dimension: 'length',
  inputs: { propellerDiameter: 'length', clearanceShare: 'ratio' },
  text: 'c = (c/D) D',
  symbols: { propellerDiameter: 'D', clearanceShare: 'c/D' },
  source: GEOMETRY,
  range: 'The share is the one that the chosen guide gives.',
  compute: si => si.clearanceShare * si.propellerDiameter,
});
