import { expect, it } from 'vitest';
import { changed, passing, saidBy } from './verdicts.js';

const RULE = 'shafting/thrust-capacity';
const BOX = '  thrust at most 40 kN\n';

it('a reverse gear ahead of a chain box that states no thrust does not carry the thrust', async () => {
  const spec = changed(passing('capacity/transfer-torque'), [
    '  slip device offered\n',
    '  slip device offered\n  thrust at most 60 kN\n',
  ]);
  expect((await saidBy(RULE, spec))[0]!.outcome).toBe('holds');
  const [said] = await saidBy(RULE, changed(spec, [BOX, '']));
  expect(said!.outcome).toBe('cannot tell');
  expect(said!.asked).toEqual(['thrust at most']);
  expect(said!.message).toMatch(/Known so far: thrust at the bollard is about [\d.]+ kN/);
});
