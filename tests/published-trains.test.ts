import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { findRule, type Verdict } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { checkText } from './support/check.js';

const KHURMI = 'R. S. Khurmi, J. K. Gupta, Theory of Machines, chapter 13';

/** A whole spec whose gear has this train, this exact ratio and this output sense in its ahead clutch. */
function spec(train: string, exact: string, output: string, clutch = ''): string {
  const text = findRule('ratio/train')!.examples().passing;
  const changes: [RegExp | string, string][] = [
    [/clutch A output same ahead continuous\n/, ''],
    ['exact 2.043:1', `exact ${exact}`],
    [
      /clutch B output opposite ahead continuous \{\s*train \{ mesh A 23 with B 47 \}\s*\}/,
      `clutch B output ${output} ahead continuous ${clutch && `{ ${clutch} }`}\n    train {\n${train}\n}`,
    ],
  ];
  return changes.reduce((all, [from, to]) => {
    const made = all.replace(from, to);
    expect(made).not.toBe(all);
    return made;
  }, text);
}

async function verdicts(text: string, rule: string): Promise<Verdict[]> {
  const { check, findings } = await checkText(text);
  expect(findings.filter(one => one.code.startsWith('text/'))).toEqual([]);
  return check.vessels[0]!.verdicts.filter(one => one.rule === rule);
}

async function outcome(text: string, rule: string): Promise<string | undefined> {
  return (await verdicts(text, rule))[0]?.outcome;
}

/** Case, train as a spec writes it, printed input and output speed, and the sense that the book gives. */
const CASES: readonly [string, string, number, number, 'same' | 'opposite'][] = [
  [
    'Ex 13.1, three pairs, 975 to 52 rpm',
    'mesh A 20 with BC 50\nmesh BC 25 with DE 75\nmesh DE 26 with F 65',
    975,
    52,
    'opposite',
  ],
  [
    'Ex 13.4, A held, arm 150, B 270 rpm',
    'mesh A 36 with B 45 on arm\nheld A\ninput arm\noutput B',
    150,
    270,
    'same',
  ],
  [
    'Ex 13.5, planetary reverse, arm 100, C 400 rpm the other way',
    'mesh B 75 with DE 45 on arm\nmesh DE 90 with C 30 on arm\nheld B\ninput arm\noutput C',
    100,
    400,
    'opposite',
  ],
  [
    'Ex 13.6, ring 72 held, sun 32 at 58.5, arm 18 rpm',
    'sun teeth 32\nplanet teeth 20\nplanet row single\nring teeth 72\nheld ring\ninput sun\noutput carrier',
    58.5,
    18,
    'same',
  ],
  [
    'Ex 13.6 seen from its arm: sun 40.5, ring 18 rpm the other way',
    'sun teeth 32\nplanet teeth 20\nplanet row single\nring teeth 72\nheld carrier\ninput sun\noutput ring',
    40.5,
    18,
    'opposite',
  ],
  [
    'Ex 13.19, compound planets, 1000 to 37.5 rpm (37.15 is printed of a rounded arm speed)',
    'mesh A 15 with BC 20 on arm\nmesh BC 20 with E 55 internal on arm\nmesh BC 15 with D 50 internal on arm\nheld E\ninput A\noutput D',
    1000,
    37.5,
    'same',
  ],
  [
    'Ex 13.20, ring 64 held, sun 16: ratio 5',
    'sun teeth 16\nplanet teeth 24\nplanet row single\nring teeth 64\nheld ring\ninput sun\noutput carrier',
    5,
    1,
    'same',
  ],
];

describe(`published trains from text to verdict: ${KHURMI}`, () => {
  it.each(CASES)('%s', async (_, train, into, out, sense) => {
    const exact = `${Number((into / out).toFixed(3))}:1`;
    expect(await outcome(spec(train, exact, sense), 'ratio/train')).toBe('holds');
    expect(await outcome(spec(train, exact, sense), 'rotation/train-sense')).toBe('holds');
    const other = sense === 'same' ? 'opposite' : 'same';
    expect(await outcome(spec(train, exact, other), 'rotation/train-sense')).toBe('fails');
    const off = `${((into / out) * 1.01).toFixed(3)}:1`;
    expect(await outcome(spec(train, off, sense), 'ratio/train')).toBe('fails');
  });

  it('asks about Ex 13.17, bevel reduction, 1000 to 12.5 rpm: a ratio of 80 is beyond any marine gear', async () => {
    const { findings } = await checkText(spec('mesh A 20 with B 80', '80:1', 'opposite'));
    expect(findings.filter(one => one.code.startsWith('text/')).map(one => one.code)).toEqual([
      'text/out-of-range',
    ]);
  });

  it('does not bear out the rounded figure of Ex 13.19', async () => {
    const train = CASES.find(([name]) => name.startsWith('Ex 13.19'))![1];
    expect(await outcome(spec(train, '26.918:1', 'same'), 'ratio/train')).toBe('fails');
  });

  it('Ex 13.20: 100 N·m on the sun is held by 400 N·m on the ring', async () => {
    const train =
      'sun teeth 16\nplanet teeth 24\nplanet row single\nring teeth 64\ninput sun\noutput carrier';
    const text = spec(train, '5:1', 'same', 'holds ring')
      .replace('power 300 kW at 2300 rpm', 'power 10 kW at 2300 rpm')
      .replace('peak torque 1480 N.m at 1500 rpm', 'peak torque 100 N.m at 1500 rpm');
    const [verdict] = await verdicts(text, 'ratio/train');
    expect(verdict!.message).toContain('which holds ring, carries 4 times the torque that enters: 400 N·m');
    expect(verdict!.workings.find(one => one.dimension === 'torque')!.si).toBeCloseTo(400, 9);
  });

  it('cannot tell when nothing is held, or a clutch does not say what it does', async () => {
    const train = 'sun teeth 16\nring teeth 64\ninput sun\noutput carrier';
    expect(await outcome(spec(train, '5:1', 'same'), 'ratio/train')).toBe('cannot tell');
    const two = spec(train, '5:1', 'same', 'holds ring }\n clutch A {');
    const said = await verdicts(two, 'ratio/train');
    expect(said.map(one => one.outcome).sort()).toEqual(['cannot tell', 'holds']);
  });
});

