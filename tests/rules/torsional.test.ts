import { describe, expect, it } from 'vitest';
import {
  WITH_EXCITATION,
  WITH_INERTIAS,
} from '../../packages/drivetrain/src/rules/interface/torsional-specs.js';
import { type Checked, checkText } from '../support/check.js';

const verdictsOf = (checked: Checked, rule: string) =>
  checked.check.vessels.flatMap(one => one.verdicts).filter(one => one.rule === rule);
const sayOf = async (spec: string, rule: string) => {
  const [first] = verdictsOf(await checkText(spec), rule);
  return first && `${first.outcome}: ${first.message}`;
};
const CRITICAL = 'interface/torsional-critical';
const STRESS = 'interface/torsional-stress';
const BARRED = 'interface/barred-range';

/** A coupling between gear and shaft. */
const behindGear = (facts: string) =>
  WITH_INERTIAS.replace(
    'shaft material high',
    `coupling Reed-J2 "behind the gear" {\n  source "Reed J2 sheet" dated 2024-09-01\n  ${facts}\n}\n\nshaft material high`,
  ).replace('      shaft { material', '      coupling Reed-J2\n      shaft { material');

const frequencies = (message: string | undefined) =>
  [...(/frequencies ([^;]*);/.exec(message ?? '')?.[1] ?? '').matchAll(/([\d.]+) Hz/g)].map(one =>
    Number(one[1]),
  );

describe('couplings behind the gear', () => {
  it('names the one that gives no stiffness, whatever kind it is', async () => {
    for (const kind of ['kind joint', 'kind flexible', ''])
      expect(await sayOf(behindGear(`${kind}\n  torque at most 9 kN.m`), CRITICAL)).toBe(
        'cannot tell: Centre: cannot tell whether a torsional critical lies in the running range. Needed: torsional stiffness of coupling Reed-J2.',
      );
  });

  it('takes a rigid one as stiff, and one without limit of stiffness as the same', async () => {
    const rigid = frequencies(await sayOf(behindGear('kind rigid'), CRITICAL));
    expect(rigid).toEqual(frequencies(await sayOf(WITH_INERTIAS, CRITICAL)));
    const stiff = behindGear('kind flexible\n  torque at most 9 kN.m\n  torsional stiffness 900000 kN.m/rad');
    expect(frequencies(await sayOf(stiff, CRITICAL)).slice(0, 2)).toEqual(rigid);
  });

  it('puts a soft one in series with the shaft, referred through the ratio', async () => {
    const soft = behindGear('kind flexible\n  torque at most 9 kN.m\n  torsional stiffness 20 kN.m/rad');
    // Engine, gear, coupling, shaft and propeller at engine speed, the shaft by the wave equation: what is left over of the
    // torque at the end is nothing at a natural frequency (Holzer's method), written out here.
    const i = 2.043;
    const area = (Math.PI * 0.065 ** 4) / 32;
    const [k, Js] = [(77e9 * area) / 4.8 / i ** 2, (7890 * area * 4.8) / i ** 2];
    const [J1, J2, J3] = [2.6, 0.42 + 0.6 / i ** 2, (1.1 * 1.25) / i ** 2];
    const left = (hertz: number) => {
      const w = 2 * Math.PI * hertz;
      let [swing, torque] = [1, J1 * w ** 2];
      swing -= torque / 8200;
      torque += J2 * w ** 2 * swing;
      swing -= torque / (20_000 / i ** 2);
      const x = w * Math.sqrt(Js / k);
      [swing, torque] = [
        swing * Math.cos(x) - (torque * Math.sin(x)) / (k * x),
        torque * Math.cos(x) + swing * k * x * Math.sin(x),
      ];
      return torque + J3 * w ** 2 * swing;
    };
    const steps = Array.from({ length: 8000 }, (_, at) => 1 + at / 200);
    const roots = steps.filter(one => left(one) * left(one + 1 / 200) <= 0);
    const found = frequencies(await sayOf(soft, CRITICAL));
    expect(found[0]).toBeCloseTo(roots[0]!, 1);
    expect(found[1]).toBeCloseTo(roots[1]!, 1);
  });

  it('twists a stepped shaft as its sections in series', async () => {
    const stepped = WITH_INERTIAS.replace(
      'length 4.8 m }',
      'length 4.8 m  section middle { from 1 m  length 2 m  diameter 80 mm } }',
    );
    const even = (77e9 * Math.PI) / 32;
    const k = 1 / (2.8 / (even * 0.065 ** 4) + 2 / (even * 0.08 ** 4));
    // The same stiffness as one piece of 65 mm: its length follows from k.
    const length = (even * 0.065 ** 4) / k;
    const plain = WITH_INERTIAS.replace('length 4.8 m', `length ${length.toFixed(4)} m`);
    // The thicker section is heavier too, so it comes out a little lower.
    const [of, like] = [
      frequencies(await sayOf(stepped, CRITICAL)),
      frequencies(await sayOf(plain, CRITICAL)),
    ];
    of.forEach((one, at) => {
      expect(one / like[at]!).toBeGreaterThan(0.99);
      expect(one / like[at]!).toBeLessThanOrEqual(1);
    });
  });
});

