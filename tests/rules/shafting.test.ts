import { join } from 'node:path';
import { LineAnalysis, RULES, shaftingOf, type Verdict } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { type Checked, checkFile, checkText } from '../support/check.js';
import { examplesFolder } from '../support/examples.js';

const example = (id: string) => RULES.find(rule => rule.id === id)!.examples().passing;

/** A spec with some of its words changed. */
function changed(spec: string, ...changes: readonly (readonly [string, string])[]): string {
  return changes.reduce((text, [from, to]) => {
    expect(text).toContain(from);
    return text.replace(from, to);
  }, spec);
}

const verdictsOf = (checked: Checked, id: string): Verdict[] =>
  checked.check.vessels.flatMap(one => one.verdicts).filter(one => one.rule === id);

async function verdicts(spec: string, id: string): Promise<Verdict[]> {
  return verdictsOf(await checkText(spec), id);
}

async function shaftingIn(spec: string) {
  const { check } = await checkText(spec);
  const { vessel } = check.vessels[0]!;
  return shaftingOf(new LineAnalysis(vessel.arrangements.at(-1)!.lines[0]!, vessel));
}

const INCH = 0.0254;
const rpm = (radPerSecond: number) => (radPerSecond * 30) / Math.PI;

/** A direct-driven shaft whose power, speed and grade are those of published examples. */
const direct = (power: string, shaft: string, grade: string, criteria = '') => `engine Plain {
  source "sheet" dated 2025-01-20
  rotation standard viewed from flywheel
  cylinders 6
  cycle four-stroke
  rating medium { power ${power}  measured at crankshaft }
  high idle 2000 rpm
}
shaft material bar { ${grade} }
vessel Test {
  duty medium { passengers none }
  ${criteria ? `criteria { ${criteria} }` : ''}
  arrangement built {
    shaftline Centre {
      engine Plain at medium { flywheel aft }
      shaft { material bar  ${shaft} }
      propeller { hand left  diameter 24 in }
    }
  }
}
`;

