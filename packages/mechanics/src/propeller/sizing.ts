import type { Value } from '../core/value.js';
import type { PropellerGeometry } from './geometry.js';
import { type OpenWaterCurve, openWater } from './open-water.js';
import { computed, doesNotApply, type Outcome } from './outcome.js';
import { loadNumbers } from './propeller-load.js';
import { firstRoot } from './roots.js';
import { SERIES, type SeriesName } from './series.js';
import { DEFINITION } from './sources.js';

/** The duty a propeller is to be sized for. */
export interface SizingCase {
  readonly series: SeriesName;
  /** The propeller in hand; what is asked for is replaced, the rest is kept. */
  readonly geometry: PropellerGeometry;
  /** Power to be absorbed, at the propeller. */
  readonly power: Value<'power'>;
  readonly shaftSpeed: Value<'rotational speed'>;
  readonly speedOfAdvance: Value<'speed'>;
  readonly density: Value<'density'>;
}

/** Pitch with which a propeller of this diameter absorbs a power at a shaft speed. */
export function pitchThatAbsorbs(
  sizing: SizingCase,
): Outcome<{ pitch: Value<'length'>; curve: OpenWaterCurve }> {
  const { geometry } = sizing;
  const [low, high] = SERIES[sizing.series].pitchRatios;
  const at = (ratio: number): PropellerGeometry => ({
    ...geometry,
    pitch: { ...geometry.pitch, si: ratio * geometry.diameter.si },
  });
  const found = solve(sizing, at, low, high, 'pitch ratio', value => value.toFixed(2));
  if (!found.applies) return found;
  const pitch = sized(sizing, 'pitch that absorbs the power', 'P', found.at * geometry.diameter.si, [
    geometry.diameter,
  ]);
  return finish(sizing, { ...geometry, pitch }, { pitch });
}

/** Diameter that absorbs a power, with the pitch or the pitch ratio kept. */
export function diameterThatAbsorbs(
  sizing: SizingCase,
  keep: 'pitch' | 'pitch ratio',
): Outcome<{ diameter: Value<'length'>; curve: OpenWaterCurve }> {
  const { geometry } = sizing;
  const ratio = geometry.pitch.si / geometry.diameter.si;
  const [lowRatio, highRatio] = SERIES[sizing.series].pitchRatios;
  const at = (diameter: number): PropellerGeometry => ({
    ...geometry,
    diameter: { ...geometry.diameter, si: diameter },
    pitch: { ...geometry.pitch, si: keep === 'pitch' ? geometry.pitch.si : ratio * diameter },
  });
  const kept = geometry.pitch.si;
  const [low, high] =
    keep === 'pitch'
      ? [(kept / highRatio) * (1 + 1e-12), (kept / lowRatio) * (1 - 1e-12)]
      : [geometry.diameter.si / 3, geometry.diameter.si * 3];
  const found = solve(sizing, at, low, high, 'diameter', value => `${(value * 1000).toFixed(0)} mm`);
  if (!found.applies) return found;
  const diameter = sized(sizing, 'diameter that absorbs the power', 'D', found.at, [geometry.pitch]);
  return finish(sizing, { ...at(found.at), diameter }, { diameter });
}

function solve(
  sizing: SizingCase,
  at: (value: number) => PropellerGeometry,
  low: number,
  high: number,
  what: string,
  show: (value: number) => string,
): Outcome<{ at: number }> {
  const wanted = sizing.power.si / sizing.shaftSpeed.si;
  if (!(wanted > 0 && Number.isFinite(wanted)))
    return doesNotApply('Sizing needs a power and a shaft speed above zero.');
  let covered = 0;
  let refusal = '';
  const missing = (value: number): number => {
    const curve = openWater(sizing.series, at(value));
    if (!curve.applies) {
      refusal = curve.reason;
      return Number.NaN;
    }
    if (!driving(sizing, curve)) return -wanted;
    covered++;
    return (
      loadNumbers(curve, sizing.shaftSpeed.si, sizing.speedOfAdvance.si, sizing.density.si).torque - wanted
    );
  };
  const value = firstRoot(missing, low, high, 96);
  if (value !== undefined && Math.abs(missing(value)) < 1e-6 * wanted) return { applies: true, at: value };
  if (covered === 0 && refusal) return doesNotApply(refusal);
  return doesNotApply(
    `No ${what} between ${show(low)} and ${show(high)} absorbs ${(sizing.power.si / 1000).toFixed(1)} kW at this shaft speed within the ${sizing.series} series. Change diameter, blades or ratio.`,
  );
}

/** Whether the propeller still drives: past its zero-thrust point the polynomial means nothing. */
function driving(sizing: SizingCase, curve: OpenWaterCurve): boolean {
  const j = (2 * Math.PI * sizing.speedOfAdvance.si) / (sizing.shaftSpeed.si * curve.geometry.diameter.si);
  return j >= 0 && j <= curve.zeroThrust;
}

function sized(
  sizing: SizingCase,
  label: string,
  symbol: string,
  si: number,
  kept: readonly Value[],
): Value<'length'> {
  const { power, shaftSpeed, speedOfAdvance, density, geometry } = sizing;
  return computed(
    label,
    symbol,
    'length',
    si,
    { name: label, text: 'KQ(J, P/D, A/A0, Z) ρ (ω / 2π)² D⁵ = PD / ω', source: DEFINITION },
    [power, shaftSpeed, speedOfAdvance, density, ...kept, geometry.areaRatio, geometry.blades],
  );
}

function finish<T extends object>(
  sizing: SizingCase,
  geometry: PropellerGeometry,
  result: T,
): Outcome<T & { curve: OpenWaterCurve }> {
  const curve = openWater(sizing.series, geometry);
  return curve.applies ? { applies: true, ...result, curve } : curve;
}
