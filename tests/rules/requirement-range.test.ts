import { findRule } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { checkText } from '../support/check.js';

/** The passing example of the rule, with another bound in it. */
async function outcomes(bound: string): Promise<string[]> {
  const text = findRule('trace/requirement-met')!.examples!().passing;
  const { check } = await checkText(text.replace('at most 1200 rpm at', `at most ${bound} at`));
  return check.vessels
    .flatMap(one => one.verdicts)
    .filter(one => one.rule === 'trace/requirement-met')
    .map(one => one.outcome);
}

it('holds no requirement whose bound is a slip', async () => {
  expect(await outcomes('1200 rpm')).toEqual(['holds']);
  // No propeller shaft turns at 12000 rpm: a nil too many.
  expect(await outcomes('12000 rpm')).toEqual(['cannot tell']);
  // Too low a bound fails, whatever was meant.
  expect(await outcomes('1.2 rpm')).toEqual(['fails']);
});
