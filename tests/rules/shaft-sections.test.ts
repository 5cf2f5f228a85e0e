import { RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';

const example = (id: string) => RULES.find(one => one.id === id)!.examples().passing;

async function verdictsOf(text: string, rule: string) {
  const { check } = await checkText(text);
  return check.vessels.flatMap(one => one.verdicts).filter(one => one.rule === rule);
}

describe('a stepped shaft', () => {
  const stepped = example('shafting/combined-stress');
  const section = 'section middle { from 0.3 m  length 0.9 m  diameter 60 mm }';

  it('is judged by its weakest section, which is named', async () => {
    const [verdict] = await verdictsOf(
      stepped.replace('diameter 60 mm', 'diameter 40 mm'),
      'shafting/diameter',
    );
    expect(verdict?.outcome).toBe('fails');
    expect(verdict?.message).toContain('the 40 mm section middle, the weakest of 2 diameters');
    expect(verdict?.routes().map(one => one.title)[0]).toMatch(
      /^Make section middle of the shaft 55 mm thick: margin \d/,
    );
  });

  it('is weaker by its bore, in the same proportion by torsion alone', async () => {
    const [solid] = await verdictsOf(stepped.replace(section, ''), 'shafting/diameter');
    const [hollow] = await verdictsOf(stepped.replace(section, 'bore 32.5 mm'), 'shafting/diameter');
    expect(hollow!.capacity!.si / solid!.capacity!.si).toBeCloseTo(15 / 16, 9);
  });

  it('cannot be told to whirl where the place of a section is not known', async () => {
    const verdicts = await verdictsOf(stepped.replace('from 0.3 m  ', ''), 'shafting/bearing-span');
    expect(verdicts.map(one => one.outcome)).toEqual(['cannot tell']);
    expect(verdicts[0]!.missing.map(one => one.what)).toEqual([
      'beginning (from) of section middle of the shaft',
    ]);
  });

  it('whirls between its bounds, and says that the speed itself is not computed', async () => {
    const [first, second] = await verdictsOf(stepped, 'shafting/bearing-span');
    expect(first?.message).toContain('The speed itself is not computed here');
    expect(second?.message).not.toContain('several diameters');
  });
});

describe('sections of a shaft', () => {
  const passing = example('shafting/section-places');
  const judged = async (...changes: readonly (readonly [string, string])[]) => {
    const text = changes.reduce((all, [from, to]) => {
      expect(all).toContain(from);
      return all.replace(from, to);
    }, passing);
    const verdicts = await verdictsOf(text, 'shafting/section-places');
    return verdicts.filter(one => one.outcome !== 'holds').map(one => one.message);
  };

  it.each([
    [
      '0.9 m  diameter 70 mm',
      '1 m  diameter 70 mm',
      /lies from 0\.3 m to 1\.3 m, and section aft begins at 1\.2 m: they overlap by 0\.1 m/,
    ],
    [
      'from 0.3 m  length 0.9 m',
      'from 300 mm  length 950 mm',
      /lies from 300 mm to 1250 mm.* overlap by 50 mm/,
    ],
    [
      'from 1.2 m  length 0.4 m',
      'from 3.2 m  length 0.4 m',
      /the shaft is 3\.4 m long: the section runs 0\.2 m past its end/,
    ],
    ['from 0.3 m', 'from -0.1 m', /begins 0\.1 m before the forward coupling face/],
    ['diameter 68 mm', 'diameter 68 mm  bore 68 mm', /68 mm thick and bored 68 mm: no wall is left/],
  ] as const)('with "%s" made "%s"', async (from, to, said) => {
    const messages = await judged([from, to]);
    expect(messages).toHaveLength(1);
    expect(messages[0]).toMatch(said);
  });

  it('may leave gaps only where the shaft has a diameter of its own', async () => {
    expect(await judged()).toEqual([]);
    const [first, second] = await judged([/diameter 65 mm[^\n]*\n/.exec(passing)![0], '\n']);
    expect(first).toContain('from 0 m to 0.3 m there is no section');
    expect(second).toContain('from 1.6 m to 3.4 m there is no section');
  });
});

describe('coupling bolts', () => {
  const bolted = example('shafting/coupling-bolts').replace('bolt class 8.8', 'bolt class 4.6');

  it('are offered in a stronger class only, where the other flange is drilled', async () => {
    const [verdict] = await verdictsOf(bolted, 'shafting/coupling-bolts');
    const titles = verdict!.routes().map(one => one.title);
    expect(titles).toHaveLength(1);
    expect(titles[0]).toMatch(/^Use bolts of class \d+\.\d: factor \d/);
  });

  it('are offered in greater number and size where it is not', async () => {
    const open = bolted.replace(
      'bolt circle 121 mm  bolts 4 x 1/2 in  pilot 63.5 mm female',
      'pilot 63.5 mm female',
    );
    const [verdict] = await verdictsOf(open, 'shafting/coupling-bolts');
    const titles = verdict!.routes().map(one => one.title);
    expect(titles.some(one => /^Fit [5-8] x 1\/2 in bolts: factor \d/.test(one))).toBe(true);
    expect(titles.some(one => /^Fit 4 x \d+\/\d+ in bolts: factor \d/.test(one))).toBe(true);
  });

  it('cannot be told without preload where they have clearance', async () => {
    const [verdict] = await verdictsOf(
      bolted.replace('bolt fit fitted', 'bolt fit clearance'),
      'shafting/coupling-bolts',
    );
    expect(verdict?.outcome).toBe('cannot tell');
    expect(verdict?.missing.map(one => one.property)).toEqual(['bolt preload']);
  });
});

it('a coupling between two lengths of shaft stands between them in the line', async () => {
  const text = example('shafting/coupling-bolts').replace(
    '      coupling Half-146\n',
    '      shaft { material high-strength-stainless  diameter 65 mm }\n      coupling Half-146\n',
  );
  const { check } = await checkText(text);
  const line = check.vessels[0]!.vessel.arrangements[0]!.lines[0]!;
  expect(line.chain.map(one => one.role)).toEqual([
    'engine',
    'gear',
    'shaft',
    'coupling',
    'shaft',
    'propeller',
  ]);
});
