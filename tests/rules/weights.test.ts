import { RULES } from '@tailshaft/drivetrain';
import { makePaper, paperMarkdown } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { sheetOfText } from '../sheet/sheet-of.js';
import { checkText } from '../support/check.js';

const ID = 'interface/weight-change';
/** An engine of the same mass in the place of the old one: the machinery changes by nothing. */
const { passing } = RULES.find(rule => rule.id === ID)!.examples();

const spec = (weights: string) => {
  const hull = 'centre of gravity at 4.35 m';
  expect(passing).toContain(hull);
  return passing.replace(hull, `${hull}\n    ${weights}`);
};

async function judged(weights: string) {
  const { check } = await checkText(spec(weights));
  const [weight, balance] = check.vessels.flatMap(one => one.verdicts).filter(one => one.rule === ID);
  return { weight: weight!, balance: balance! };
}

const LEAD = 'weight lead-pigs { moves ashore  under proposed  mass 320 kg  position 1.1 m }';
const TANK = 'weight tank { moves aboard  under proposed  mass 140 kg  position 2.4 m }';

describe('tanks, ballast and other weights beside the machinery', () => {
  it('count in weight and balance', async () => {
    const { weight, balance } = await judged(`${LEAD}\n${TANK}`);
    // 320 kg go and 140 kg come; 2 % of 9.8 t is 196 kg.
    expect(weight.outcome).toBe('holds');
    expect(weight.workings[0]!.si).toBeCloseTo(-180, 9);
    // Statics: first moments about the reference.
    const after = (9800 * 4.35 - 320 * 1.1 + 140 * 2.4) / (9800 - 320 + 140);
    expect(balance.workings[0]!.si).toBeCloseTo(after - 4.35, 9);
    expect((await judged(LEAD)).weight.outcome).toBe('fails');
    expect((await judged('')).weight.workings[0]!.si).toBe(0);
  });

  it('count every engine of a line, and one that stays as one', async () => {
    const weighed = async (change: string, to: string) => {
      expect(passing).toContain(change);
      const { check } = await checkText(passing.replace(change, to));
      const [weight] = check.vessels.flatMap(one => one.verdicts).filter(one => one.rule === ID);
      return weight!.workings[0]!.si;
    };
    const old = '      engine Old-Eight at medium { flywheel aft  position 3.85 m }\n';
    const fitted = /^ +replace engine Kittiwake-9.*\n/m.exec(passing)![0];
    expect(await weighed(fitted, `${fitted}${fitted}`)).toBeCloseTo(905, 9);
    expect(await weighed(old, `${old}${old}`)).toBeCloseTo(-905, 9);
  });

  it.each([
    ['its mass', '  mass 320 kg', 'mass of weight lead-pigs'],
    [
      'whether it comes or goes',
      'moves ashore',
      'whether it comes aboard or goes ashore, of weight lead-pigs',
    ],
    ['with which arrangement', '  under proposed', 'arrangement that moves weight lead-pigs'],
  ])('cannot be told without %s', async (_, fact, what) => {
    for (const left of ['', fact.replace(/\S+$/, 'unknown').replace('320 unknown', 'unknown')]) {
      const { weight } = await judged(LEAD.replace(fact, left));
      expect(weight.outcome).toBe('cannot tell');
      expect(weight.missing.map(one => one.what)).toEqual([what]);
    }
  });

  it('leave the weight told where only the position is missing', async () => {
    const { weight, balance } = await judged(LEAD.replace('  position 1.1 m', ''));
    expect(weight.outcome).toBe('fails');
    expect(balance.missing.map(one => one.what)).toEqual(['position of weight lead-pigs']);
  });

  it('are never passed over for an arrangement of another name', async () => {
    const { weight } = await judged(LEAD.replace('proposed', 'porposed'));
    expect(weight.outcome).toBe('cannot tell');
    expect(weight.missing[0]!.what).toContain('none is called porposed');
  });

  it('that came with what was found change nothing', async () => {
    const { weight } = await judged(LEAD.replace('proposed', 'existing'));
    expect(weight.workings[0]!.si).toBe(0);
  });

  it('stand in the paper of weights, with their moment', async () => {
    const paper = paperMarkdown(makePaper(await sheetOfText(spec(LEAD)), 'weights'));
    expect(paper).toMatch(/\| weight lead-pigs \| goes ashore \| −320 kg \|/);
    expect(paper).toContain('−352 kg·m');
  });
});
