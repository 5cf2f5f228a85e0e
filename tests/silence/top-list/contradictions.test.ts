import { describe, expect, it } from 'vitest';
import { outcomes, passing, saidBy } from './verdicts.js';

describe('tooth counts and ratio', () => {
  const rule = 'ratio/train';
  const teeth = (counts: string, exact: string) =>
    passing(rule)
      .replace(/mesh A 23 with B 47/g, counts)
      .replace(/exact 2\.0\d+:1/g, exact);

  it.each([
    ['2:1', 'mesh A 20 with B 59', 'fails'],
    ['3:1', 'mesh A 20 with B 59', 'fails'],
    ['2:1', 'mesh A 20 with B 40', 'holds'],
    ['2.9:1', 'mesh A 20 with B 59', 'holds'],
    ['2.95:1', 'mesh A 20 with B 59', 'holds'],
    ['2.93:1', 'mesh A 20 with B 59', 'fails'],
  ])('exact %s beside %s: %s', async (exact, counts, outcome) => {
    expect(await outcomes(rule, teeth(counts, `exact ${exact}`))).toContain(outcome);
  });
});

describe('preload and bolts', () => {
  const rule = 'shafting/coupling-bolts';
  const clamped = (bolts: string, preload: string) =>
    passing(rule)
      .replaceAll('bolts 4 x 1/2 in', `bolts ${bolts}`)
      .replace('bolt class 8.8  bolt fit fitted', `bolt fit clearance  bolt preload ${preload}`);

  it('80 kN break M6 bolts of any class: fails, and says what they bear', async () => {
    const [said] = await saidBy(rule, clamped('4 x 6 mm', '80 kN'));
    expect(said!.outcome).toBe('fails');
    // ISO 898-1: M6 has 20.1 mm² of thread, class 12.9 yields at 1080 MPa: 21.7 kN; here 75 % of the shank, 22.9 kN.
    expect(said!.message).toMatch(/past the yield of class 12\.9, the strongest, about 22\.9 kN/);
  });

  it('80 kN is within what M20 bolts bear', async () => {
    const said = await saidBy(rule, clamped('8 x 20 mm', '80 kN'));
    expect(said.map(one => one.message).join()).not.toContain('past the yield');
  });
});
