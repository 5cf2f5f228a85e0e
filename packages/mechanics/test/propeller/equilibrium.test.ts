import {
  bollardAtPower,
  bollardUpperBound,
  bSeriesThrustCoefficient,
  bSeriesTorqueCoefficient,
  deliveredPower,
  diameterThatAbsorbs,
  engineCurve,
  engineEquilibrium,
  engineLoadFraction,
  openWater,
  outsideRange,
  pitchThatAbsorbs,
  propellerLoad,
  ratedDemand,
  ratedLoad,
  shaftSpeedThroughGear,
  valuesBehind,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { published } from '../published.js';
import {
  bisect,
  curveOf,
  density,
  diesel,
  must,
  power,
  propeller,
  RPM,
  ratio,
  speed,
  turning,
} from './support.js';

const HAND = 'recomputed by hand from the definition';
published(shaftSpeedThroughGear, HAND, [
  {
    case: '2600 rpm through 2.043',
    inputs: { engineSpeed: 2600 * RPM, ratio: 2.043 },
    gives: 1272.64,
    within: 0.005,
    unit: RPM,
  },
]);
published(engineLoadFraction, HAND, [
  {
    case: '1940 N·m at the propeller, 1000 N·m through 2.0 at 0.97',
    inputs: { propellerTorque: 1940, torqueAvailable: 1000, ratio: 2, efficiency: 0.97 },
    gives: 1,
    within: 1e-12,
  },
]);
published(deliveredPower, HAND, [
  { case: '300 kW at 0.97', inputs: { enginePower: 300000, efficiency: 0.97 }, gives: 291000, within: 1e-6 },
]);
published(ratedDemand, HAND, [
  { case: '320 of 291 kW', inputs: { absorbed: 320, delivered: 291 }, gives: 1.09966, within: 5e-6 },
]);

const driveline = { ratio: ratio(2.043), efficiency: ratio(0.97) };
const CASES: readonly (readonly [string, number, number, number, number, number])[] = [
  ['matched at 9 m/s', 0.66, 0.95, 0.7, 4, 9],
  ['over-pitched', 0.7, 1.2, 0.7, 4, 8],
  ['over-pitched at rest', 0.7, 1.0, 0.65, 3, 0],
  ['light', 0.55, 0.8, 0.6, 4, 10],
];

/** Torque asked at the propeller, by the public formulas alone. */
function asked(d: number, p: number, area: number, z: number, va: number, shaft: number): number {
  const n = shaft / (2 * Math.PI);
  const geometry = propeller(d, p, area, z);
  const kq = bSeriesTorqueCoefficient({
    advanceRatio: ratio(va / (n * d)),
    pitchRatio: ratio(p),
    areaRatio: geometry.areaRatio,
    blades: geometry.blades,
  }).si;
  return kq * 1025 * n * n * d ** 5;
}

describe('engine and propeller equilibrium, against bisection on the public formulas', () => {
  const engine = diesel();
  it.each(CASES)('%s', (_, d, p, area, z, va) => {
    const curve = curveOf('Wageningen B', d, p, area, z);
    const found = must(engineEquilibrium({ curve, engine, driveline, speedOfAdvance: speed(va), density }));
    const gap = (engineSpeed: number) =>
      engine.torqueAt(engineSpeed)! * 2.043 * 0.97 - asked(d, p, area, z, va, engineSpeed / 2.043);
    // The load line is steeper than the engine's above 1500 rpm, so one crossing is in here.
    const other = bisect(gap, 1200 * RPM, 2800 * RPM);
    expect(found.engineSpeed.si / RPM).toBeCloseTo(other / RPM, 6);
    expect(found.loadFraction.si).toBeCloseTo(1, 9);
    expect(found.endOfTable).toBe(false);
    expect(found.power.si).toBeCloseTo(found.torque.si * found.shaftSpeed.si, 6);
  });

  it('stops at the end of a table that does not run down to zero torque', () => {
    const rows = [1000, 2000, 2600].map(rpm => ({ speed: turning(rpm * RPM), power: power(rpm * 100) }));
    const curve = curveOf('Wageningen B', 0.45, 0.8, 0.6, 4);
    const found = must(
      engineEquilibrium({
        curve,
        engine: must(engineCurve(rows)),
        driveline,
        speedOfAdvance: speed(5),
        density,
      }),
    );
    expect(found.endOfTable).toBe(true);
    expect(found.engineSpeed.si).toBeCloseTo(2600 * RPM, 9);
    expect(found.loadFraction.si).toBeLessThan(1);
  });

  it('says when the engine cannot pull the propeller at all', () => {
    const curve = curveOf('Wageningen B', 1.6, 1.2, 0.7, 4);
    const result = engineEquilibrium({ curve, engine, driveline, speedOfAdvance: speed(0), density });
    expect(result.applies).toBe(false);
  });

  it('says when the water would turn the propeller', () => {
    const curve = curveOf('Wageningen B', 0.6, 0.6, 0.6, 4);
    const result = engineEquilibrium({ curve, engine, driveline, speedOfAdvance: speed(25), density });
    expect(result.applies).toBe(false);
  });

  it('leads back to the engine table, the ratio and the geometry', () => {
    const curve = curveOf('Wageningen B', 0.66, 0.95, 0.7, 4);
    const found = must(engineEquilibrium({ curve, engine, driveline, speedOfAdvance: speed(9), density }));
    const behind = new Set(valuesBehind(found.power));
    expect(behind.has(driveline.ratio)).toBe(true);
    expect(behind.has(curve.geometry.pitch)).toBe(true);
    expect(behind.has(engine.inputs[0]!)).toBe(true);
    expect(outsideRange(found.power)).toEqual([]);
  });
});

describe('rated speed', () => {
  const rated = (p: number) =>
    ratedLoad(
      curveOf('Wageningen B', 0.66, p, 0.7, 4),
      turning(2600 * RPM),
      power(300000),
      driveline,
      speed(9),
      density,
    );
  it('is reached with a light pitch and not with a heavy one', () => {
    expect(rated(0.7).reachesRatedSpeed).toBe(true);
    expect(rated(1.3).reachesRatedSpeed).toBe(false);
    expect(rated(1.3).demand.si).toBeGreaterThan(1);
  });
  it('agrees with the equilibrium about which side of rated speed the engine ends up', () => {
    for (const p of [0.7, 0.8, 0.9, 1.0, 1.1, 1.2, 1.3]) {
      const curve = curveOf('Wageningen B', 0.66, p, 0.7, 4);
      const at = must(
        engineEquilibrium({ curve, engine: diesel(), driveline, speedOfAdvance: speed(9), density }),
      );
      expect(at.engineSpeed.si >= 2600 * RPM - 1e-9).toBe(rated(p).reachesRatedSpeed);
    }
  });
});

describe('pitch and diameter that absorb a power', () => {
  const sizing = {
    series: 'Wageningen B',
    geometry: propeller(0.66, 1, 0.7, 4),
    power: power(291000),
    shaftSpeed: turning((2600 / 2.043) * RPM),
    speedOfAdvance: speed(9),
    density,
  } as const;
  const shaft = sizing.shaftSpeed.si;

  it('finds the pitch, by bisection too', () => {
    const { pitch } = must(pitchThatAbsorbs(sizing));
    const other = bisect(p => asked(0.66, p, 0.7, 4, 9, shaft) * shaft - 291000, 0.75, 1.4);
    expect(pitch.si / 0.66).toBeCloseTo(other, 9);
  });
  it('finds the diameter with the pitch ratio kept', () => {
    const { diameter } = must(diameterThatAbsorbs(sizing, 'pitch ratio'));
    const other = bisect(d => asked(d, 1, 0.7, 4, 9, shaft) * shaft - 291000, 0.5, 1);
    expect(diameter.si).toBeCloseTo(other, 9);
  });
  it('finds the diameter with the pitch kept', () => {
    const { diameter, curve } = must(diameterThatAbsorbs(sizing, 'pitch'));
    const other = bisect(d => asked(d, 0.66 / d, 0.7, 4, 9, shaft) * shaft - 291000, 0.55, 1);
    expect(diameter.si).toBeCloseTo(other, 9);
    expect(curve.geometry.pitch.si).toBe(0.66);
  });
  it('says when no pitch of the series absorbs it', () => {
    const result = pitchThatAbsorbs({ ...sizing, power: power(5e6) });
    expect(result.applies).toBe(false);
    if (!result.applies)
      expect(result.reason).toContain('No pitch ratio between 0.50 and 1.40 absorbs 5000.0 kW');
  });
  it('says when the series does not cover the blades', () => {
    const result = pitchThatAbsorbs({ ...sizing, series: 'Gawn' });
    expect(result.applies ? '' : result.reason).toContain('3 blades');
  });
});

describe('bollard', () => {
  const curve = curveOf('Wageningen B', 1, 0.8, 0.55, 4);
  it('takes KT and KQ at rest: recomputed KT 0.338549 and KQ 0.0402953 for B4-55, P/D 0.8', () => {
    const found = must(bollardAtPower(curve, power(250000), density));
    const n = Math.cbrt(250000 / (2 * Math.PI * 0.0402953 * 1025));
    expect(found.shaftSpeed.si / (2 * Math.PI)).toBeCloseTo(n, 5);
    expect(found.thrust.si).toBeCloseTo(0.338549 * 1025 * n * n, -1);
    expect(found.power.si).toBeCloseTo(250000, 3);
  });
  it('stays below the momentum bound', () => {
    const found = must(bollardAtPower(curve, power(250000), density));
    const bound = bollardUpperBound({ density, diameter: curve.geometry.diameter, power: power(250000) });
    expect(found.thrust.si).toBeLessThan(bound.si);
    expect(found.thrust.si).toBeGreaterThan(0.6 * bound.si);
  });
  it('does not apply with a series that starts at J 0.3', () => {
    const flat = curveOf('Gawn', 1, 1, 0.8, 3);
    expect(bollardAtPower(flat, power(250000), density).applies).toBe(false);
  });
});

describe('cautions of the Gawn fit', () => {
  const outside = (p: number, shaft: number, va: number) =>
    propellerLoad(curveOf('Gawn', 0.6, p, 0.8, 3), turning(shaft), speed(va), density).outside.join();
  it('point to the Gawn-Burrill fit at high pitch and low advance', () => {
    expect(outside(1.35, 100, 7)).toContain('pitch ratio at most 1.3');
    expect(outside(1, 100, 4)).toContain('advance ratio at least 0.5');
    expect(outside(0.81, 100, 7.2)).toContain('advance ratio at most 0.7');
    expect(outside(1, 100, 6)).toBe('');
  });
});

describe('open-water curves of the three series', () => {
  it.each([
    ['Wageningen B', 4, 0.7],
    ['Gawn', 3, 0.8],
    ['Gawn-Burrill', 3, 0.8],
  ] as const)('%s: numbers and values agree, and thrust ends where it says', (series, z, area) => {
    const curve = curveOf(series, 0.6, 1, area, z);
    const point = curve.at(ratio(0.6));
    expect(point.thrustCoefficient.si).toBeCloseTo(curve.thrustCoefficient(0.6), 12);
    expect(point.torqueCoefficient.si).toBeCloseTo(curve.torqueCoefficient(0.6), 12);
    expect(point.efficiency.si).toBeCloseTo(curve.efficiency(0.6), 12);
    expect(curve.thrustCoefficient(curve.zeroThrust)).toBeCloseTo(0, 10);
    expect(curve.zeroThrust).toBeGreaterThan(1);
    expect(curve.covers(curve.zeroThrust + 0.01).met).toBe(false);
  });

  it('corrects the B-series for a blade Reynolds number', () => {
    const rn = { label: 'Rn', symbol: 'Rn', dimension: 'number', si: 1e8 } as const;
    const curve = must(openWater('Wageningen B', propeller(0.6, 1, 0.7, 4), rn));
    // Recomputed: KT 0.178291 + 0.0014144, KQ 0.0307678 - 0.0016427.
    expect(curve.thrustCoefficient(0.7)).toBeCloseTo(0.1797054, 6);
    expect(curve.at(ratio(0.7)).torqueCoefficient.si).toBeCloseTo(0.0291251, 6);
    expect(curve.torqueCoefficient(0.7)).toBeCloseTo(0.0291251, 6);
  });

  it('turns a declared developed area into the expanded area that Gawn counts', () => {
    const geometry = { ...propeller(0.6, 1, 0.78157, 3), areaIs: 'developed' } as const;
    expect(must(openWater('Gawn', geometry)).areaRatio.si).toBeCloseTo(0.8, 5);
  });

  it('names what is out of range', () => {
    const result = openWater('Wageningen B', propeller(0.6, 1.6, 0.7, 4));
    expect(result.applies ? '' : result.reason).toContain('pitch ratio 0.5 to 1.4');
  });

  it('agrees with the thrust formula at rest', () => {
    const curve = curveOf('Wageningen B', 0.6, 1, 0.7, 4);
    const { areaRatio, blades } = curve.geometry;
    const kt = bSeriesThrustCoefficient({ advanceRatio: ratio(0), pitchRatio: ratio(1), areaRatio, blades });
    expect(curve.thrustCoefficient(0)).toBeCloseTo(kt.si, 12);
  });
});

describe('engine tables', () => {
  it('does not answer outside its rows', () => {
    expect(diesel().torqueAt(650 * RPM)).toBeUndefined();
    expect(diesel().torqueAt(2810 * RPM)).toBeUndefined();
    expect(diesel().torqueAt(2600 * RPM)).toBeCloseTo(300000 / (2600 * RPM), 9);
  });
  it.each([
    ['one row', [[1000, 10]]],
    [
      'two rows of one speed',
      [
        [1000, 10],
        [1000, 20],
      ],
    ],
    [
      'a negative power',
      [
        [1000, 10],
        [1500, -20],
      ],
    ],
    [
      'a speed of zero',
      [
        [0, 10],
        [1500, 20],
      ],
    ],
  ])('refuses %s', (_, rows) => {
    const points = rows.map(([rpm, kw]) => ({ speed: turning(rpm! * RPM), power: power(kw! * 1000) }));
    expect(engineCurve(points).applies).toBe(false);
  });
});
