import { given } from '@tailshaft/mechanics';
import { derive } from '../../../analysis/derived.js';
import { inputTorques } from '../../../analysis/input-torque.js';
import { LineAnalysis } from '../../../analysis/line.js';
import { isThroughInput } from '../../../model/gear-in-mode.js';
import { home, nameOf } from '../../../model/part.js';
import { drivenByAlone } from '../../../model/running.js';
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
      const others = (line.joined ?? []).filter(one => one.role === 'engine');
      if (others.length > 0 && !isThroughInput(line.gear))
        return needs.miss({
          what: `what each input of ${nameOf(line.gear)} carries`,
          host: home(line.gear),
          property: 'input shaft',
        });
      const inputs = [analysis, ...others.map(one => new LineAnalysis(drivenByAlone(line, one), vessel))];
      const torques = inputs.map(one => inputTorques(one, duty, 'ahead'));
      for (const one of torques) needs.take({ value: undefined, missing: one.needs.missing });
      if (needs.any || torques.some(one => one.compared.length === 0)) return undefined;
      const least = torques.map(one => one.compared[0]!).reduce((a, b) => (b.margin < a.margin ? b : a));
      return given('gear torque margin', 'm', 'ratio', least.margin, {
        assumed: `${least.capacity.label} over ${least.demand.label}, less one`,
      });
    }),
});
