import { describe, expect, it } from 'vitest';
import { changed, outcomes, passing, saidBy } from './verdicts.js';

const RULE = 'shafting/diameter';
const BAR = 'diameter 65 mm [drawing]';
const with_ = (end: string) => changed(passing(RULE), [BAR, `${BAR}  ${end}`]);

describe('an end that is turned down is in the strength of the shaft', () => {
  it.each([
    ['a taper that begins thinner than the shaft', 'taper large end 40 mm', 'large end of its taper'],
    ['a thin coupling end', 'coupling end diameter 40 mm', 'coupling end'],
  ])('%s fails', async (_, end, name) => {
    const [said] = await saidBy(RULE, with_(end));
    expect(said!.outcome).toBe('fails');
    expect(said!.message).toContain(`the 40 mm ${name}`);
    // What would put it right: d = cube root of 16 T n / (π St), 50.7 mm for this load and grade.
    expect(said!.message).toMatch(/Fit \d+(\.\d)? mm of this grade there/);
  });

  it('holds where the end is thick enough', async () => {
    expect(await outcomes(RULE, with_('taper large end 63 mm'))).toEqual(['holds']);
  });

  it.each(['taper large end', 'coupling end diameter'])('waits for an open %s', async end => {
    const said = await saidBy(RULE, with_(`${end} unknown`));
    expect(said.map(one => one.outcome)).toContain('cannot tell');
    expect(said.map(one => one.outcome)).not.toContain('holds');
    expect(said.flatMap(one => one.asked)).toContain(end);
  });
});

describe('an end that is turned down on a shaft that is kept', () => {
  const KEPT = 'capacity/retained-shaft-torque';
  const modified = (end: string) =>
    changed(passing(KEPT), ['      retain shaft\n', `      modify shaft { ${end} }\n`]);

  it.each([
    ['at the coupling', 'coupling end diameter 30 mm', 'coupling end diameter'],
    ['at the taper', 'taper large end 30 mm', 'taper large end'],
    ['and a bore too', 'bore 60 mm', 'bore'],
  ])('%s weakens it', async (_, end, words) => {
    const [said] = await saidBy(KEPT, modified(end));
    expect(said!.outcome).toBe('fails');
    expect(said!.message).toContain(`modified in its ${words};`);
  });

  it('cannot be told while it is open', async () => {
    expect(await outcomes(KEPT, modified('coupling end diameter unknown'))).toEqual(['cannot tell']);
  });
});

describe('the vibratory stress of a shaft', () => {
  const STRESS = 'interface/torsional-stress';
  it('is judged where its taper begins', async () => {
    const [thick] = await saidBy(STRESS, passing(STRESS));
    expect(thick!.outcome).toBe('holds');
    const bar = /shaft \{/.exec(passing(STRESS))![0];
    const [said] = await saidBy(STRESS, changed(passing(STRESS), [bar, `${bar} taper large end 20 mm `]));
    expect(said!.outcome).toBe('fails');
    expect(said!.message).toContain('the large end of the taper');
  });
});

describe('a shaft that takes the place of another', () => {
  const broke = passing('shafting/after-break');
  const [was, is] = ['diameter 65 mm [drawing]\n', 'diameter 75 mm [drawing] }'];
  const ends = (old: string, now: string) =>
    changed(broke, [was, `diameter 65 mm [drawing]  ${old}\n`], [is, `diameter 75 mm [drawing]  ${now} }`]);

  // By hand: stress goes as 1/d³, and 80 % of it is allowed. (65/75)³ = 0.65, (65/60)³ = 1.27, (50/55)³ = 0.75, (50/52)³ = 0.89.
  it.each([
    ['', '', 'holds'],
    ['', 'taper large end 60 mm', 'fails'],
    ['taper large end 50 mm', 'taper large end 55 mm', 'holds'],
    ['taper large end 50 mm', 'taper large end 52 mm', 'fails'],
    ['coupling end diameter 50 mm', 'coupling end diameter 52 mm', 'fails'],
    ['taper large end 50 mm', '', 'cannot tell'],
    ['taper large end 50 mm', 'taper large end unknown', 'cannot tell'],
  ])('runs at less stress in its ends too: %s, then %s', async (old, now, outcome) => {
    expect(await outcomes('shafting/after-break', ends(old, now))).toEqual([outcome]);
  });

  const graded = passing('shafting/material-changed');
  const turned = (old: string, now: string) =>
    changed(
      graded,
      ['diameter 65 mm [drawing]', `diameter 65 mm [drawing]  ${old}`],
      ['diameter 65 mm }', `diameter 65 mm  ${now} }`],
    );

  // The new grade has 70/67 of the yield of the old one, so that an end may be (67/70)^⅓ = 0.985 as thick.
  it.each([
    ['', '', 'holds'],
    ['', 'coupling end diameter 60 mm', 'fails'],
    ['coupling end diameter 60 mm', 'coupling end diameter 59.5 mm', 'holds'],
    ['coupling end diameter 60 mm', 'coupling end diameter 57 mm', 'fails'],
    ['coupling end diameter 60 mm', '', 'cannot tell'],
  ])('is no weaker in its ends: %s, then %s', async (old, now, outcome) => {
    expect(await outcomes('shafting/material-changed', turned(old, now))).toEqual([outcome]);
  });
});