describe('shaft diameter', () => {
  // D. Gerr, Boat Mechanical Systems Handbook: 403 shp at 1050 rpm, 70,000 psi, factor 3: 1.74 in.
  it('needs what the handbook example prints', async () => {
    const criteria = 'shaft diameter by small-craft formula factor 3';
    const { strengths } = await shaftingIn(
      direct('403 hp at 1050 rpm', 'diameter 1.75 in', 'torsional yield 70000 psi', criteria),
    );
    const [strength] = strengths.value!;
    expect(strength!.needed.si / INCH).toBeCloseTo(1.7413, 3);
    // The factor of the fitted shaft is as the cube of its diameter: 3 (1.75/1.7413)³.
    expect(strength!.fittedFactor!.si).toBeCloseTo(3 * (1.75 / 1.7413) ** 3, 2);
  });

  // Student design sheet on a class rule of the form of IACS UR M68: 1324 kW at 412.8 rpm, Rm 600, F 100, k 1.26: 167.83 mm.
  it('needs what the class example prints', async () => {
    const { strengths } = await shaftingIn(
      direct(
        '1324 kW at 412.8 rpm',
        'diameter 168 mm',
        'tensile strength 600 MPa',
        'shaft diameter by class formula',
      ),
    );
    expect(strengths.value![0]!.needed.si * 1000).toBeCloseTo(167.833, 2);
  });

  it('judges by both criteria when both are chosen', async () => {
    const both = 'shaft diameter by small-craft formula factor 5  shaft diameter by class formula';
    const grade = 'torsional yield 70000 psi  tensile strength 800 MPa';
    const said = await verdicts(
      direct('300 kW at 1000 rpm', 'diameter 65 mm', grade, both),
      'shafting/diameter',
    );
    expect(said.map(one => [one.criterion, one.outcome])).toEqual([
      ['small-craft formula, factor 5', 'holds'],
      ['class formula', 'fails'],
    ]);
  });

  it('shows the class formula where it disagrees with the default', async () => {
    const grade = 'torsional yield 70000 psi  tensile strength 800 MPa';
    const [verdict] = await verdicts(
      direct('300 kW at 1000 rpm', 'diameter 65 mm', grade),
      'shafting/diameter',
    );
    expect(verdict!.outcome).toBe('holds');
    expect(verdict!.criterion).toContain('factor 5 (published for');
    expect(verdict!.criterionChosenBy).toBe('default');
    expect(verdict!.message).toContain('The class formula disagrees');
  });

  it.each([
    ['duty medium { passengers carried }', 7.5],
    ['duty continuous { passengers none }', 8],
    ['duty pleasure { passengers none }', 3],
  ])('takes the published factor for %s', async (duty, factor) => {
    const spec = direct('100 kW at 1000 rpm', 'diameter 65 mm', 'torsional yield 70000 psi');
    const [verdict] = await verdicts(
      changed(spec, ['duty medium { passengers none }', duty]),
      'shafting/diameter',
    );
    expect(verdict!.criterion).toContain(`factor ${factor} `);
  });

  it.each([
    ['duty medium { passengers unknown }', 'passengers'],
    ['duty medium { }', 'passengers'],
    ['duty patrol { passengers none }', 'safety factor'],
  ])('does not choose a factor for %s', async (duty, missing) => {
    const spec = direct('100 kW at 1000 rpm', 'diameter 65 mm', 'torsional yield 70000 psi');
    const [verdict] = await verdicts(
      changed(spec, ['duty medium { passengers none }', duty]),
      'shafting/diameter',
    );
    expect(verdict!.outcome).toBe('cannot tell');
    expect(verdict!.missing.map(one => one.what).join()).toContain(missing);
  });

  it('never stands on a grade that is hearsay', async () => {
    const spec = direct('100 kW at 1000 rpm', 'diameter 65 mm', 'torsional yield 70000 psi');
    const said = await verdicts(
      changed(spec, ['material bar  ', 'material bar [hearsay]  ']),
      'shafting/material-named',
    );
    expect(said.map(one => one.outcome)).toEqual(['cannot tell']);
  });
});

describe('lateral vibration', () => {
  // Small-craft handbooks: bronze, 1 in, 2000 rpm, E 16,000,000 psi, 0.304 lb/in³: 3 ft 5 in.
  it('whirls at the speed of the published span', async () => {
    const grade = 'torsional yield 20000 psi  elastic modulus 16000000 psi  density 0.304 lb/in3';
    const shaft = `diameter 1 in  bearing span 40.95 in`;
    const { spans } = await shaftingIn(direct('20 hp at 2000 rpm', shaft, grade));
    // 3.21 in the printed form stands for 3.2151: 0.16 % in speed.
    expect(rpm(spans.value![0]!.whirling.si)).toBeGreaterThan(1995);
    expect(rpm(spans.value![0]!.whirling.si)).toBeLessThan(2008);
  });

  // Recomputed from the influence numbers of Woytowich with the shaft by Dunkerley: 60 mm, span 1.5 m, propeller 0.25 m
  // behind the bearing, 40 kg and 0.5 kg·m², a quarter of water on both, 206 GPa, 7850 kg/m³: 1820.7 rpm.
  it('whirls lower with its propeller', async () => {
    const grade = 'torsional yield 70000 psi  elastic modulus 206 GPa  density 7850 kg/m3';
    const shaft =
      'diameter 60 mm  overhang 150 mm  bearing one { kind strut  at 1 m  lubrication water }  bearing two { kind strut  at 2.5 m  length 200 mm  lubrication water }';
    const spec = changed(direct('100 kW at 1000 rpm', shaft, grade), [
      'diameter 24 in }',
      'diameter 24 in  blades 4  mass 40 kg  inertia 1.0 kg.m2 }',
    ]);
    const { propellerWhirl, spans } = await shaftingIn(spec);
    expect(rpm(propellerWhirl.value!.least.si)).toBeCloseTo(1820.7, 0);
    expect(propellerWhirl.value!.greatest.si).toBeGreaterThan(propellerWhirl.value!.least.si);
    expect(rpm(spans.value!.at(-1)!.whirling.si)).toBeCloseTo(3218.7, 0);
    expect(propellerWhirl.value!.bladeRate!.si).toBeCloseTo(propellerWhirl.value!.least.si / 4, 9);
  });

  it('counts a flexible seal as no bearing, and the forward coupling as one', async () => {
    const said = await verdicts(example('shafting/bearing-span'), 'shafting/bearing-span');
    expect(said.map(one => /span from (.*?),/.exec(one.message)![1])).toEqual([
      'forward coupling to bearing tube',
      'bearing tube to bearing strut',
    ]);
  });

  it('offers a bearing half way, at four times the speed', async () => {
    const { failing } = RULES.find(rule => rule.id === 'shafting/bearing-span')!.examples();
    const bad = (await verdicts(failing, 'shafting/bearing-span')).find(one => one.outcome === 'fails')!;
    const margin = 4 * (bad.margin! + 1) - 1;
    expect(bad.routes()[0]!.title).toContain(
      `Add a bearing at 3.4 m, half way: margin of both halves ${Math.round(margin * 100)} %`,
    );
  });
});

