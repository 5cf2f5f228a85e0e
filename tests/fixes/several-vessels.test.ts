import { findRule } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { offeredFor } from './offered.js';

it('offers for each of two vessels with lines of one name what it offers for one alone', async () => {
  const one = findRule('rotation/propeller-hand')!.examples().failing;
  const vessel = one.slice(one.search(/^vessel /m));
  const both = `${one}\n${vessel.replace(/^vessel \S+/, 'vessel Second')}`;
  const offersOf = async (text: string) =>
    (await offeredFor(text))
      .filter(offered => offered.finding.code === 'rotation/propeller-hand')
      .map(offered => offered.cures.length);
  const [alone] = await offersOf(one);
  expect(alone).toBeGreaterThan(0);
  expect(await offersOf(both)).toEqual([alone, alone]);
});
