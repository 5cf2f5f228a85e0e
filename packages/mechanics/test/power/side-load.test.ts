import { strandSideLoad } from '@tailshaft/mechanics';
import { published } from '../published.js';

published(strandSideLoad, 'worked by hand from the statics of a wheel; no published example was found', [
  {
    case: 'a chain, 400 N.m on 0.2 m: 4 kN of pull, the other strand slack',
    inputs: { torque: 400, diameter: 0.2, strandFactor: 1 },
    gives: 4000,
    within: 1e-9,
  },
  {
    // Strands of 5 kN and 1 kN: 4 kN carry 400 N.m, and 6 kN pull.
    case: 'a belt with strands of 5 and 1 kN',
    inputs: { torque: 400, diameter: 0.2, strandFactor: 1.5 },
    gives: 6000,
    within: 1e-9,
  },
]);