describe('torsional system', () => {
  // Three inertias in a row have a closed form: ω⁴ − ω²[k1(1/J1+1/J2) + k2(1/J2+1/J3)] + k1 k2 (J1+J2+J3)/(J1 J2 J3) = 0.
  // Three inertias on two springs, in closed form. The own inertia of the shaft, which it leaves out, lowers them a little.
  it('has the frequencies of the closed form, all at engine speed', async () => {
    const { torsional } = await shaftingIn(example('interface/torsional-critical'));
    const i = 2.043;
    const [J1, J2, J3] = [2.6, 0.42 + 0.6 / i ** 2, (1.1 * 1.25) / i ** 2] as const;
    const k1 = 8200;
    const k2 = (77e9 * Math.PI * 0.065 ** 4) / (32 * 4.8) / i ** 2;
    const b = k1 * (1 / J1 + 1 / J2) + k2 * (1 / J2 + 1 / J3);
    const c = (k1 * k2 * (J1 + J2 + J3)) / (J1 * J2 * J3);
    const closed = [-1, 1].map(sign => Math.sqrt((b + sign * Math.sqrt(b * b - 4 * c)) / 2) / (2 * Math.PI));
    const found = torsional.value!.solution.modes.map(mode => mode.frequency.si);
    for (const [index, one] of closed.entries()) {
      expect(found[index]! / one).toBeLessThan(1);
      expect(found[index]! / one).toBeGreaterThan(0.99);
    }
  });

  it('names every datum that it lacks', async () => {
    const { torsional } = await shaftingIn(example('interface/damper-match'));
    expect(torsional.value).toBeUndefined();
    expect(torsional.missing.map(one => one.what)).toEqual(
      expect.arrayContaining([
        'inertia of engine Kittiwake-9',
        'input inertia of gear Alder-63',
        'output inertia of gear Alder-63',
        'inertia of the propeller',
        'length of the shaft',
      ]),
    );
  });
});

describe('thrust', () => {
  it('ends in a thrust bearing before it comes to the gear', async () => {
    const { thrustPath } = await shaftingIn(example('shafting/joint-thrust'));
    expect(thrustPath.taker!.name).toBe('thrust bearing block');
  });

  // (D P)^(2/3) kN: 26 in and 291 kW.
  it('is estimated at the bollard by power and diameter', async () => {
    const { bollardThrust } = await shaftingIn(example('shafting/thrust-capacity'));
    expect(bollardThrust.value!.si / 1000).toBeCloseTo((26 * INCH * 291) ** (2 / 3), 6);
  });

  it('is not carried by a motor that takes the place of the gear', async () => {
    const { failing } = RULES.find(rule => rule.id === 'shafting/thrust-path')!.examples();
    const [verdict] = await verdicts(failing, 'shafting/thrust-path');
    expect(verdict!.outcome).toBe('fails');
  });
});

