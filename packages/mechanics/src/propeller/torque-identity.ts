import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import type { Value } from '../core/value.js';
import type { OpenWaterCurve } from './open-water.js';
import { computed } from './outcome.js';
import { firstRoot } from './roots.js';

const IDENTITY: Source = {
  title:
    'torque identity: the propeller behind the hull works where its open-water torque is the torque that was read',
  confidence: 'common practice',
};

/** Torque coefficient of a propeller whose power was read on a trial. P W; ω rad/s; ρ kg/m³; D m. */
export const torqueCoefficientRead = /* @__PURE__ */ formula({
  name: 'torque coefficient of a trial',
  symbol: 'KQ',
  dimension: 'ratio',
  inputs: {
    power: 'power',
    shaftSpeed: 'rotational speed',
    density: 'density',
    diameter: 'length',
    relativeRotativeEfficiency: 'ratio',
  },
  text: 'KQ = 4π² ηR P / (ρ ω³ D⁵)',
  symbols: { power: 'P', shaftSpeed: 'ω', density: 'ρ', diameter: 'D', relativeRotativeEfficiency: 'ηR' },
  source: IDENTITY,
  range: [{ condition: 'shaft speed above zero', met: si => si.shaftSpeed > 0 }],
  compute: si =>
    (si.relativeRotativeEfficiency * si.power) /
    (2 * Math.PI * si.density * (si.shaftSpeed / (2 * Math.PI)) ** 3 * si.diameter ** 5),
});

/** Where a propeller has a torque coefficient, between the ends of its series; undefined where it has it nowhere. */
export function advanceRatioAtTorque(
  curve: OpenWaterCurve,
  torqueCoefficient: Value<'ratio'>,
): Value<'ratio'> | undefined {
  const { series, zeroThrust } = curve;
  const found = firstRoot(
    j => curve.torqueCoefficient(j) - torqueCoefficient.si,
    series.lowestAdvanceRatio,
    zeroThrust,
  );
  if (found === undefined) return undefined;
  return computed(
    'advance ratio by torque identity',
    'J',
    'ratio',
    found,
    { name: 'torque identity', text: 'KQ(J) of the series = KQ read', source: IDENTITY },
    [torqueCoefficient, curve.pitchRatio, curve.areaRatio, curve.geometry.blades],
  );
}

/** Speed of the water at a propeller that works at an advance ratio. */
export const advanceOfTrial = /* @__PURE__ */ formula({
  name: 'speed of advance of a trial',
  symbol: 'VA',
  dimension: 'speed',
  inputs: { advanceRatio: 'ratio', shaftSpeed: 'rotational speed', diameter: 'length' },
  text: 'VA = J ω D / 2π',
  symbols: { advanceRatio: 'J', shaftSpeed: 'ω', diameter: 'D' },
  source: IDENTITY,
  range: 'Definition of the advance ratio.',
  compute: si => (si.advanceRatio * si.shaftSpeed * si.diameter) / (2 * Math.PI),
});

/** Wake fraction that a trial gave. */
export const wakeOfTrial = /* @__PURE__ */ formula({
  name: 'wake fraction of a trial',
  symbol: 'w',
  dimension: 'ratio',
  inputs: { speedOfAdvance: 'speed', vesselSpeed: 'speed' },
  text: 'w = 1 - VA / V',
  symbols: { speedOfAdvance: 'VA', vesselSpeed: 'V' },
  source: IDENTITY,
  range: [{ condition: 'vessel speed above zero', met: si => si.vesselSpeed > 0 }],
  compute: si => 1 - si.speedOfAdvance / si.vesselSpeed,
});
