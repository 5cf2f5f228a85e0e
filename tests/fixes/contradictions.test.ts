import { expect, it } from 'vitest';
import { FRESH } from './fresh-vessels.js';
import { offeredFor } from './offered.js';

/* Which of two figures is right only the thing itself tells: neither is a size to be chosen anew. */
it('offers no figure of its own where two of a spec contradict each other', async () => {
  const text = FRESH['controllable pitch'].replace(
    'pitch range 300 mm .. 2200 mm',
    'pitch range 300 mm .. 1100 mm',
  );
  const offered = await offeredFor(text);
  const contradicted = offered.find(one => /is more than pitch range/.test(one.finding.message))!;
  const titles = contradicted.cures.map(one => one.title);
  expect(titles.filter(one => /^Make the /.test(one))).toEqual([]);
});
