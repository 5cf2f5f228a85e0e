import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from '../../support/check.js';
import { changed, withStatements } from './spec-of.js';
import { saidBy } from './verdicts.js';

const GEAR = '      gear Alder-63 ratio 2.04:1 ahead clutch B';
const BELT = `transfer Belt-2 "toothed belt" {
  source "Belt sheet" dated 2024-05-02
  kind belt
  output same seen from aft
  turns the line back no
  exact 1.25:1
  torque at most 3600 N.m
  thrust at most 40 kN
  input speed at most 3000 rpm
}

vessel `;
const SHAFT = /\n {6}shaft \{[^\n]*/.exec(SINGLE_LINE)![0];

/** The single line with a belt stage of 1.25:1, and these words of its sheet otherwise, ahead of the gear. */
function belted(...edits: readonly (readonly [string, string])[]): string {
  return changed(SINGLE_LINE, ['vessel ', changed(BELT, ...edits)], [GEAR, `      transfer Belt-2\n${GEAR}`]);
}

async function judged(spec: string, arrangement = 'proposed') {
  const { check } = await checkText(spec);
  const { vessel, verdicts } = check.vessels[0]!;
  const [line] = vessel.arrangements.find(one => one.name === arrangement)!.lines;
  return {
    roles: line!.chain.map(one => one.role),
    told: check.problems.map(one => `${one.severity} ${one.code}`),
    said: (rule: string) => verdicts.filter(one => one.rule === rule && one.subject.startsWith(arrangement)),
  };
}

describe('a box that is written ahead of the gear', () => {
  it('stands there, and behind it where it is written behind', async () => {
    expect((await judged(belted())).roles).toEqual(['engine', 'transfer', 'gear', 'shaft', 'propeller']);
    const behind = changed(belted(), [`      transfer Belt-2\n${GEAR}`, `${GEAR}\n      transfer Belt-2`]);
    expect((await judged(behind)).roles).toEqual(['engine', 'gear', 'transfer', 'shaft', 'propeller']);
  });

  it('stays there when it is kept', async () => {
    const later = withStatements(
      belted(),
      `  arrangement later revises proposed { shaftline Centre { retain engine  retain gear  retain transfer  retain shaft  retain propeller } }`,
    );
    expect((await judged(later, 'later')).roles).toEqual([
      'engine',
      'transfer',
      'gear',
      'shaft',
      'propeller',
    ]);
  });

  it('is passed in the order of the text where several boxes and shafts are', async () => {
    const JACK = '      shaft { material high-strength-stainless  diameter 60 mm  length 1 m }';
    const BOX = '      transfer Belt-2';
    const order = (...parts: string[]) => changed(SINGLE_LINE, ['vessel ', BELT], [GEAR, parts.join('\n')]);
    expect((await judged(order(JACK, BOX, GEAR, BOX, JACK, BOX))).roles).toEqual([
      'engine',
      'shaft',
      'transfer',
      'gear',
      'transfer',
      'shaft',
      'transfer',
      'shaft',
      'propeller',
    ]);
    expect((await judged(order(BOX, JACK, BOX, GEAR))).roles).toEqual([
      'engine',
      'transfer',
      'shaft',
      'transfer',
      'gear',
      'shaft',
      'propeller',
    ]);
  });

  it('gives the gear more torque and less speed', async () => {
    const [plain, geared] = [await judged(SINGLE_LINE), await judged(belted())];
    const demand = (one: typeof plain, rule: string) => one.said(rule)[0]!.demand!.si;
    const torque = demand(geared, 'capacity/gear-input-torque') / demand(plain, 'capacity/gear-input-torque');
    // A toothed belt loses a little of it.
    expect(torque).toBeGreaterThan(1.2);
    expect(torque).toBeLessThan(1.25);
    const speed = demand(plain, 'speed/gear-input-maximum') / demand(geared, 'speed/gear-input-maximum');
    expect(speed).toBeCloseTo(1.25, 9);
  });

  it.each([
    [['output same', 'output opposite'], 'fails', /through transfer Belt-2 gives it opposite rotation/],
    [['output same seen from aft', 'output unknown'], 'cannot tell', /output sense of transfer Belt-2/],
    [['output same', 'output same'], 'holds', /accepts/],
  ] as const)('turns the gear: %j', async (edit, outcome, words) => {
    const [said] = await saidBy('rotation/input-accepted', belted(edit));
    expect(said!.outcome).toBe(outcome);
    expect(said!.message).toMatch(words);
  });
});

describe('a part that is taken to stand elsewhere than it is written', () => {
  const lone = changed(changed(SINGLE_LINE, [SHAFT, '']), [GEAR, `${SHAFT.slice(1)}\n${GEAR}`]);

  it('is a finding', async () => {
    expect((await judged(SINGLE_LINE)).told).toEqual([]);
    expect((await judged(belted())).told).toEqual([]);
    expect((await judged(lone)).told).toEqual(['warning text/out-of-order']);
  });
});