describe('vibratory stress', () => {
  const declared = (rows: string) =>
    WITH_INERTIAS.replace('length 4.8 m', `length 4.8 m  ${rows}`).replace(
      '  shear modulus 77 GPa\n',
      '  shear modulus 77 GPa\n  tensile strength 860 MPa\n',
    );
  // τ_C of IACS UR M68 for R_m 600 (cap), c_K 0.55, d 65 mm, written out here.
  const rated = 2300 / 2.043;
  const limit = (rpm: number) => {
    const lambda = rpm / rated;
    return (760 / 18) * 0.55 * (0.35 + 0.93 * 65 ** -0.2) * (lambda < 0.9 ? 3 - 2 * lambda ** 2 : 1.38);
  };

  it('holds a declared stress against τ_C, and asks for those at criticals that it leaves out', async () => {
    const rpm = 478;
    const under = await sayOf(
      declared(`vibratory stress ${(limit(rpm) * 0.9).toFixed(1)} MPa at ${rpm} rpm`),
      STRESS,
    );
    expect(under).toMatch(/^holds: .* as declared; IACS UR M68 allows ([\d.]+) MPa for continuous running/);
    expect(Number(/allows ([\d.]+) MPa/.exec(under!)![1])).toBeCloseTo(limit(rpm), 1);
    expect(await sayOf(declared('vibratory stress 5 MPa at 900 rpm'), STRESS)).toMatch(
      /^cannot tell: .* vibratory stress of the shaft near 476\.\d rpm, where blade rate, order 4 excites mode 2\.$/,
    );
  });

  it('bars speeds between τ_C and τ_T by the formula of M68, and forbids what is above', async () => {
    const rpm = 478;
    const over = declared(`vibratory stress ${(limit(rpm) * 1.2).toFixed(1)} MPa at ${rpm} rpm`);
    const lambda = rpm / rated;
    const [from, to] = [(16 * rpm) / (18 - lambda), ((18 - lambda) * rpm) / 16];
    expect(await sayOf(over, BARRED)).toContain(
      `: ${from.toFixed(0)} rpm to ${to.toFixed(0)} rpm of the shaft must be barred.`,
    );
    expect(await sayOf(over, STRESS)).toMatch(/^holds: .* passing only \(τ_T\)/);
    // τ_T = 1.7 τ_C / √c_K
    const most = (1.7 * limit(rpm)) / Math.sqrt(0.55);
    expect(
      await sayOf(declared(`vibratory stress ${(most * 1.01).toFixed(1)} MPa at ${rpm} rpm`), STRESS),
    ).toMatch(/^fails: .*The speed may not even be passed through\./);
    expect(
      await sayOf(declared(`vibratory stress ${(limit(950) * 1.1).toFixed(1)} MPa at 950 rpm`), STRESS),
    ).toMatch(/^fails: .*of rated speed no barred range is allowed\./);
  });

  it.each([
    ['420 .. 500 rpm', /The plate bars 420 rpm to 500 rpm only\./],
    ['200 .. 600 rpm', /includes idle, 318 rpm: the vessel could not idle in gear\./],
    ['400 .. 950 rpm', /extends above 80 % of rated speed/],
  ])('finds a plate that bars %s wrong', async (plate, why) => {
    const rpm = 478;
    const spec = declared(
      `vibratory stress ${(limit(rpm) * 1.2).toFixed(1)} MPa at ${rpm} rpm  barred range ${plate}`,
    );
    expect(await sayOf(spec, BARRED)).toMatch(why);
  });

  it('never holds without excitation or damping', async () => {
    for (const [taken, missing] of [
      ['  excitation order 3 torque 620 N.m\n', 'excitation torque of engine Kittiwake-9 at order 3'],
      ['  excitation order 4 torque 160 N.m', 'excitation torque of the propeller at order 4'],
    ] as const)
      expect(await sayOf(WITH_EXCITATION.replace(taken, ''), STRESS)).toMatch(
        new RegExp(`^cannot tell: .* Needed: ${missing}\\.$`),
      );
    const undamped = WITH_EXCITATION.replaceAll('  dynamic magnifier 6\n', '').replace(
      '  damping factor 30',
      '',
    );
    expect(await sayOf(undamped, STRESS)).toMatch(/^cannot tell: .* Needed: damping of coupling Reed-300\.$/);
  });

  it('says nothing where nothing of it is declared and class is not asked', async () => {
    expect(await sayOf(WITH_INERTIAS, STRESS)).toBeUndefined();
    expect(await sayOf(WITH_INERTIAS, BARRED)).toBeUndefined();
  });
});

describe('ways out', () => {
  const titles = async (spec: string, rule: string) =>
    verdictsOf(await checkText(spec), rule).flatMap(one => one.routes().map(route => route.title));
  const STIFF = WITH_INERTIAS.replace(
    'torsional stiffness 8200 N.m/rad',
    'torsional stiffness 60000 N.m/rad',
  );

  it('offers a catalogue damper by how far the firing order then stays out of the running range', async () => {
    expect(await titles(STIFF, CRITICAL)).toEqual([
      expect.stringMatching(
        /^Replace coupling Reed-300 by Reed-310: the firing order then stays [\d.]+ % clear of the running range$/,
      ),
    ]);
  });

  it.each([
    [
      'of another spline',
      'spline teeth 26\n  spline pitch 16/32\n}\n\nshaft',
      'spline teeth 24\n  spline pitch 16/32\n}\n\nshaft',
    ],
    ['too weak', 'torque at most 1750 N.m', 'torque at most 1400 N.m'],
    ['for more cylinders', 'cylinders at least 3', 'cylinders at least 8'],
    ['that does not state its stiffness', '  torsional stiffness 7400 N.m/rad\n', ''],
  ])('offers none %s', async (_, from, to) => {
    const spec = STIFF.replace(from, to);
    expect(spec).not.toBe(STIFF);
    expect(await titles(spec, CRITICAL)).toEqual([]);
  });
});
