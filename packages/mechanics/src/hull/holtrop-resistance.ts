import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { atMost } from '../geometry/rounding-slack.js';
import { doesNotApply, type Outcome } from '../propeller/outcome.js';
import { type Edition, HOLTROP_GRAVITY, holtropComponents, holtropHull } from './holtrop-terms.js';
import { HULL_FORM, type HullForm, type HullNumbers } from './hull-form.js';
import type { ResistanceCurve } from './resistance-curve.js';

export const HOLTROP_1982: Source = {
  author: 'Holtrop and Mennen',
  title: 'An approximate power prediction method, International Shipbuilding Progress 29, 166-170',
  year: 1982,
  confidence: 'published',
};

export const HOLTROP_1984: Source = {
  author: 'Holtrop',
  title:
    'A statistical re-analysis of resistance and propulsion data, International Shipbuilding Progress 31, 272-276',
  year: 1984,
  confidence: 'published',
};

type Case = HullNumbers & { readonly vesselSpeed: number };

/** Limits of the method, recalled rather than read; the last is our own caution where the papers give none. */
function limits(edition: Edition) {
  const highest = edition === '1982' ? 0.45 : 0.82;
  const prismatic = (h: Case) => holtropHull(h, edition).CP;
  return [
    {
      condition:
        edition === '1982'
          ? 'Froude number up to 0.45 (from memory)'
          : 'Froude number up to 0.82, about the fastest of the worked example (from memory)',
      met: (h: Case) =>
        atMost(froudeNumberOf(h.vesselSpeed, h.waterlineLength), highest) && h.vesselSpeed >= 0,
    },
    {
      condition: 'prismatic coefficient 0.55 to 0.85 (from memory)',
      met: (h: Case) => prismatic(h) >= 0.55 && prismatic(h) <= 0.85,
    },
    {
      condition: 'length over beam 3.9 to 9.5 (from memory)',
      met: (h: Case) => h.waterlineLength / h.beam >= 3.9 && h.waterlineLength / h.beam <= 9.5,
    },
  ];
}

/** Calm-water resistance of a displacement hull, 1982 edition. */
export const holtropResistance1982 = /* @__PURE__ */ formula({
  name: 'Holtrop-Mennen 1982 resistance',
  symbol: 'R',
  dimension: 'force',
  inputs: { vesselSpeed: 'speed', ...HULL_FORM },
  text: 'R = RF (1 + k1) + RAPP + RW + RB + RTR + RA',
  terms: 'the parts of the resistance are those of the paper, worked out from the form of the hull',
  source: HOLTROP_1982,
  range: limits('1982'),
  compute: si => holtropComponents(si, si.vesselSpeed, '1982').total,
});

/** The 1984 edition: another form factor, and wave resistance that goes on past a Froude number of 0.4. */
export const holtropResistance1984 = /* @__PURE__ */ formula({
  name: 'Holtrop 1984 resistance',
  symbol: 'R',
  dimension: 'force',
  inputs: { vesselSpeed: 'speed', ...HULL_FORM },
  text: 'R = RF (1 + k1) + RAPP + RW + RB + RTR + RA',
  terms: 'the parts of the resistance are those of the paper, worked out from the form of the hull',
  source: HOLTROP_1984,
  range: limits('1984'),
  compute: si => holtropComponents(si, si.vesselSpeed, '1984').total,
});

/** Resistance against speed by either edition, or why it does not apply to this hull. */
export function holtropCurve(hull: HullForm, edition: Edition): Outcome<ResistanceCurve> {
  const resistance = edition === '1982' ? holtropResistance1982 : holtropResistance1984;
  const numbers = Object.fromEntries(
    Object.entries(hull).map(([key, value]) => [key, value.si]),
  ) as unknown as HullNumbers;
  const top = (edition === '1982' ? 0.45 : 0.82) * Math.sqrt(HOLTROP_GRAVITY * hull.waterlineLength.si);
  const half = holtropComponents(numbers, top / 2, edition).total;
  const full = holtropComponents(numbers, top, edition).total;
  if (!(Number.isFinite(half) && Number.isFinite(full) && half > 0 && full > 0)) {
    const { CP, CB } = holtropHull(numbers, edition);
    const form = [
      ['prismatic coefficient', CP.toFixed(3)],
      ['block coefficient', CB.toFixed(3)],
      ['length over beam', (hull.waterlineLength.si / hull.beam.si).toFixed(2)],
    ].filter(([, figure]) => Number.isFinite(Number(figure)));
    return doesNotApply(
      `The Holtrop-Mennen ${edition} method has no result for this hull: ${form.map(one => one.join(' ')).join(', ') || 'its length, beam or draught is zero'}. It is for displacement hulls with a prismatic coefficient of 0.55 to 0.85 and a length of 3.9 to 9.5 beams.`,
    );
  }
  return {
    applies: true,
    method: resistance.spec.name,
    lowest: 0,
    highest: top,
    numberAt: V =>
      V >= 0 && V <= top * (1 + 1e-12) ? holtropComponents(numbers, V, edition).total : undefined,
    valueAt: vesselSpeed =>
      vesselSpeed.si >= 0 && vesselSpeed.si <= top * (1 + 1e-12)
        ? resistance({ vesselSpeed, ...hull })
        : undefined,
  };
}

function froudeNumberOf(V: number, L: number): number {
  return V / Math.sqrt(HOLTROP_GRAVITY * L);
}