describe('the coaxial planetary gear of the catalogue', () => {
  const catalogue = readFileSync(
    join(import.meta.dirname, '..', 'examples', 'catalogue', 'gears.shaft'),
    'utf8',
  );
  const rowan = /gear Rowan-7[\s\S]*?\n\}\n/.exec(catalogue)![0];
  const vessel = (ratio: string, clutch: string, hand: string) => `${rowan}
vessel Ternhaven {
  arrangement proposed {
    shaftline Centre {
      engine { rotation standard viewed from flywheel  flywheel aft  rating light { power 150 kW at 4000 rpm }  peak torque 480 N.m at 2600 rpm }
      gear Rowan-7 ratio ${ratio} ahead clutch ${clutch} { pump set for standard viewed from flywheel }
      propeller { hand ${hand} }
    }
  }
}
`;

  // By Willis: front set turns over by 1 - 72/36; behind, 75/35 with the carrier held, 1 - 82/28 with the ring held.
  it.each([
    ['2.14:1', 'A', 'left', 75 / 35],
    ['2.14:1', 'B', 'right', -75 / 35],
    ['1.93:1', 'A', 'right', 1 - 82 / 28],
    ['1.93:1', 'B', 'left', 82 / 28 - 1],
  ])('%s in clutch %s wants a %s-hand propeller', async (ratio, clutch, hand, signed) => {
    const text = vessel(ratio, clutch, hand);
    expect(await outcome(text, 'rotation/propeller-hand')).toBe('holds');
    const other = hand === 'left' ? 'right' : 'left';
    expect(await outcome(vessel(ratio, clutch, other), 'rotation/propeller-hand')).toBe('fails');
    // The same without a word of the sheet: the tooth counts alone.
    const untold = text.replace(/ {2}output (same|opposite) {2}ahead/g, '  ahead');
    expect(untold).not.toBe(text);
    expect(await outcome(untold, 'rotation/propeller-hand')).toBe('holds');
    const of = (await verdicts(text, 'ratio/train')).find(one => one.message.includes(`clutch ${clutch} `))!;
    expect(of.outcome).toBe('holds');
    expect(of.workings[0]!.si).toBeCloseTo(signed, 12);
  });

  it('judges ahead and astern, and finds a word or a ratio that the teeth do not bear out', async () => {
    const text = vessel('1.93:1', 'A', 'right');
    const senses = (await verdicts(text, 'rotation/train-sense')).map(one => one.outcome);
    expect(senses).toEqual(['holds', 'holds']);
    const slip = text.replace('clutch B  output same', 'clutch B  output opposite');
    const said = await verdicts(slip, 'rotation/train-sense');
    expect(said.map(one => one.outcome)).toEqual(['holds', 'fails']);
    expect(said[1]!.message).toContain('clutch B of gear Rowan-7 is declared opposite, but its train keeps');
    const ratio = text.replace('exact 1.929:1', 'exact 1.925:1');
    expect((await verdicts(ratio, 'ratio/train')).map(one => one.outcome)).toEqual(['fails', 'fails']);
  });

  it('says what clutch and brake carry: the whole torque, and twice it', async () => {
    const said = (await verdicts(vessel('1.93:1', 'A', 'right'), 'ratio/train')).map(one => one.message);
    expect(said[0]).toContain('locks input-sun with middle, carries the torque that enters: 480 N·m');
    expect(said[1]).toContain('holds front-ring, carries 2 times the torque that enters: 960 N·m');
  });

  it('holds the plates of the brake against that torque, not against the torque of the engine', async () => {
    const plates =
      'faces 8  outer diameter 160 mm  inner diameter 110 mm  clamp force 14 kN  friction 0.1  holds front-ring';
    const text = vessel('2.14:1', 'A', 'left').replace(
      'clutch B { holds front-ring }',
      `clutch B { ${plates} }`,
    );
    const [verdict] = await verdicts(text, 'capacity/clutch-holding');
    // Uniform wear: 8 × 0.1 × 14 kN × 67.5 mm = 756 N·m, which would do for 480 N·m but not for 960.
    expect(verdict!.capacity!.si).toBeCloseTo(756, 6);
    expect(verdict!.demand!.si).toBeCloseTo(960, 6);
    expect(verdict!.outcome).toBe('fails');
  });
});
