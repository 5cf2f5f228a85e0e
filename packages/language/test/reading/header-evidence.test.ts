import type { Fact } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { changed } from '../../../../tests/silence/top-list/spec-of.js';
import { checkText } from '../../../../tests/support/check.js';
import { SINGLE_LINE } from '../../../drivetrain/src/rules/example-specs.js';

const MARKED: readonly (readonly [value: string, rule: string])[] = [
  ['at medium', 'capacity/gear-input-torque'],
  ['ratio 2.04:1', 'shafting/diameter'],
  ['ahead clutch B', 'rotation/propeller-hand'],
];

it.each(MARKED)('%s [hearsay]: nothing holds on it', async (value, rule) => {
  const outcomes = async (text: string) => {
    const { check } = await checkText(text);
    expect(check.problems.filter(one => one.severity === 'error')).toEqual([]);
    return check.vessels
      .flatMap(one => one.verdicts)
      .flatMap(one => [one, ...(one.folds ?? [])])
      .filter(one => one.rule === rule)
      .map(one => one.outcome);
  };
  const place = /arrangement proposed \{[\s\S]*/.exec(SINGLE_LINE)![0];
  const doubted = SINGLE_LINE.replace(place, changed(place, [value, `${value} [hearsay]`]));
  expect(await outcomes(SINGLE_LINE)).toEqual(['holds']);
  expect(await outcomes(doubted)).toEqual(['cannot tell']);
});

it('the side of a line takes its evidence', async () => {
  const { check } = await checkText(
    changed(SINGLE_LINE, [
      'shaftline Centre {',
      'shaftline Centre {\n      side centre [measured 2026-01-14]',
    ]),
  );
  const { side } = check.vessels[0]!.vessel.arrangements[0]!.lines[0]!;
  expect((side as Fact<string>).evidence?.kind).toBe('measured');
  expect(check.problems).toEqual([]);
});
