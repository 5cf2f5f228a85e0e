import { powerLessTakeOff } from '@tailshaft/mechanics';
import { published } from '../published.js';

published(powerLessTakeOff, 'worked by hand from the balance of power; no publication prints it', [
  {
    case: '300 kW less a pump of 25 hp',
    inputs: { power: 300e3, takeOff: 25 * 745.699872 },
    gives: 281.3575,
    within: 0.00005,
    unit: 1e3,
  },
  { case: 'nothing taken off', inputs: { power: 84e3, takeOff: 0 }, gives: 84, within: 1e-9, unit: 1e3 },
]);
