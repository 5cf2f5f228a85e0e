import { describe, expect, it } from 'vitest';
import { checkText } from '../../support/check.js';
import { changed, REPOWER, withStatements } from './spec-of.js';

const trial = (of: string, state = 'bottom clean  tachometers checked') =>
  withStatements(
    REPOWER,
    `  trial "sea trial"${of} dated 2026-02-20 {
    displacement 11.8 t  ${state}  water depth 14 m
    direction at the dock proven  astern and stop recorded
    run Centre at full throttle { engine speed 2000 rpm }
  }`,
  );
const found = async (spec: string, rule = 'trial/full-throttle') => {
  const { check, findings } = await checkText(spec);
  const verdicts = check.vessels[0]!.verdicts.filter(one => one.rule === rule);
  return { verdicts, problems: findings.filter(one => one.problem).map(one => one.message) };
};

describe('a trial says of which arrangement it is', () => {
  it.each(['existing', 'proposed'])('and is judged against %s alone', async name => {
    const { verdicts, problems } = await found(trial(` of ${name}`));
    expect(problems).toEqual([]);
    expect(verdicts.map(one => [one.subject, one.outcome])).toEqual([[`${name}.Centre`, 'fails']]);
  });

  it('or nothing is held against it where there are several', async () => {
    const { verdicts, problems } = await found(trial(''));
    expect(verdicts).toEqual([]);
    expect(problems.join()).toContain('State which arrangement was tried');
    expect((await found(trial(' of proposd'))).problems.join()).toContain('no arrangement proposd');
  });
});

it('states the shortfall and the ordered causes, the ratio among them, and concludes nothing', async () => {
  const { verdicts } = await found(trial(' of proposed'));
  expect(verdicts[0]!.message).toContain('13 % short of rated speed');
  expect(verdicts[0]!.message).toMatch(/tachometer.*ratio.*hull and load.*propeller last/);
  expect(verdicts[0]!.message).not.toContain('overloaded');
});

it.each([
  ['bottom foul  tachometers checked', 'it was foul'],
  ['bottom clean  tachometers not checked', 'they were not'],
  ['bottom unknown  tachometers checked', 'state of the bottom'],
  ['tachometers checked', 'state of the bottom'],
])('a trial with %s does not conclude', async (state, words) => {
  const { verdicts } = await found(trial(' of proposed', state));
  expect(verdicts.map(one => one.outcome)).toEqual(['cannot tell']);
  expect(verdicts[0]!.message).toContain(words);
});

it('is read, renamed and laid out with its arrangement', async () => {
  const text = trial(' of proposed');
  const { check } = await checkText(text);
  expect(check.vessels[0]!.vessel.trials![0]!.of).toBe('proposed');
  expect(changed(text, [' of proposed', ' of existing'])).toContain('trial "sea trial" of existing');
});
