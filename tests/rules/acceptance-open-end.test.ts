import { findRule } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { checkText } from '../support/check.js';

const FAILING = findRule('rotation/same-hand')!.examples().failing;

/** What becomes of the two propellers of one hand, accepted until a day. */
async function outcomes(until: string): Promise<string[]> {
  const accept = `accept rotation/same-hand on proposed because "one spare" by "surveyor" dated 2026-01-10 until ${until}`;
  const { check } = await checkText(
    FAILING.replace('  arrangement proposed {', `  ${accept}\n  arrangement proposed {`),
  );
  return check.vessels
    .flatMap(one => one.verdicts)
    .filter(one => one.rule === 'rotation/same-hand')
    .map(one => one.outcome);
}

it('accepts nothing until a day that is not known', async () => {
  expect(await outcomes('2027-01-10')).toEqual(['accepted']);
  expect(await outcomes('unknown')).toEqual(['fails']);
});
