import { expect, it } from 'vitest';
import { RECKONED } from '../../../packages/drivetrain/src/rules/propeller/example-place.js';
import { Bench } from '../rejudge.js';
import { changed, outcomes, passing, saidBy } from './verdicts.js';

it('a new tip clearance is asked what it was worked out from where the old one is not known', async () => {
  const rule = 'propeller/clearance-by-diameter';
  const [said] = await saidBy(rule, changed(RECKONED, ['tip clearance 125 mm [measured 2026-01-14]  ', '']));
  expect([said?.outcome, said?.asked]).toEqual(['cannot tell', ['tip clearance']]);
});

it('a size that nobody knows may be near to any other', async () => {
  const rule = 'units/near-miss';
  const [, left] = /diameter 65 mm \[drawing\]()/.exec(passing(rule))!;
  expect(await outcomes(rule, passing(rule))).toEqual(['holds']);
  for (const instead of ['diameter unknown', left!])
    expect(await outcomes(rule, changed(passing(rule), ['diameter 65 mm [drawing]', instead]))).toEqual([
      'cannot tell',
    ]);
});

it('a shaft of which one diameter is said holds, and says that its ends are taken to be as thick', async () => {
  const [said] = await saidBy('shafting/diameter', passing('shafting/diameter'));
  expect([said?.outcome, said?.assumed]).toEqual([
    'holds',
    expect.arrayContaining(['bore', 'coupling end diameter', 'taper large end']),
  ]);
});

it('a sheet that lists a reversing clutch and says "reversing no" contradicts itself', async () => {
  const line = passing('rotation/controllable-pitch');
  expect(await outcomes('rotation/controllable-pitch', line)).toEqual(['holds']);
  const { told } = await new Bench().judge(
    changed(
      line,
      [' { reversing no }', ''],
      ['  slip device offered', '  slip device offered  reversing no'],
    ),
  );
  const by = (rule: string) => told.filter(one => one.rule === rule).map(one => one.outcome);
  expect(by('rotation/controllable-pitch')).toEqual(['cannot tell']);
  expect(by('paper/place-against-entry')).toContain('fails');
  // The senses of the clutches are not in doubt.
  expect(by('rotation/propeller-hand')).toEqual(['holds']);
});
