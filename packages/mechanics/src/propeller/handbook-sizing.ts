import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { HORSEPOWER, INCH, RPM } from '../units/constants.js';
import { handbook } from './sources.js';
import { KNOT } from './water.js';

/** First guess of the diameter of a three-blade propeller from power and shaft speed. */
export const handbookDiameter = /* @__PURE__ */ formula({
  name: 'propeller diameter, handbook',
  symbol: 'D',
  dimension: 'length',
  inputs: { power: 'power', shaftSpeed: 'rotational speed' },
  units: { power: 'hp', shaftSpeed: 'rpm' },
  unit: 'in',
  text: 'D = 632.7 SHP^0.2 / N^0.6 (in, hp, rpm)',
  symbols: { power: 'SHP', shaftSpeed: 'N' },
  source: handbook('5-3, diameter from power and shaft speed; three blades of ordinary width'),
  range: [
    { condition: 'power above zero', met: ({ power }) => power > 0 },
    { condition: 'shaft speed above zero', met: ({ shaftSpeed }) => shaftSpeed > 0 },
  ],
  compute: ({ power, shaftSpeed }) =>
    ((632.7 * (power / HORSEPOWER) ** 0.2) / (shaftSpeed / RPM) ** 0.6) * INCH,
});

function pitchRatioLine(which: string, factor: number, power: number) {
  return formula({
    name: `${which} pitch ratio, handbook`,
    symbol: 'P/D',
    dimension: 'ratio',
    inputs: { vesselSpeed: 'speed' },
    units: { vesselSpeed: 'kn' },
    text: `P/D = ${factor} V^${power} (kn)`,
    symbols: { vesselSpeed: 'V' },
    source: handbook('5-4, optimum pitch ratio'),
    range: [
      {
        condition: 'speed 4 to 45 knots',
        met: ({ vesselSpeed }) => vesselSpeed >= 4 * KNOT && vesselSpeed <= 45 * KNOT,
      },
    ],
    compute: ({ vesselSpeed }) => factor * (Math.max(0, vesselSpeed) / KNOT) ** power,
  });
}

/** Pitch ratios that suit a speed. */
export const HANDBOOK_PITCH_RATIO = {
  average: pitchRatioLine('average', 0.46, 0.26),
  greatest: pitchRatioLine('greatest suitable', 0.52, 0.28),
  least: pitchRatioLine('least suitable', 0.39, 0.23),
} as const;

/**
 * What becomes of diameter and pitch when a three-blade propeller is replaced by one of two or four blades, by the
 * same handbook; from memory.
 */
export const BLADE_NUMBER_FACTORS: Readonly<
  Record<2 | 3 | 4, { readonly diameter: number; readonly pitch: number }>
> = {
  2: { diameter: 1.05, pitch: 1.01 },
  3: { diameter: 1, pitch: 1 },
  4: { diameter: 0.94, pitch: 0.98 },
};

export const BLADE_NUMBER_FACTORS_SOURCE: Source = handbook('factors for two and four blades');
