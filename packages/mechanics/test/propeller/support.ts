import {
  type EngineCurve,
  engineCurve,
  given,
  type OpenWaterCurve,
  type Outcome,
  openWater,
  type PropellerGeometry,
  type SeriesName,
} from '@tailshaft/mechanics';

export const RPM = Math.PI / 30;
export const KNOT = 1852 / 3600;

export const length = (si: number) => given('length', 'x', 'length', si);
export const ratio = (si: number) => given('ratio', 'r', 'ratio', si);
export const speed = (si: number) => given('speed', 'V', 'speed', si);
export const turning = (si: number) => given('turning', 'ω', 'rotational speed', si);
export const power = (si: number) => given('power', 'P', 'power', si);
export const density = given('density', 'ρ', 'density', 1025);

/** The result of an outcome that must apply; its reason otherwise, as the test's failure. */
export function must<T>(outcome: Outcome<T>): T {
  if (!outcome.applies) throw new Error(outcome.reason);
  return outcome;
}

export function propeller(
  diameter: number,
  pitchRatio: number,
  area: number,
  blades: number,
): PropellerGeometry {
  return {
    diameter: length(diameter),
    pitch: length(diameter * pitchRatio),
    areaRatio: ratio(area),
    blades: given('blades', 'Z', 'number', blades),
  };
}

export function curveOf(series: SeriesName, d: number, p: number, area: number, z: number): OpenWaterCurve {
  return must(openWater(series, propeller(d, p, area, z)));
}

/** A diesel of 300 kW at 2600 rpm with its governor running out at 2800. */
export function diesel(): EngineCurve {
  const rows: readonly (readonly [number, number])[] = [
    [700, 45],
    [1200, 130],
    [1600, 215],
    [2000, 270],
    [2300, 292],
    [2600, 300],
    [2800, 0],
  ];
  return must(
    engineCurve(
      rows.map(([rpm, kilowatts]) => ({ speed: turning(rpm * RPM), power: power(kilowatts * 1000) })),
    ),
  );
}

/** Plain bisection: the second root finder that the product's own is held against. */
export function bisect(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  const rising = f(b) > f(a);
  for (let turn = 0; turn < 200; turn++) {
    const middle = (a + b) / 2;
    if (f(middle) > 0 === rising) b = middle;
    else a = middle;
  }
  return (a + b) / 2;
}
