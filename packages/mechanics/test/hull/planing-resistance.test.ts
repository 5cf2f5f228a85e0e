import {
  given,
  type PlaningHull,
  planingAt,
  planingCurve,
  planingEquilibrium,
  planingHull,
  type Value,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';

const FT = 0.3048;
const GRAVITY = 9.80665;
const DEGREE = Math.PI / 180;

/** The hull of Savitsky's worked example (Marine Technology 1(1), 1964), as a spec declares one. */
const NUMBERS = {
  displacement: (60_000 * 4.4482216152605) / GRAVITY,
  gravityForward: 29 * FT,
  gravityHeight: 2 * FT,
  chineBeam: 14 * FT,
  deadrise: 10 * DEGREE,
  shaftAngle: 4 * DEGREE,
  thrustArm: 0.5 * FT,
  roughness: 0.0004,
  density: 1.9905 * 515.378818,
  viscosity: 1.2817e-5 * FT * FT,
};
const DIMENSIONS = {
  displacement: 'mass',
  gravityForward: 'length',
  gravityHeight: 'length',
  chineBeam: 'length',
  deadrise: 'angle',
  shaftAngle: 'angle',
  thrustArm: 'length',
  roughness: 'ratio',
  density: 'density',
  viscosity: 'kinematic viscosity',
} as const;

const hullWith = (changed: Partial<typeof NUMBERS> = {}): PlaningHull =>
  planingHull(
    Object.fromEntries(
      Object.entries({ ...NUMBERS, ...changed }).map(([key, si]) => [
        key,
        given(key, key, DIMENSIONS[key as keyof typeof DIMENSIONS], si),
      ]),
    ) as unknown as PlaningHull,
  );
const speed = (si: number): Value<'speed'> => given('vessel speed', 'V', 'speed', si);
const at = (changed: Partial<typeof NUMBERS>, V: number) => planingAt(hullWith(changed), speed(V));
const V = 67.5 * FT;
/** Which of the limits of the method are met. */
const conditions = (changed: Partial<typeof NUMBERS>, V: number) => {
  const result = at(changed, V);
  if (!result.applies) throw new Error(result.reason);
  return Object.fromEntries(result.trim.working!.range.map(one => [one.condition, one.met]));
};
const TRIM = 'trim 2 to 15 degrees';
const WETTED = 'wetted length at most 4 beams';
const SPEED = 'speed coefficient 0.6 to 13';

describe('a planing hull of which little is known', () => {
  // Sea water of 15 °C: density by ITTC 7.5-02-01-03 rounded to 1025, viscosity 1.1883e-6 m²/s (ITTC 2011, table).
  it.each([
    ['shaftAngle', 'ε', 'angle', 0, /parallel to the keel/],
    ['thrustArm', 'f', 'length', 0, /through the centre of gravity/],
    ['roughness', 'ΔCF', 'ratio', 0.0004, /0\.0004/],
    ['density', 'ρ', 'density', 1025, /1025 kg\/m³/],
    ['viscosity', 'ν', 'kinematic viscosity', 1.18831e-6, /1\.18831e-6 m²\/s/],
  ] as const)('takes %s for %s and says so', (key, symbol, dimension, si, why) => {
    const { displacement, gravityForward, gravityHeight, chineBeam, deadrise } = hullWith();
    const known = { displacement, gravityForward, gravityHeight, chineBeam, deadrise };
    const { [key]: value } = planingHull(known);
    expect(value).toMatchObject({ symbol, dimension, si });
    expect(value.assumed).toMatch(why);
    expect(hullWith()[key].assumed).toBeUndefined();
  });
});

describe('a planing hull at a speed', () => {
  it('tells trim, resistance and wetted length of its state, with all that they rest on', () => {
    const result = at({}, V);
    if (!result.applies) throw new Error(result.reason);
    // The equilibrium of the example, recomputed apart from this code: 2.21517°, λ 3.43982, 9164.5 lbf.
    expect(result.trim.si / DEGREE).toBeCloseTo(2.21517, 4);
    expect(result.wettedRatio.si).toBeCloseTo(3.43982, 4);
    expect(result.resistance.si / 4.4482216152605).toBeCloseTo(9164.5, 0);
    for (const value of [result.trim, result.wettedRatio, result.resistance]) {
      expect(value.working!.inputs.map(one => one.label).sort()).toEqual(
        ['vessel speed', ...Object.keys(NUMBERS)].sort(),
      );
      expect(value.working!.range.map(one => one.met)).toEqual([true, true, true]);
    }
  });

  // The speed coefficient is V/√(g b): the limits of the method stand at these speeds to the last digit that counts.
  it.each([
    ['just above its least speed coefficient', 0.6005, SPEED, true],
    ['just below it', 0.5995, SPEED, false],
    ['just below the greatest', 12.99, SPEED, true],
    ['just above it', 13.01, SPEED, false],
  ])('says of the speed coefficient that it is %s', (_what, cv, condition, met) => {
    // So light that it planes at so little speed, or so heavy that it is balanced at so much.
    const changed = cv < 1 ? { displacement: 1000, gravityForward: 2 } : { displacement: 60_000 };
    expect(conditions(changed, cv * Math.sqrt(GRAVITY * NUMBERS.chineBeam))[condition]).toBe(met);
  });

  it('says of the trim and of the wetted length whether they lie within the limits', () => {
    const seen = { [TRIM]: new Set<boolean>(), [WETTED]: new Set<boolean>() };
    for (let share = 0.1; share <= 1.2; share += 0.01) {
      const changed = { gravityForward: 29 * FT * share };
      const result = at(changed, V);
      if (!result.applies) continue;
      const { trim, wettedRatio } = result.state;
      const told = conditions(changed, V);
      expect(told[TRIM], `${trim}`).toBe(trim >= 2 && trim <= 15);
      expect(told[WETTED], `${wettedRatio}`).toBe(wettedRatio <= 4);
      seen[TRIM].add(told[TRIM]!);
      seen[WETTED].add(told[WETTED]!);
    }
    expect([...seen[TRIM]].sort()).toEqual([false, true]);
    expect([...seen[WETTED]].sort()).toEqual([false, true]);
  });

  it.each([
    ['no speed', {}, 0, /speed above zero/],
    ['an endless speed', {}, Number.POSITIVE_INFINITY, /speed above zero/],
    ['a speed astern', {}, -V, /speed above zero/],
    ['no displacement', { displacement: 0 }, V, /displacement, chine beam/],
    ['no beam', { chineBeam: 0 }, V, /displacement, chine beam/],
    ['no density', { density: 0 }, V, /displacement, chine beam/],
    ['no viscosity', { viscosity: 0 }, V, /displacement, chine beam/],
    ['a beam below nil', { chineBeam: -4 }, V, /displacement, chine beam/],
    ['a density below nil', { density: -1 }, V, /displacement, chine beam/],
    ['a viscosity below nil', { viscosity: -1 }, V, /displacement, chine beam/],
    ['a displacement below nil', { displacement: -1 }, V, /displacement, chine beam/],
    ['no number', { gravityHeight: Number.NaN }, V, /finite gravityHeight/],
    ['a deadrise of 45 degrees', { deadrise: 45 * DEGREE }, V, /below 45 degrees, not 45\.0\./],
    ['a deadrise below nil', { deadrise: -0.1 * DEGREE }, V, /below 45 degrees, not -0\.1\./],
    [
      'a centre of gravity behind the transom',
      { gravityForward: -3 },
      V,
      /balances this hull at 20\.57 m\/s\. .*\(-3\.00 m from the transom\)/,
    ],
  ])('refuses %s', (_what, changed, V, reason) => {
    const result = at(changed, V);
    expect(result).toMatchObject({ applies: false, reason: expect.stringMatching(reason) });
  });

  it.each([
    ['half a newton', { displacement: 0.05 }, V],
    ['a beam of half a metre', { chineBeam: 0.5 }, V],
    ['a thin medium', { density: 0.5 }, V],
    ['less than a metre a second', {}, 0.5],
  ])('does not call %s nothing', (_what, changed, V) => {
    const result = at(changed, V);
    expect(result.applies ? '' : result.reason).not.toMatch(/above zero/);
  });

  it.each([
    ['a flat bottom', { deadrise: 0 }],
    ['a deadrise just below 45 degrees', { deadrise: 44.9 * DEGREE, displacement: 9000 }],
  ])('takes %s', (_what, changed) => {
    expect(at(changed, V).applies).toBe(true);
  });
});

describe('the resistance of a planing hull against speed', () => {
  const upTo = speed(1.6 * V);

  it('is that of the hull at each of sixty speeds where the limits hold, and speaks nowhere else', () => {
    const curve = planingCurve(hullWith(), upTo);
    if (!curve.applies) throw new Error(curve.reason);
    const numbers = {
      ...NUMBERS,
      weight: NUMBERS.displacement * GRAVITY,
      deadrise: 10,
      shaftAngle: 4,
    };
    const within = Array.from({ length: 60 }, (_, index) => (upTo.si * (index + 1)) / 60).filter(V => {
      const state = planingEquilibrium(numbers, V);
      return state && state.trim >= 2 && state.trim <= 15 && state.wettedRatio <= 4;
    });
    expect(within.length).toBeGreaterThan(5);
    expect(within.length).toBeLessThan(55);
    expect(curve.lowest).toBe(within[0]);
    expect(curve.highest).toBe(within.at(-1));
    for (const V of within) {
      expect(curve.numberAt(V)! / planingEquilibrium(numbers, V)!.resistance).toBeCloseTo(1, 9);
      expect(curve.valueAt(speed(V))!.si / planingEquilibrium(numbers, V)!.resistance).toBeCloseTo(1, 9);
    }
    const between = (within[2]! + within[3]!) / 2;
    expect(curve.numberAt(between)! / planingEquilibrium(numbers, between)!.resistance).toBeCloseTo(1, 3);
    for (const beyond of [within[0]! * 0.99, within.at(-1)! * 1.01]) {
      expect(curve.numberAt(beyond)).toBeUndefined();
      expect(curve.valueAt(speed(beyond))).toBeUndefined();
    }
  });

  it('reaches from the first of the speeds to the last where the limits hold at both', () => {
    const light = hullWith({ displacement: 2000, gravityForward: 1.5 });
    // Speed coefficients of 0.62 to 37: beyond 13 the method says nothing.
    const first = 0.62 * Math.sqrt(GRAVITY * NUMBERS.chineBeam);
    expect(planingCurve(light, speed(60 * first))).toMatchObject({ applies: true, lowest: first });
    expect(planingCurve(hullWith(), speed(V))).toMatchObject({ applies: true, highest: V });
  });

  it.each([
    ['no speed at all', {}, speed(0), /speed above zero/],
    ['no weight', { displacement: 0 }, upTo, /displacement, chine beam/],
    [
      'a hull that only ploughs',
      { gravityForward: 45 * FT },
      speed(0.5 * V),
      /at any speed up to 10\.3 m\/s: .* at the highest speed the trim is \d\.\d degrees and the wetted length \d+\.\d beams\./,
    ],
  ])('has none for %s', (_what, changed, upTo, reason) => {
    expect(planingCurve(hullWith(changed), upTo)).toMatchObject({
      applies: false,
      reason: expect.stringMatching(reason),
    });
  });

  it('has none where the limits hold at one of the sixty speeds alone', () => {
    const whole = planingCurve(hullWith(), upTo);
    if (!whole.applies) throw new Error(whole.reason);
    // With the top speed a little above the first speed of the curve, one speed is within.
    const top = whole.lowest * 1.001;
    const alone = planingCurve(hullWith(), speed(top));
    expect(alone).toMatchObject({
      applies: false,
      reason: expect.stringContaining(`at ${top.toFixed(1)} m/s only`),
    });
  });

  it('stays the same for other hulls asked between', () => {
    const first = at({}, V);
    const other = at({ displacement: 20_000 }, V);
    const again = at({}, V);
    if (!(first.applies && other.applies && again.applies)) throw new Error('applies');
    expect(again.resistance.si).toBe(first.resistance.si);
    expect(other.resistance.si).toBeLessThan(first.resistance.si);
    for (let hulls = 0; hulls < 70; hulls++) at({ displacement: 20_000 + hulls }, V);
    const late = at({}, V);
    expect(late.applies && late.resistance.si).toBe(first.resistance.si);
  });
});
