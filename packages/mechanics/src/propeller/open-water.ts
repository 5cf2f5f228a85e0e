import { formula } from '../core/formula.js';
import type { RangeResult, Value } from '../core/value.js';
import { listed } from '../prose/english.js';
import {
  REYNOLDS_LIMIT,
  thrustCorrectionCubic,
  thrustReynoldsCorrection,
  torqueCorrectionCubic,
  torqueReynoldsCorrection,
} from './b-series-reynolds.js';
import { type PropellerGeometry, pitchRatio } from './geometry.js';
import { doesNotApply, type Outcome, unmet } from './outcome.js';
import { openWaterEfficiency } from './performance.js';
import { addPolynomials, type Polynomial, polynomialAt } from './polynomial.js';
import { areaForSeries, type PropellerSeries, SERIES, type SeriesName } from './series.js';
import { OOSTERVELD } from './sources.js';
import { zeroThrustOf } from './zero-thrust.js';

/** Open-water behaviour of one propeller by one series: numbers for loops, values for people. */
export interface OpenWaterCurve {
  readonly series: PropellerSeries;
  readonly geometry: PropellerGeometry;
  readonly pitchRatio: Value<'ratio'>;
  /** Of the kind that the series counts. */
  readonly areaRatio: Value<'ratio'>;
  readonly reynoldsNumber: Value<'number'> | undefined;
  /** Where the thrust falls to zero: the end of the curve. */
  readonly zeroThrust: number;
  /** Cautions about this geometry, met or not. */
  readonly cautions: readonly RangeResult[];
  readonly thrustCoefficient: (advanceRatio: number) => number;
  readonly torqueCoefficient: (advanceRatio: number) => number;
  readonly efficiency: (advanceRatio: number) => number;
  /** Whether the series covers this advance ratio. */
  readonly covers: (advanceRatio: number) => RangeResult;
  readonly at: (advanceRatio: Value<'ratio'>) => OpenWaterPoint;
}

/** One point of the curve, with its working. */
export interface OpenWaterPoint {
  readonly advanceRatio: Value<'ratio'>;
  readonly thrustCoefficient: Value<'ratio'>;
  readonly torqueCoefficient: Value<'ratio'>;
  readonly efficiency: Value<'ratio'>;
  /** Part of the thrust coefficient that is the nozzle's; absent of open propellers. */
  readonly nozzleThrustCoefficient?: Value<'ratio'>;
}

/**
 * The curve of a propeller by a published series, or why that series does not cover it.
 * With a blade Reynolds number the B-series is corrected for it; the other series have no correction.
 */
export function openWater(
  name: SeriesName,
  geometry: PropellerGeometry,
  reynoldsNumber?: Value<'number'>,
): Outcome<OpenWaterCurve> {
  const series = SERIES[name];
  const { diameter, pitch, blades, areaRatio: declaredArea } = geometry;
  for (const value of [diameter, pitch, blades, declaredArea])
    if (!(Number.isFinite(value.si) && value.si > 0))
      return doesNotApply(
        `The ${value.label} must be a positive number before the ${name} series can be used.`,
      );
  const ratio = pitchRatio({ pitch, diameter });
  const areaRatio = areaForSeries(series, geometry);
  const blade = { pitchRatio: ratio.si, areaRatio: areaRatio.si, blades: blades.si };
  const broken = unmet(series.limits(blade));
  if (broken.length > 0) return doesNotApply(outsideSeries(series, blade, broken));
  const corrected = reynoldsNumber !== undefined && name === 'Wageningen B' && reynoldsNumber.si > 0;
  const rn = corrected ? reynoldsNumber : undefined;
  const kt = rn
    ? addPolynomials(series.thrust(blade), thrustCorrectionCubic(blade, rn.si))
    : series.thrust(blade);
  const kq = rn
    ? addPolynomials(series.torque(blade), torqueCorrectionCubic(blade, rn.si))
    : series.torque(blade);
  const zeroThrust = zeroThrustOf(kt);
  if (zeroThrust === undefined || zeroThrust <= series.lowestAdvanceRatio)
    return doesNotApply(`The ${name} series gives no driving range for pitch ratio ${ratio.si.toFixed(3)}.`);
  const cautions = [...series.cautions(blade)];
  if (rn)
    cautions.push({
      condition: REYNOLDS_LIMIT.condition,
      met: REYNOLDS_LIMIT.met({ reynoldsNumber: rn.si }),
    });
  return {
    applies: true,
    series,
    geometry,
    pitchRatio: ratio,
    areaRatio,
    reynoldsNumber: rn,
    zeroThrust,
    cautions,
    ...numbersOf(kt, kq),
    covers: j => ({
      condition: `${name} series: advance ratio ${series.lowestAdvanceRatio} to ${zeroThrust.toFixed(3)}, where thrust ends`,
      met: j >= series.lowestAdvanceRatio && j <= zeroThrust + 1e-12,
    }),
    at: advanceRatio => pointAt({ series, ratio, areaRatio, blades, rn }, advanceRatio),
  };
}

