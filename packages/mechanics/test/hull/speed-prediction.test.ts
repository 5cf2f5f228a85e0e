import {
  balanceAtShaftSpeed,
  type DrivenVessel,
  engineCurve,
  given,
  outsideRange,
  predictAt,
  predictTopSpeed,
  type ResistanceCurve,
  resistanceTable,
  torqueBehindHull,
  valuesBehind,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/support/share.js';
import {
  bisect,
  curveOf,
  density,
  diesel,
  must,
  power,
  RPM,
  ratio,
  speed,
  turning,
} from '../propeller/support.js';
import { published } from '../published.js';

published(torqueBehindHull, 'recomputed by hand from the definition', [
  {
    case: '980 N·m, ηR 0.98',
    inputs: { openWaterTorque: 980, relativeRotativeEfficiency: 0.98 },
    gives: 1000,
    within: 1e-9,
  },
]);

const force = (si: number) => given('R', 'R', 'force', si);
/** Resistance of a 12 t semi-planing hull, invented. */
const ROWS: readonly (readonly [number, number])[] = [
  [0, 0],
  [2, 500],
  [4, 3200],
  [5, 7500],
  [6, 11500],
  [8, 15500],
  [10, 18800],
  [12, 23000],
  [14, 28500],
];
const table = must(resistanceTable(ROWS.map(([v, r]) => ({ speed: speed(v), resistance: force(r) }))));

const vessel = (pitch: number, resistance: ResistanceCurve = table, screws = 2): DrivenVessel => ({
  resistance,
  curve: curveOf('Wageningen B', 0.56, pitch, 0.7, 4),
  screws: given('screws', 'Ns', 'number', screws),
  wakeFraction: ratio(0.02),
  thrustDeduction: ratio(0.08),
  density,
});
const driveline = { ratio: ratio(2.043), efficiency: ratio(0.96) };
const engine = diesel();

/** Net thrust less resistance, written out again. */
function spareThrust(v: DrivenVessel, shaft: number, V: number): number {
  const n = shaft / (2 * Math.PI);
  const d = v.curve.geometry.diameter.si;
  const kt = v.curve.at(ratio((V * 0.98) / (n * d))).thrustCoefficient.si;
  return v.screws.si * 0.92 * kt * 1025 * n ** 2 * d ** 4 - v.resistance.numberAt(V)!;
}

describe('speed at a shaft speed', () => {
  it.each([700, 900, 1100, 1272])('%f rpm: thrust meets resistance, by bisection too', rpm => {
    const v = vessel(1.05);
    const found = must(balanceAtShaftSpeed(v, turning(rpm * RPM)));
    const other = bisect(V => spareThrust(v, rpm * RPM, V), 0.1, 13);
    expect(found.vesselSpeed.si).toBeCloseTo(other, 7);
    expect(2 * 0.92 * found.thrust.si).toBeCloseTo(found.resistance.si, 4);
    expect(found.effectivePower.si).toBeCloseTo(found.resistance.si * found.vesselSpeed.si, 4);
  });
});

describe('full-throttle speed', () => {
  it.each(share([0.8, 0.95, 1.1, 1.25, 1.4], 2))('pitch ratio %f, by two nested bisections', pitch => {
    const v = vessel(pitch);
    const found = must(predictTopSpeed(v, driveline, engine));
    // The other way round: for each engine speed the vessel's speed, then the engine's spare torque.
    const speedAt = (we: number) => bisect(V => spareThrust(v, we / 2.043, V), 0.05, 13.9);
    const spare = (we: number) => {
      const n = we / 2.043 / (2 * Math.PI);
      const kq = v.curve.at(ratio((speedAt(we) * 0.98) / (n * 0.56))).torqueCoefficient.si;
      return engine.torqueAt(we)! * 2.043 * 0.96 - kq * 1025 * n ** 2 * 0.56 ** 5;
    };
    const other = bisect(spare, 1500 * RPM, 2800 * RPM);
    expect(found.engineSpeed.si / RPM).toBeCloseTo(other / RPM, 4);
    expect(found.vesselSpeed.si).toBeCloseTo(speedAt(other), 6);
    expect(found.loadFraction!.si).toBeCloseTo(1, 6);
    expect(found.endOfTable).toBe(false);
    expect(outsideRange(found.power)).toEqual([]);
  });

  it('is stopped by the end of a table, and says so', () => {
    const rows = [800, 1600, 2600].map(rpm => ({ speed: turning(rpm * RPM), power: power(rpm * 200) }));
    const found = must(predictTopSpeed(vessel(0.8), driveline, must(engineCurve(rows))));
    expect(found.endOfTable).toBe(true);
    expect(found.engineSpeed.si).toBeCloseTo(2600 * RPM, 6);
    expect(found.loadFraction!.si).toBeLessThan(1);
  });

  it('leads back to what was declared', () => {
    const found = must(predictTopSpeed(vessel(1.1), driveline, engine));
    const behind = new Set(valuesBehind(found.torque));
    expect(behind.has(driveline.ratio)).toBe(true);
    expect(behind.has(engine.inputs[1]!)).toBe(true);
  });

  it('counts uneven flow behind the hull as more torque', () => {
    const even = must(predictTopSpeed(vessel(1.1), driveline, engine));
    const uneven = must(
      predictTopSpeed({ ...vessel(1.1), relativeRotativeEfficiency: ratio(0.97) }, driveline, engine),
    );
    expect(uneven.engineSpeed.si).toBeLessThan(even.engineSpeed.si);
    expect(uneven.loadFraction!.si).toBeCloseTo(1, 6);
  });
});

describe('operating points', () => {
  it('gives speed and load at each row of the engine table, rising', () => {
    const points = engine.speeds.map(speed =>
      must(predictAt(vessel(1.05), driveline, engine, turning(speed))),
    );
    const speeds = points.map(one => one.vesselSpeed.si);
    expect([...speeds].sort((a, b) => a - b)).toEqual(speeds);
    const loads = points.slice(0, -1).map(one => one.loadFraction!.si);
    expect(loads.every(load => load > 0 && Number.isFinite(load))).toBe(true);
    // No torque is left at the highest no-load speed, so there is no load fraction to give.
    expect(outsideRange(points.at(-1)!.loadFraction!).join()).toContain(
      'engine torque at this speed above zero',
    );
  });
  it('answers at idle, below the engine table, without a load', () => {
    const idle = must(predictAt(vessel(1.05), driveline, engine, turning(600 * RPM)));
    expect(idle.torqueAvailable).toBeUndefined();
    expect(idle.loadFraction).toBeUndefined();
    expect(idle.vesselSpeed.si).toBeGreaterThan(1);
    expect(idle.vesselSpeed.si).toBeLessThan(4);
  });
});

describe('a declared table of resistance', () => {
  it('passes through its rows and never beyond their height between them', () => {
    for (const [v, r] of ROWS) expect(table.numberAt(v)).toBeCloseTo(r, 9);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 14, noNaN: true }), v => {
        const index = Math.max(
          1,
          ROWS.findIndex(([x]) => x >= v),
        );
        const here = table.numberAt(v)!;
        expect(here).toBeGreaterThanOrEqual(ROWS[index - 1]![1] - 1e-9);
        expect(here).toBeLessThanOrEqual(ROWS[index]![1] + 1e-9);
      }),
    );
  });
  it.each([-0.1, 14.01, Number.NaN])('does not answer at %f m/s', v => {
    expect(table.numberAt(v)).toBeUndefined();
    expect(table.valueAt(speed(v))).toBeUndefined();
  });
  it('takes effective power and delivered power as well', () => {
    const effective = must(
      resistanceTable([5, 10].map(v => ({ speed: speed(v), effectivePower: power(v * 1000) }))),
    );
    const delivered = must(
      resistanceTable(
        [5, 10].map(v => ({
          speed: speed(v),
          deliveredPower: power(v * 2000),
          propulsiveEfficiency: ratio(0.5),
        })),
      ),
    );
    expect(effective.numberAt(7)).toBeCloseTo(1000, 9);
    expect(delivered.numberAt(7)).toBeCloseTo(1000, 9);
  });
  it('keeps a hump and a hollow where the rows have them', () => {
    const humped = must(
      resistanceTable(
        [
          [0, 0],
          [4, 10],
          [5, 8],
          [8, 20],
        ].map(([v, r]) => ({ speed: speed(v!), resistance: force(r!) })),
      ),
    );
    for (let v = 0; v <= 8; v += 0.05) {
      const here = humped.numberAt(Math.min(8, v))!;
      expect(here).toBeLessThanOrEqual(v <= 5 ? 10 + 1e-9 : 20 + 1e-9);
      expect(here).toBeGreaterThanOrEqual(v >= 4 ? 8 - 1e-9 : -1e-9);
    }
  });
  it.each([
    ['one row', [[1, 10]]],
    [
      'two rows of one speed',
      [
        [1, 10],
        [1, 20],
      ],
    ],
    [
      'a negative resistance',
      [
        [1, 10],
        [2, -20],
      ],
    ],
  ])('refuses %s', (_, rows) => {
    expect(resistanceTable(rows.map(([v, r]) => ({ speed: speed(v!), resistance: force(r!) }))).applies).toBe(
      false,
    );
  });
  it('refuses a power at rest, which says nothing of the resistance', () => {
    const rows = [0, 5].map(v => ({ speed: speed(v), effectivePower: power(1000) }));
    expect(resistanceTable(rows).applies).toBe(false);
  });
});

