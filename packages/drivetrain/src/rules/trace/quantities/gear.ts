import { given } from '@tailshaft/mechanics';
import { derive } from '../../../analysis/derived.js';
import { inputTorques } from '../../../analysis/input-torque.js';
import { wantedDuty } from '../../planned.js';
import { named } from './quantity.js';

export const GEAR_TORQUE_MARGIN = named('gear torque margin', {
  over: 'line',
  better: 'more',
  of: analysis =>
    derive(needs => {
      const { line, vessel } = analysis;
      if (!line.gear) {
        return needs.miss(
          { what: `the gear of ${line.path}`, host: line.origin, property: 'gear' },
          line.nameOrigin,
        );
      }
      const duty = wantedDuty(vessel, needs);
      if (!duty) return undefined;
      const torques = inputTorques(analysis, duty, 'ahead');
      const least = torques.compared[0];
      if (!least || torques.needs.any) {
        needs.take({ value: undefined, missing: torques.needs.missing });
        return undefined;
      }
      return given('gear torque margin', 'm', 'ratio', least.margin, {
        assumed: `${least.capacity.label} over ${least.demand.label}, less one`,
      });
    }),
});