/** K at 2e6 and its correction, added. */
export const correctedThrustCoefficient = /* @__PURE__ */ formula({
  name: 'thrust coefficient at the blade Reynolds number',
  symbol: 'KT',
  dimension: 'ratio',
  inputs: { coefficient: 'ratio', correction: 'ratio' },
  text: 'KT(Rn) = KT(2e6) + ΔKT',
  symbols: { coefficient: 'KT(2e6)', correction: 'ΔKT' },
  source: OOSTERVELD,
  range: 'The limits are those of the two terms.',
  compute: ({ coefficient, correction }) => coefficient + correction,
});

export const correctedTorqueCoefficient = /* @__PURE__ */ formula({
  name: 'torque coefficient at the blade Reynolds number',
  symbol: 'KQ',
  dimension: 'ratio',
  inputs: { coefficient: 'ratio', correction: 'ratio' },
  text: 'KQ(Rn) = KQ(2e6) + ΔKQ',
  symbols: { coefficient: 'KQ(2e6)', correction: 'ΔKQ' },
  source: OOSTERVELD,
  range: 'The limits are those of the two terms.',
  compute: ({ coefficient, correction }) => coefficient + correction,
});

interface BladeForPoint {
  readonly series: PropellerSeries;
  readonly ratio: Value<'ratio'>;
  readonly areaRatio: Value<'ratio'>;
  readonly blades: Value<'number'>;
  readonly rn: Value<'number'> | undefined;
}

function pointAt(
  { series, ratio, areaRatio, blades, rn }: BladeForPoint,
  advanceRatio: Value<'ratio'>,
): OpenWaterPoint {
  const values = { advanceRatio, pitchRatio: ratio, areaRatio, blades };
  let thrustCoefficient = series.thrustCoefficient(values);
  let torqueCoefficient = series.torqueCoefficient(values);
  if (rn) {
    const inputs = { ...values, reynoldsNumber: rn };
    thrustCoefficient = correctedThrustCoefficient({
      coefficient: thrustCoefficient,
      correction: thrustReynoldsCorrection(inputs),
    });
    torqueCoefficient = correctedTorqueCoefficient({
      coefficient: torqueCoefficient,
      correction: torqueReynoldsCorrection(inputs),
    });
  }
  const efficiency = openWaterEfficiency({ advanceRatio, thrustCoefficient, torqueCoefficient });
  const nozzleThrustCoefficient = series.nozzle?.thrustCoefficient(values);
  return {
    advanceRatio,
    thrustCoefficient,
    torqueCoefficient,
    efficiency,
    ...(nozzleThrustCoefficient ? { nozzleThrustCoefficient } : {}),
  };
}

function numbersOf(kt: Polynomial, kq: Polynomial) {
  return {
    thrustCoefficient: (j: number) => polynomialAt(kt, j),
    torqueCoefficient: (j: number) => polynomialAt(kq, j),
    efficiency: (j: number) => {
      const torque = polynomialAt(kq, j);
      const thrust = polynomialAt(kt, j);
      return torque > 0 && thrust > 0 ? (j * thrust) / (2 * Math.PI * torque) : 0;
    },
  };
}

function outsideSeries(
  series: PropellerSeries,
  blade: { pitchRatio: number; areaRatio: number; blades: number },
  broken: readonly string[],
): string {
  const have = `${blade.blades} blades, ${series.area} area ratio ${blade.areaRatio.toFixed(3)}, pitch ratio ${blade.pitchRatio.toFixed(3)}`;
  return `The ${series.name} series does not cover this propeller (${have}): it needs ${listed(broken)}. Use a series that covers it, or the maker's own curve.`;
}
