import { expect, it } from 'vitest';
import { passing, saidBy } from './verdicts.js';

const RULE = 'capacity/motor-equivalent';

/** Between motor and shaft, with two ratios to choose from and none chosen. */
const BOX = `gear Box "reduction box" {
  ratio 2:1 { clutch A output same  ahead continuous }
  ratio 3:1 { clutch A output same  ahead continuous }
}

`;

it.each([
  ['30 hp', 'fails', /gives 30(\.0)? hp at most, at any ratio/],
  ['50 hp', 'cannot tell', /Known so far: it gives 50(\.0)? hp of the 40(\.0)? hp/],
])('a motor of %s said to equal 40 hp, its ratio not chosen: %s', async (power, outcome, words) => {
  const spec = passing(RULE)
    .replace(/said to equal [^\n]*/, 'said to equal 40 hp at 1100 rpm')
    .replace(/ {2}power 30 kW at 1100 rpm\n {2}torque [^\n]*\n/, `  power ${power} at 1100 rpm\n`)
    .replace('      motor Eddy-30\n', '      motor Eddy-30\n      gear Box ahead clutch A\n');
  const [said] = await saidBy(RULE, BOX + spec);
  expect(said!.outcome).toBe(outcome);
  expect(said!.message).toMatch(words);
});
