import { describe, expect, it } from 'vitest';
import { changed, outcomes, passing, saidBy } from './verdicts.js';

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

describe('power, torque and speed', () => {
  const rule = 'capacity/power-and-torque';

  it.each([
    // 300 kW at 2300 rpm is 300 000 / (2300 × 2π/60) = 1245.6 N·m.
    ['peak torque 1480 N.m at 1500 rpm', 'holds'],
    ['peak torque 1240 N.m at 1500 rpm', 'holds'],
    ['peak torque 1020 N.m at 1500 rpm', 'fails'],
    ['peak torque 1480 N.m at 1500 rpm\n  full-load torque 1600 N.m at 1400 rpm', 'fails'],
    ['peak torque 1480 N.m at 1500 rpm\n  full-load power 210 kW at 1400 rpm', 'holds'],
  ])('of an engine with %s: %s', async (peak, outcome) => {
    const spec = changed(passing(rule), ['peak torque 1480 N.m at 1500 rpm', peak]);
    expect(await outcomes(rule, spec)).toEqual([outcome]);
  });

  it.each([
    // 270 N·m at base speed, 1060 rpm, is 29.97 kW.
    ['power 30 kW at 1100 rpm', 'holds'],
    ['power 45 kW at 1100 rpm', 'fails'],
    ['power 14 kW at 1100 rpm', 'fails'],
  ])('of a motor of 270 N·m up to 1060 rpm with %s: %s', async (power, outcome) => {
    const spec = changed(passing('capacity/motor-equivalent'), ['power 30 kW at 1100 rpm', power]);
    expect(await outcomes(rule, spec)).toEqual([outcome]);
  });
});

describe('place and catalogue', () => {
  const rule = 'paper/place-against-entry';
  const flange =
    'flange { outside diameter 146 mm  bolt circle 108 mm  bolts 4 x 1/2 in  pilot 63.5 mm male }';

  it.each([
    ['bolt circle 121 mm', 'holds'],
    ['bolt circle 12.1 cm', 'holds'],
    ['bolt circle 108 mm', 'fails'],
  ])('a flange whose entry says 121 mm has at its place %s: %s', async (circle, outcome) => {
    const spec = changed(passing('shafting/coupling-flange'), [
      '      coupling Half-146\n',
      `      coupling Half-146 { ${flange.replace('bolt circle 108 mm', circle)} }\n`,
    ]);
    const said = await saidBy(rule, spec);
    expect(said.map(one => one.outcome)).toEqual([outcome]);
    if (outcome === 'fails') expect(said[0]!.message).toContain('bolt circle 108 mm, against 121 mm');
  });
});
