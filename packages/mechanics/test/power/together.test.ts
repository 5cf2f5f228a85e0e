import { powerReferred, torqueReferred, torqueTogether } from '@tailshaft/mechanics';
import { published } from '../published.js';

const HAND = 'worked by hand from the balance of power; no published example was found';
published(torqueTogether, HAND, [
  {
    case: '364 N.m of an engine and 96 N.m of a motor',
    inputs: { first: 364, second: 96 },
    gives: 460,
    within: 1e-9,
  },
]);
published(torqueReferred, HAND, [
  // 600 N.m at 250 rpm are 15 708 W; at the engine, through 3:1 and 96 %, 16 362 W at 750 rpm are 208.3 N.m.
  {
    case: '600 N.m behind a gear of 3:1 and 96 %',
    inputs: { torque: 600, ratio: 3, efficiency: 0.96 },
    gives: 208.333,
    within: 5e-4,
  },
]);
published(powerReferred, HAND, [
  {
    case: '12 kW behind a gear of 96 %',
    inputs: { power: 12000, efficiency: 0.96 },
    gives: 12500,
    within: 1e-9,
  },
]);
