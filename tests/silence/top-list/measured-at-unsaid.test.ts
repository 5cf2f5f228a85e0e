import { expect, it } from 'vitest';
import { REPOWER } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { PROPELLED } from '../../../packages/drivetrain/src/rules/propeller/example-hull.js';
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

// By hand: behind the gear 300 kW × 0.97. What is asked is 106 % of the band's power at most.
it.each([
  ['28 in', 'measured at unknown', 'holds'],
  ['28.5 in', 'measured at crankshaft', 'fails'],
  ['28.5 in', 'measured at propeller shaft', 'holds'],
  ['28.5 in', 'measured at unknown', 'cannot tell'],
  ['28.5 in', '', 'cannot tell'],
  ['29 in', 'measured at unknown', 'fails'],
])('a propeller of %s pitch, "%s": %s', async (pitch, where, outcome) => {
  const spec = changed(PROPELLED, ['pitch 27 in', `pitch ${pitch}`]).replace('measured at crankshaft', where);
  const [said] = await saidBy('propeller/absorbed-power', spec);
  expect([said!.outcome, said!.asked]).toEqual([outcome, outcome === 'cannot tell' ? ['measured at'] : []]);
});
