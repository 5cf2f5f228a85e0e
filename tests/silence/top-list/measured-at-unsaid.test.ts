import { expect, it } from 'vitest';
import { REPOWER } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { changed, saidBy } from './verdicts.js';

const NEW = /engine Kittiwake-9[\s\S]*?measured at crankshaft/.exec(REPOWER)![0];

// By hand: the propeller asks 291 kW, and 110 % of what reaches it are left to a trial. The gear takes 3 % of what is measured at the
// crankshaft: of 265 kW there reach it 257 kW, so that it asks 113 %; at the propeller shaft it asks 109.8 %.
it.each([
  ['265 kW', 'measured at crankshaft', 'fails'],
  ['265 kW', 'measured at propeller shaft', 'holds'],
  ['265 kW', 'measured at unknown', 'cannot tell'],
  ['265 kW', '', 'cannot tell'],
  ['255 kW', 'measured at unknown', 'fails'],
  ['275 kW', 'measured at unknown', 'holds'],
])('a kept propeller under %s, "%s": %s', async (power, where, outcome) => {
  const now = NEW.replace('power 300 kW', `power ${power}`).replace('measured at crankshaft', where);
  const [said] = await saidBy('capacity/retained-propeller-overload', changed(REPOWER, [NEW, now]));
  expect([said!.outcome, said!.asked]).toEqual([outcome, outcome === 'cannot tell' ? ['measured at'] : []]);
});
