import { expect, it } from 'vitest';
import { passing, saidBy } from './verdicts.js';

const RULE = 'capacity/gear-input-torque';
const RATED = 'rated medium 0.18 kW/rpm';

it.each(['for diesel', 'running ahead', 'from 500 .. 2600 rpm'])(
  'a rating %s goes before one for all, in whatever order they are written',
  async narrow => {
    const less = `rated medium 0.09 kW/rpm ${narrow}`;
    for (const both of [`${RATED}\n    ${less}`, `${less}\n    ${RATED}`]) {
      const spec = passing(RULE).replace(RATED, both);
      expect(spec).toContain(less);
      expect((await saidBy(RULE, spec))[0]!.outcome).toBe('fails');
    }
  },
);

it.each([
  ['of another duty counts beside those of the ratio', 'rated heavy 0.2 kW/rpm', 'duty heavy', 'holds'],
  ['of another duty fails beside those of the ratio', 'rated heavy 0.09 kW/rpm', 'duty heavy', 'fails'],
  ['of the same duty is what the ratio says better', 'rated medium 0.09 kW/rpm', 'duty medium', 'holds'],
])('a rating for every ratio %s', async (_, rated, duty, outcome) => {
  const spec = passing(RULE)
    .replace('  ratio 2.04:1', `  ${rated}\n  ratio 2.04:1`)
    .replace('duty medium', duty);
  expect(spec).toContain(rated);
  expect((await saidBy(RULE, spec))[0]!.outcome).toBe(outcome);
});