describe('a coupling stands where it is written', () => {
  const spec = example('shafting/flexible-for-misalignment');
  it('behind the gear it gets the torque times the ratio', async () => {
    const [verdict] = await verdicts(spec, 'capacity/coupling-torque');
    expect(verdict!.demand!.si).toBeCloseTo(1480 * 2.043 * 0.97, 1);
  });

  it('before the gear it gets the torque of the engine', async () => {
    const coupling = 'coupling Flex-6 { chosen for torsional vibration }';
    const moved = changed(
      spec,
      [`      ${coupling}\n`, ''],
      ['      gear Alder-63 ratio', `      ${coupling}\n      gear Alder-63 ratio`],
    );
    const [verdict] = await verdicts(moved, 'capacity/coupling-torque');
    expect(verdict!.demand!.si).toBeCloseTo(1480, 6);
  });
});

describe('interfaces', () => {
  it.each([
    ['SAE-3', 'SAE-3M', 'holds'],
    ['SAE-3', '3', 'holds'],
    ['SAE-3', 'SAE-2', 'fails'],
    ['SAE-1/2', 'SAE-1', 'fails'],
  ])('engine %s and gear %s: %s', async (engine, gear, outcome) => {
    const spec = changed(
      example('interface/flywheel-housing'),
      ['  housing SAE-3\n', `  housing ${engine}\n`],
      ['  input housing SAE-3\n', `  input housing ${gear}\n`],
    );
    expect((await verdicts(spec, 'interface/flywheel-housing')).map(one => one.outcome)).toEqual([outcome]);
  });

  it('knows 290 as size 11.5', async () => {
    const spec = changed(example('interface/flywheel-recess'), [
      '  flywheel size 11.5\n  rivet',
      '  flywheel size 290\n  rivet',
    ]);
    expect((await verdicts(spec, 'interface/flywheel-recess')).map(one => one.outcome)).toEqual(['holds']);
  });

  it('finds each feature in which two flanges differ', async () => {
    const { failing } = RULES.find(rule => rule.id === 'shafting/coupling-flange')!.examples();
    const [verdict] = await verdicts(failing, 'shafting/coupling-flange');
    expect(verdict!.message).toContain(
      'bolt circle 121 mm against 108 mm; bolt size 1/2 in against 7/16 in; pilot female against female',
    );
  });

  it('asks for the output flange that a half-coupling is to meet', async () => {
    const spec = changed(example('shafting/coupling-flange'), [
      '  output flange { outside diameter 146 mm  bolt circle 121 mm  bolts 4 x 1/2 in  pilot 63.5 mm female }\n',
      '',
    ]);
    const [verdict] = await verdicts(spec, 'shafting/coupling-flange');
    expect(verdict!.missing.map(one => one.what)).toEqual(['output flange of gear Alder-63']);
  });
});

describe('weight and balance', () => {
  it('counts what goes against what comes', async () => {
    const { failing } = RULES.find(rule => rule.id === 'interface/weight-change')!.examples();
    const [weight, balance] = await verdicts(failing, 'interface/weight-change');
    // 1180 − 905 kg; 9.8 t at 4.35 m with 275 kg more at 3.85 m.
    expect(weight!.demand!.si).toBeCloseTo(275, 9);
    expect(balance!.workings[0]!.si).toBeCloseTo((9800 * 4.35 + 275 * 3.85) / (9800 + 275) - 4.35, 9);
  });
});

it('says of the keyway factor of an intermediate shaft that it is from memory', async () => {
  const judged = await checkFile(join(examplesFolder, 'survey-tender/wadebeck.shaft'));
  const assumed = judged.check.vessels
    .flatMap(one => one.verdicts)
    .filter(one => one.rule === 'shafting/diameter')
    .flatMap(one => one.capacity?.working?.inputs ?? [])
    .map(one => one.assumed);
  expect(assumed).toContain('intermediate shaft, keyway, cylindrical connection (from memory)');
  expect(assumed).toContain('propeller shaft, keyed propeller');
});