describe('where there is no balance', () => {
  const from = (low: number, high: number) =>
    must(
      resistanceTable(
        ROWS.filter(([v]) => v >= low && v <= high).map(([v, r]) => ({
          speed: speed(v),
          resistance: force(r),
        })),
      ),
    );
  it('says that the vessel would go faster than the table', () => {
    const result = predictTopSpeed(vessel(1.2, from(0, 8)), driveline, engine);
    expect(result.applies ? '' : result.reason).toContain('faster than 8.00 m/s');
  });
  it('says that idle lies below a table that starts at planing speed', () => {
    const result = predictAt(vessel(1.05, from(8, 14)), driveline, engine, turning(700 * RPM));
    expect(result.applies ? '' : result.reason).toContain('below 8.00 m/s');
  });
  it('says that the engine cannot drive the vessel onto the table', () => {
    const weak = must(
      engineCurve([800, 2600].map(rpm => ({ speed: turning(rpm * RPM), power: power(rpm * 2) }))),
    );
    const result = predictTopSpeed(vessel(1.1, from(10, 14)), driveline, weak);
    expect(result.applies ? '' : result.reason).toContain('cannot drive this vessel at 10.00 m/s');
  });
  it.each([
    ['no ratio', { driveline: { ...driveline, ratio: ratio(0) } }],
    ['an efficiency over 1', { driveline: { ...driveline, efficiency: ratio(1.2) } }],
  ])('refuses %s', (_, change) => {
    expect(predictTopSpeed(vessel(1), change.driveline, engine).applies).toBe(false);
  });
  it('is finite and in balance, or gives a reason', () => {
    const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        within(0.5, 1.4),
        within(0.5, 5),
        within(0.05, 20),
        fc.integer({ min: 1, max: 3 }),
        (p, i, scale, screws) => {
          const scaled = must(
            resistanceTable(ROWS.map(([v, r]) => ({ speed: speed(v), resistance: force(r * scale) }))),
          );
          const line = { ratio: ratio(i), efficiency: ratio(0.96) };
          const found = predictTopSpeed(vessel(p, scaled, screws), line, engine);
          if (!found.applies) {
            expect(found.reason.length).toBeGreaterThan(40);
            return;
          }
          for (const value of [found.vesselSpeed, found.thrust, found.power, found.resistance])
            expect(Number.isFinite(value.si)).toBe(true);
          expect(screws * 0.92 * found.thrust.si).toBeCloseTo(found.resistance.si, 2);
        },
      ),
      { numRuns: 60 },
    );
  });
});
