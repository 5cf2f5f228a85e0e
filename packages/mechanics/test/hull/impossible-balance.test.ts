import {
  balanceAtShaftSpeed,
  type DrivenVessel,
  engineCurve,
  given,
  predictAt,
  predictTopSpeed,
  resistanceTable,
  type Value,
  valuesBehind,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { curveOf, density, diesel, must, power, RPM, ratio, speed, turning } from '../propeller/support.js';

/** Resistance that grows with the square of the speed, invented. */
const rowsTo = (top: number, from = 0) =>
  [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14]
    .filter(v => v >= from && v <= top)
    .map(v => ({ speed: speed(v), resistance: given('R', 'R', 'force', 160 * v * v) }));
const vesselWith = (changed: Partial<DrivenVessel> = {}, top = 14, from = 0): DrivenVessel => ({
  resistance: must(resistanceTable(rowsTo(top, from))),
  curve: curveOf('Wageningen B', 0.56, 1.05, 0.7, 4),
  screws: given('screws', 'Ns', 'number', 2),
  wakeFraction: ratio(0.02),
  thrustDeduction: ratio(0.08),
  density,
  ...changed,
});
const screws = (si: number) => ({ screws: given('screws', 'Ns', 'number', si) });
const water = (si: number): { density: Value<'density'> } => ({
  density: given('density', 'ρ', 'density', si),
});
const line = { ratio: ratio(2.043), efficiency: ratio(0.96) };
const engine = diesel();
const SHAFT = 1100 * RPM;

const reasonOf = (result: { applies: boolean; reason?: string }) => (result.applies ? '' : result.reason!);

describe('a vessel that cannot be', () => {
  const REFUSED: readonly (readonly [string, Partial<DrivenVessel>, RegExp])[] = [
    ['no screw', screws(0), /number of screws must be 1 or more/],
    ['half a screw more', screws(1.5), /number of screws/],
    ['a screw taken away', screws(-1), /number of screws/],
    ['a wake of -0.5', { wakeFraction: ratio(-0.5) }, /wake fraction of -0\.5 is not possible/],
    ['a wake of 0.9', { wakeFraction: ratio(0.9) }, /wake fraction of 0\.9 is not possible/],
    ['a thrust deduction under -0.2', { thrustDeduction: ratio(-0.201) }, /thrust deduction of -0\.201/],
    ['a thrust deduction of 0.9', { thrustDeduction: ratio(0.9) }, /thrust deduction of 0\.9/],
    ['no density', water(0), /density of the water/],
    ['a density below nil', water(-1), /density of the water/],
    ['an endless density', water(Number.POSITIVE_INFINITY), /density of the water/],
  ];

  it.each(REFUSED)('is refused for %s, at a shaft speed and at full throttle', (_what, changed, reason) => {
    const vessel = vesselWith(changed);
    expect(reasonOf(balanceAtShaftSpeed(vessel, turning(SHAFT)))).toMatch(reason);
    expect(reasonOf(predictTopSpeed(vessel, line, engine))).toMatch(reason);
    expect(reasonOf(predictAt(vessel, line, engine, turning(2000 * RPM)))).toMatch(reason);
  });

  it.each([
    ['one screw', screws(1)],
    ['a wake just above -0.5', { wakeFraction: ratio(-0.495) }],
    ['a wake just below 0.9', { wakeFraction: ratio(0.895) }],
    ['a wake between 0.9 and 0.918', { wakeFraction: ratio(0.899) }],
    ['a thrust deduction of -0.2', { thrustDeduction: ratio(-0.2) }],
    ['a thrust deduction just below 0.9', { thrustDeduction: ratio(0.899) }],
    ['a thin medium', water(0.5)],
  ] as const)('is not refused for %s', (_what, changed) => {
    expect(reasonOf(balanceAtShaftSpeed(vesselWith(changed), turning(SHAFT)))).not.toMatch(
      /screws|wake fraction of|thrust deduction of|density/,
    );
  });

  it.each([
    ['a shaft at rest', 0],
    ['a shaft astern', -SHAFT],
    ['an endless speed', Number.POSITIVE_INFINITY],
    ['no number', Number.NaN],
  ])('has no balance with %s', (_what, si) => {
    expect(reasonOf(balanceAtShaftSpeed(vesselWith(), turning(si)))).toMatch(/shaft must turn/);
  });

  it('is balanced at half a turn a second and less', () => {
    for (const si of [0.3, 0.9, 3]) {
      const slow = must(balanceAtShaftSpeed(vesselWith(), turning(si)));
      expect(slow.vesselSpeed.si).toBeGreaterThan(0);
    }
  });

  it.each([
    ['no ratio', { ratio: ratio(0) }, /reduction ratio must be a positive number/],
    ['a ratio below nil', { ratio: ratio(-2) }, /reduction ratio/],
    ['an endless ratio', { ratio: ratio(Number.POSITIVE_INFINITY) }, /reduction ratio/],
    ['an efficiency of nil', { efficiency: ratio(0) }, /efficiency of the driveline/],
    ['an efficiency below nil', { efficiency: ratio(-0.5) }, /efficiency of the driveline/],
    ['an efficiency above 1', { efficiency: ratio(1.001) }, /efficiency of the driveline/],
  ])('is not driven through %s', (_what, changed, reason) => {
    const wrong = { ...line, ...changed };
    expect(reasonOf(predictTopSpeed(vesselWith(), wrong, engine))).toMatch(reason);
    expect(reasonOf(predictAt(vesselWith(), wrong, engine, turning(2000 * RPM)))).toMatch(reason);
  });

  it.each([
    ['an overdrive', { ratio: ratio(0.5) }],
    ['a drive without losses', { efficiency: ratio(1) }],
  ])('may be driven through %s', (_what, changed) => {
    expect(reasonOf(predictTopSpeed(vesselWith(), { ...line, ...changed }, engine))).not.toMatch(
      /reduction ratio|efficiency/,
    );
  });
});

describe('a balance at the ends of a table of resistance', () => {
  const whole = must(balanceAtShaftSpeed(vesselWith(), turning(SHAFT))).vesselSpeed.si;

  it('lies between the ends, and the same within a shorter table', () => {
    expect(whole).toBeGreaterThan(6);
    expect(whole).toBeLessThan(12);
    const [below, above] = [Math.floor(whole), Math.ceil(whole)];
    const short = must(balanceAtShaftSpeed(vesselWith({}, above, below - 1), turning(SHAFT)));
    expect(short.vesselSpeed.si).toBeCloseTo(whole, 1);
    expect(reasonOf(balanceAtShaftSpeed(vesselWith({}, below), turning(SHAFT)))).toContain(
      `faster than ${below.toFixed(2)} m/s`,
    );
    expect(reasonOf(balanceAtShaftSpeed(vesselWith({}, 14, above), turning(SHAFT)))).toContain(
      `below ${above.toFixed(2)} m/s`,
    );
  });

  it('is below the table where the propeller drives at none of its speeds', () => {
    // At 100 rpm no thrust is left at 2 m/s: nothing of the table can be reached.
    expect(reasonOf(balanceAtShaftSpeed(vesselWith({}, 14, 3), turning(100 * RPM)))).toMatch(
      /^The balance lies below 3\.00 m\/s/,
    );
  });

  it('counts as 1, and as assumed, what nobody knows of the flow behind the hull', () => {
    const { torque } = must(balanceAtShaftSpeed(vesselWith(), turning(SHAFT)));
    const flow = [...valuesBehind(torque)].find(one => one.symbol === 'ηR');
    expect(flow).toMatchObject({ label: 'relative rotative efficiency', dimension: 'ratio', si: 1 });
    expect(flow!.assumed).toMatch(/behind the hull, 1/);
    const known = vesselWith({
      relativeRotativeEfficiency: given('relative rotative efficiency', 'ηR', 'ratio', 0.97),
    });
    const behind = must(balanceAtShaftSpeed(known, turning(SHAFT)));
    expect(behind.torque.si * 0.97).toBeCloseTo(torque.si, 6);
    expect(behind.vesselSpeed.si).toBe(whole);
  });

  it('says when full throttle stays below the engine table', () => {
    const late = must(
      engineCurve([2000, 2600].map(rpm => ({ speed: turning(rpm * RPM), power: power(rpm * 12) }))),
    );
    expect(reasonOf(predictTopSpeed(vesselWith(), line, late))).toMatch(
      /below the lowest speed of the engine table/,
    );
  });

  it('stops at the end of an engine table that ends with torque, at the speed of that end', () => {
    const ends = must(
      engineCurve([800, 2200].map(rpm => ({ speed: turning(rpm * RPM), power: power(rpm * 140) }))),
    );
    const light = vesselWith({ curve: curveOf('Wageningen B', 0.5, 0.8, 0.7, 4) });
    const top = must(predictTopSpeed(light, line, ends));
    expect(top.endOfTable).toBe(true);
    expect(top.engineSpeed.si).toBeCloseTo(2200 * RPM, 6);
    expect(top.vesselSpeed.si).toBeCloseTo(
      must(balanceAtShaftSpeed(light, turning((2200 * RPM) / 2.043))).vesselSpeed.si,
      6,
    );
    expect(top.loadFraction!.si).toBeLessThan(1);
  });

  it.each([undefined, 0.95, 1.05])(
    'gives at full throttle all the torque there is, with ηR %s',
    efficiency => {
      const vessel = vesselWith({
        curve: curveOf('Wageningen B', 0.56, 1.3, 0.7, 4),
        ...(efficiency
          ? { relativeRotativeEfficiency: given('relative rotative efficiency', 'ηR', 'ratio', efficiency) }
          : {}),
      });
      const top = must(predictTopSpeed(vessel, line, engine));
      expect(top.endOfTable).toBe(false);
      expect(top.loadFraction!.si).toBeCloseTo(1, 6);
      expect(top.torque.si / (top.torqueAvailable!.si * 2.043 * 0.96)).toBeCloseTo(1, 6);
    },
  );
});
