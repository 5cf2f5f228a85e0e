import { resultOf, search, searched } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { exampleWithStudy, studied } from '../support/study.js';

const TEXT = exampleWithStudy(
  'pilot-cutter/ternhaven.shaft',
  `accept speed/idle-in-gear on proposed because "trolling valve is fitted" by "class surveyor" dated 2026-02-01 until 2026-12-01
  study s of proposed {
    vary propeller diameter 27 in .. 31 in by 0.5 in
    vary propeller pitch 33 in .. 37 in by 0.5 in
    rank by speed at full power
  }`,
);

it('tells what it found, and how far it came, when it is ended', async () => {
  const [ready] = (await studied(TEXT)).studies;
  const steps = search(ready!);
  // It stops between candidates, and while it works out in which order to ask.
  for (let step = steps.next(); !step.done && step.value.looked < 20; ) step = steps.next();
  const ended = steps.next(true);
  if (!ended.done) throw new Error('goes on');
  const result = resultOf(ready!, [ended.value]);
  const far = result.stoppedAt!;
  expect(far).toBeGreaterThan(0);
  expect(far).toBeLessThan(81);
  expect(result.judged).toBe(far);
  const whole = searched(ready!);
  expect(whole.stoppedAt).toBeUndefined();
  expect(whole.judged).toBe(81);
  const first = whole.holds.filter(one => one.index < far);
  expect(result.holds).toEqual(first);
});

it('comes to the same in shares as in one piece', async () => {
  const [ready] = (await studied(TEXT)).studies;
  const share = (from: number, to: number) => {
    const steps = search(ready!, { from, to });
    for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
  };
  expect(resultOf(ready!, [share(50, 81), share(0, 50)])).toEqual(searched(ready!));
});

it('lets a failure pass that somebody has accepted, and no other', async () => {
  const [ready] = (await studied(TEXT)).studies;
  const [without] = (await studied(TEXT.replace(/accept speed[^\n]*\n/, ''))).studies;
  const quick = searched(ready!);
  expect(quick.holds).toEqual(searched(ready!, { thorough: true }).holds);
  expect(quick.binding.map(one => one.rule)).not.toContain('speed/idle-in-gear');
  expect(searched(without!).binding.map(one => one.rule)).toContain('speed/idle-in-gear');
  expect(searched(without!).holds.length).toBeLessThan(quick.holds.length);
});
