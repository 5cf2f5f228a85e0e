import {
  bladeRateOrder,
  criticalSpeed,
  given,
  LATERAL_ENTRAINED_WATER,
  outsideRange,
  overhungBracket,
  overhungDunkerley,
  overhungFrequency,
  propellerInertiaInWater,
  propellerMassInWater,
  shaftSecondMomentOfArea,
  spanEnds,
  spanFrequencyNumber,
  valuesBehind,
  whirlInertia,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { dunkerley, dunkerleyPair } from '../held/dunkerley.js';
import {
  cantileverEndDeflection,
  fixedSpanDeflection,
  frequencyFromDeflection,
  frequencyFromUniformSag,
  pinnedSpanDeflection,
  uniformSpanSag,
} from '../held/mass-on-span.js';
import { overhungPanagopulos } from '../held/overhung-dunkerley.js';
import { uniformSpanFrequency } from '../held/uniform-span.js';
import { published } from '../published.js';
import { GRAVITY, INCH, LONG_TON, PER_MINUTE, PSI, secondMoment } from './units.js';

describe('frequency numbers of uniform spans — printed in every vibration handbook (S. P. Timoshenko, Vibration Problems in Engineering, from memory)', () => {
  it.each([
    ['pinned-pinned', 1, Math.PI, 1e-12],
    ['pinned-pinned', 3, 3 * Math.PI, 1e-12],
    ['fixed-pinned', 1, 3.9266, 5e-5],
    ['fixed-pinned', 2, 7.0686, 5e-5],
    ['fixed-fixed', 1, 4.73, 5e-5],
    ['fixed-fixed', 2, 7.8532, 5e-5],
    ['cantilever', 1, 1.8751, 5e-5],
    ['cantilever', 2, 4.6941, 5e-5],
    ['cantilever', 3, 7.8548, 5e-5],
  ] as const)('%s mode %i', (ends, mode, printed, within) => {
    expect(Math.abs(spanFrequencyNumber(ends, mode) - printed)).toBeLessThanOrEqual(within);
  });

  it('has no number for a mode that does not exist', () => {
    expect(spanFrequencyNumber('fixed-fixed', 0)).toBeNaN();
    expect(spanFrequencyNumber('cantilever', 1.5)).toBeNaN();
  });

  it('satisfies the characteristic equations in high modes', () => {
    const b = spanFrequencyNumber('fixed-fixed', 4);
    expect(Math.cos(b) * Math.cosh(b)).toBeCloseTo(1, 7);
    expect(spanFrequencyNumber('cantilever', 300)).toBeCloseTo(299.5 * Math.PI, 9);
    expect(spanEnds('fixed-fixed', 4).written).toBe('fixed-fixed, mode 4');
  });
});

// The handbook span formula L[ft] = √(3.21 D/n) (E/w)^¼ is this critical at the shaft speed itself. Its published
// example: bronze 1 in, 2000 rpm, E 16e6 psi, w 0.304 lb/in³, 3.412 ft (printed 3 ft 5 in).
published(uniformSpanFrequency, 'handbook bearing-span example, bronze 1 in at 2000 rpm', [
  {
    case: 'the span it allows is critical at 2000 rpm, within the rounding of its 3.21 and of 3.412 ft',
    inputs: {
      beta: Math.PI,
      L: 3.412 * 0.3048,
      E: 16e6 * PSI,
      I: secondMoment(INCH),
      mu: ((0.304 * 0.45359237) / INCH ** 3) * (Math.PI / 4) * INCH ** 2,
    },
    gives: 2000,
    within: 4,
    unit: PER_MINUTE,
  },
]);

published(
  shaftSecondMomentOfArea,
  'handbook geometry: 60 mm solid 636,173 mm⁴, and 40 mm bore less 125,664 mm⁴',
  [
    { case: 'solid', inputs: { d: 0.06, di: 0 }, gives: 636173, within: 0.5, unit: 1e-12 },
    { case: 'hollow', inputs: { d: 0.06, di: 0.04 }, gives: 636173 - 125664, within: 1, unit: 1e-12 },
  ],
);

const bevan1 = { W: 0.3 * LONG_TON * GRAVITY, L: 36 * INCH, E: 30e6 * PSI, I: secondMoment(3 * INCH) };
const bevan2 = {
  W: 0.5 * LONG_TON * GRAVITY,
  a: 36 * INCH,
  b: 24 * INCH,
  E: 30e6 * PSI,
  I: secondMoment(2 * INCH),
};

// Sarkar writes f = 0.4985/√δ, which is √g/2π rounded up: its Hz in ours.
const SARKAR = Math.sqrt(GRAVITY) / (2 * Math.PI) / 0.4985;

describe('mass on a span — worked examples', () => {
  const values = (inputs: Record<string, number>) =>
    Object.fromEntries(
      Object.entries(inputs).map(([name, si]) => [name, given(name, name, 'number', si)]),
    ) as never;
  it.each([
    [
      'T. Bevan, The Theory of Machines, ch. 15 ex. 1, /min',
      cantileverEndDeflection,
      bevan1,
      634,
      0.5,
      PER_MINUTE,
    ],
    [
      'T. Bevan, The Theory of Machines, ch. 15 ex. 2, /min',
      fixedSpanDeflection,
      bevan2,
      863,
      0.5,
      PER_MINUTE,
    ],
    // Sarkar prints 34.99 and 51.9 Hz because it works with π = 3.147; with π itself it is 34.96 and 51.83.
    [
      'Sarkar, Theory of Machines, ch. 11 illus. 1 with true π, Hz',
      cantileverEndDeflection,
      { W: 450, L: 1.1, E: 200e9, I: secondMoment(0.1) },
      34.96,
      0.005,
      SARKAR,
    ],
    [
      'the same with the source’s π, Hz',
      cantileverEndDeflection,
      { W: 450, L: 1.1, E: 200e9, I: (secondMoment(0.1) * 3.147) / Math.PI },
      34.99,
      0.005,
      SARKAR,
    ],
    [
      'Sarkar, Theory of Machines, ch. 11 illus. 2 with true π, Hz',
      pinnedSpanDeflection,
      { W: 100 * 9.81, a: 0.3, b: 0.6, E: 200e9, I: secondMoment(0.06) },
      51.83,
      0.005,
      SARKAR,
    ],
    [
      'the same with the source’s π, Hz',
      pinnedSpanDeflection,
      { W: 100 * 9.81, a: 0.3, b: 0.6, E: 200e9, I: (secondMoment(0.06) * 3.147) / Math.PI },
      51.9,
      0.05,
      SARKAR,
    ],
  ] as const)('%s', (_, deflection, inputs, printed, within, unit) => {
    const frequency = frequencyFromDeflection({ delta: deflection(values(inputs)) });
    expect(Math.abs(frequency.si / unit - printed), `computed ${frequency.si / unit}`).toBeLessThanOrEqual(
      within,
    );
  });
});

// δ = g / (2π f)² turned round, from the printed frequencies: half a unit of their last digit.
published(cantileverEndDeflection, 'T. Bevan, The Theory of Machines, ch. 15 ex. 1: 634 /min is 0.0877 in', [
  { case: 'ex. 1', inputs: bevan1, gives: (187.8 / 634) ** 2, within: 0.00015, unit: INCH },
]);
published(fixedSpanDeflection, 'T. Bevan, The Theory of Machines, ch. 15 ex. 2: 863 /min is 0.0474 in', [
  { case: 'ex. 2', inputs: bevan2, gives: (187.8 / 863) ** 2, within: 0.00006, unit: INCH },
]);
published(pinnedSpanDeflection, 'Sarkar, Theory of Machines, ch. 11 illus. 2: 51.83 Hz is 0.0925 mm', [
  {
    case: 'illus. 2',
    inputs: { W: 100 * 9.81, a: 0.3, b: 0.6, E: 200e9, I: secondMoment(0.06) },
    gives: (0.4985 / 51.83) ** 2,
    within: 4e-8,
  },
]);
// Books print 0.4985/√m in Hz and 187.8/√in per minute, for g = 9.811 and 9.823 m/s²; with standard gravity they are
// 0.49840 and 187.64.
published(frequencyFromDeflection, '√g/2π with standard gravity, 9.80665 m/s² (3rd CGPM, 1901)', [
  { case: 'one metre, Hz', inputs: { delta: 1 }, gives: 0.4984, within: 5e-5 },
  { case: 'one inch, per minute', inputs: { delta: INCH }, gives: 187.64, within: 0.005, unit: PER_MINUTE },
]);
published(frequencyFromUniformSag, 'handbook rule: divide the sag by 1.27', [
  { case: 'one metre', inputs: { delta: 1.27 }, gives: 0.4985, within: 5e-4 },
]);
published(uniformSpanSag, 'handbook 5wL⁴/384EI: 1 kg/m over 2 m at EI 1000 N·m² sags 2.043 mm', [
  { case: 'round numbers', inputs: { mu: 1, L: 2, E: 1e9, I: 1e-6 }, gives: 2.043, within: 5e-4, unit: 1e-3 },
]);

it('gives one frequency for a uniform pinned span by its sag and by its frequency number', () => {
  const E = given('E', 'E', 'pressure', 206e9);
  const I = given('I', 'I', 'second moment of area', secondMoment(0.06));
  const L = given('L', 'L', 'length', 1.5);
  const mu = given('μ', 'μ', 'mass per length', 22.2);
  const bySag = frequencyFromUniformSag({ delta: uniformSpanSag({ mu, L, E, I }) }).si;
  expect(bySag).toBeCloseTo(uniformSpanFrequency({ beta: spanEnds('pinned-pinned'), L, E, I, mu }).si, 10);
});

published(dunkerleyPair, 'Dunkerley’s sum: 3 and 4 give 12/5', [
  { case: 'round numbers', inputs: { f1: 3, f2: 4 }, gives: 2.4, within: 1e-12 },
]);
it('combines any number of frequencies', () => {
  const f = (si: number) => given('f', 'f', 'frequency', si);
  expect(dunkerley(f(7)).si).toBe(7);
  expect(dunkerley(f(2), f(3), f(6)).si).toBeCloseTo(1 / Math.sqrt(1 / 4 + 1 / 9 + 1 / 36), 12);
});

// Propeller 40 kg and 0.5 kg·m², both × 1.25 for water, on a 60 mm steel shaft, span 1.5 m, overhang 0.25 m: figures
// recomputed outside this code from Woytowich’s influence numbers (Journal of Ship Research 23(4), 1979).
const massless = { L: 1.5, b: 0.25, E: 206e9, I: secondMoment(0.06), m: 50 };
const DENSITY = 7850;
const withMass = { ...massless, Id: 0.625, mu: (DENSITY * Math.PI * 0.06 ** 2) / 4 };

published(overhungFrequency.pinned.lower, 'Woytowich 1979, worked for a 60 mm shaft', [
  {
    case: 'no gyroscopic moment, rpm',
    inputs: { ...massless, Ie: 0.625 },
    gives: 2304,
    within: 0.5,
    unit: PER_MINUTE,
  },
]);
published(overhungFrequency.pinned.upper, 'Woytowich 1979, worked for a 60 mm shaft', [
  {
    case: 'no gyroscopic moment, rpm',
    inputs: { ...massless, Ie: 0.625 },
    gives: 17141,
    within: 0.5,
    unit: PER_MINUTE,
  },
]);
published(overhungDunkerley.pinned, 'Dunkerley, worked for a 60 mm shaft', [
  {
    case: 'propeller only, rpm',
    inputs: { ...withMass, mu: 0 },
    gives: 2283.6,
    within: 0.05,
    unit: PER_MINUTE,
  },
  { case: 'with shaft mass, rpm', inputs: withMass, gives: 1820.7, within: 0.05, unit: PER_MINUTE },
]);
// The same propeller and shaft with the forward end fixed; the shaft's share integrated numerically outside this code.
published(overhungFrequency.fixed.lower, 'Woytowich 1979, worked for a 60 mm shaft', [
  { case: 'fixed, rpm', inputs: { ...massless, Ie: 0.625 }, gives: 2588.92, within: 0.005, unit: PER_MINUTE },
]);
published(overhungFrequency.fixed.upper, 'Woytowich 1979, worked for a 60 mm shaft', [
  {
    case: 'fixed, rpm',
    inputs: { ...massless, Ie: 0.625 },
    gives: 17298.25,
    within: 0.005,
    unit: PER_MINUTE,
  },
]);
published(overhungDunkerley.fixed, 'Dunkerley, worked for a 60 mm shaft', [
  { case: 'fixed, with shaft mass, rpm', inputs: withMass, gives: 2227.48, within: 0.005, unit: PER_MINUTE },
]);
published(overhungPanagopulos, 'coefficients from memory, worked for a 60 mm shaft', [
  { case: 'with shaft mass, rpm', inputs: withMass, gives: 1621.5, within: 0.05, unit: PER_MINUTE },
]);
published(uniformSpanFrequency, 'bare span of the same shaft, worked outside this code', [
  {
    case: '60 mm, 1.5 m, rpm',
    inputs: { beta: Math.PI, L: 1.5, E: 206e9, I: secondMoment(0.06), mu: withMass.mu },
    gives: 3218.7,
    within: 0.05,
    unit: PER_MINUTE,
  },
]);

published(
  whirlInertia,
  'a thin disc has Ip = 2 Id: in synchronous whirl it stiffens as −Id, against it softens as 3 Id',
  [
    { case: 'forward, once a turn', inputs: { Id: 0.5, Ip: 1, q: 1 }, gives: -0.5, within: 1e-12 },
    { case: 'backward, once a turn', inputs: { Id: 0.5, Ip: 1, q: -1 }, gives: 1.5, within: 1e-12 },
    { case: 'forward, four blades', inputs: { Id: 0.5, Ip: 1, q: 4 }, gives: 0.25, within: 1e-12 },
  ],
);
published(propellerMassInWater, 'Woytowich 1979: a quarter more', [
  { case: '40 kg', inputs: { m: 40, w: LATERAL_ENTRAINED_WATER.si }, gives: 50, within: 1e-12 },
]);
published(propellerInertiaInWater, 'Woytowich 1979: a quarter more', [
  { case: '0.5 kg·m²', inputs: { I: 0.5, w: LATERAL_ENTRAINED_WATER.si }, gives: 0.625, within: 1e-12 },
]);

describe('overhung propeller in one call', () => {
  const inputs = {
    span: given('span', 'L', 'length', 1.5),
    overhang: given('overhang', 'b', 'length', 0.25),
    modulus: given('Young’s modulus', 'E', 'pressure', 206e9),
    section: given('section', 'I', 'second moment of area', secondMoment(0.06)),
    massPerLength: given('mass per length', 'm′', 'mass per length', withMass.mu),
    mass: propellerMassInWater({ m: given('propeller', 'm', 'mass', 40), w: LATERAL_ENTRAINED_WATER }),
    diametralInertia: propellerInertiaInWater({
      I: given('diametral inertia', 'Id', 'moment of inertia', 0.5),
      w: LATERAL_ENTRAINED_WATER,
    }),
  };

  it('brackets: a fixed forward end is stiffer in every figure', () => {
    const { pinned, fixed } = overhungBracket(inputs);
    expect(pinned.lower.si * 60).toBeCloseTo(2304, 0);
    for (const one of ['lower', 'upper', 'withShaftMass'] as const)
      expect(fixed[one].si, one).toBeGreaterThan(pinned[one].si);
  });

  it('carries the entrained water along as an assumption', () => {
    const { pinned } = overhungBracket(inputs);
    expect([...valuesBehind(pinned.lower)]).toContain(LATERAL_ENTRAINED_WATER);
  });

  it('shifts with the gyroscopic moment: up when the whirl turns with the shaft, down against it', () => {
    const polarInertia = given('polar inertia', 'Ip', 'moment of inertia', 1);
    const blades = given('blades', 'Z', 'number', 4);
    const at = (turning: 'with shaft' | 'against shaft') =>
      overhungBracket({ ...inputs, gyroscopic: { polarInertia, order: bladeRateOrder(blades, turning) } })
        .pinned;
    const still = overhungBracket(inputs).pinned;
    expect(at('with shaft').lower.si).toBeGreaterThan(still.lower.si);
    expect(at('against shaft').lower.si).toBeLessThan(still.lower.si);
  });

  it('says that no upper root is left when the gyroscopic moment outweighs the inertia', () => {
    const polarInertia = given('polar inertia', 'Ip', 'moment of inertia', 1.25);
    const order = given('order', 'q', 'number', 1);
    const { pinned } = overhungBracket({ ...inputs, gyroscopic: { polarInertia, order } });
    expect(pinned.lower.si).toBeGreaterThan(0);
    expect(pinned.upper.si).toBeNaN();
    expect(outsideRange(pinned.upper).join()).toContain('no upper root');
  });

  it('always flags the coefficients that are from memory', () => {
    const value = overhungPanagopulos({
      L: inputs.span,
      b: inputs.overhang,
      E: inputs.modulus,
      I: inputs.section,
      m: inputs.mass,
      Id: inputs.diametralInertia,
      mu: inputs.massPerLength,
    });
    expect(overhungPanagopulos.spec.source.confidence).toBe('from memory');
    expect(outsideRange(value)).toHaveLength(1);
    expect(value.si).toBeLessThan(overhungBracket(inputs).pinned.withShaftMass.si);
  });
});

published(criticalSpeed, '2304 per minute at blade rate: 576 rpm with four blades, 2304 rpm at once a turn', [
  { case: 'four blades', inputs: { f: 2304 / 60, q: 4 }, gives: 576, within: 1e-9, unit: (2 * Math.PI) / 60 },
  {
    case: 'once a turn',
    inputs: { f: 2304 / 60, q: 1 },
    gives: 2304,
    within: 1e-9,
    unit: (2 * Math.PI) / 60,
  },
]);
