import type { LineAnalysis } from '../../../analysis/line.js';
import { belowHump } from '../../../analysis/propulsion/below-hump.js';
import { Needs } from '../../../judge/needs.js';
import { methodWords } from '../../propeller/run-words.js';
import { type Evaluated, named } from './quantity.js';

export const SPEED = named('speed', {
  over: 'vessel',
  better: 'more',
  of: (analysis, condition) => {
    if (condition?.startsWith('idle')) return analysis.idleVesselSpeed;
    return condition === 'rated power' ? atRated(analysis) : atFullThrottle(analysis);
  },
});

function atFullThrottle(analysis: LineAnalysis): Evaluated {
  const result = analysis.propulsion;
  const propulsion = result?.value;
  if (!propulsion) return result ? { ...result, value: undefined } : noSpeed(analysis);
  if (propulsion.full.applies) return known(analysis, propulsion.full.vesselSpeed);
  const given = ['given speed', 'Crouch', 'handbook displacement'].includes(propulsion.method);
  if (given) return known(analysis, propulsion.rated.vesselSpeed);
  const { line } = analysis;
  const needs = new Needs();
  needs.miss({
    what: 'full-load torque of the engine below rated speed',
    host: (line.engine ?? line).origin,
    property: 'full-load torque',
  });
  return { value: undefined, missing: needs.missing, refusal: propulsion.full.reason };
}

function atRated(analysis: LineAnalysis): Evaluated {
  const result = analysis.propulsion;
  if (!result) return noSpeed(analysis);
  if (!result.value) return { ...result, value: undefined };
  // From rest the balance at rated speed is never reached: what is reached is what there is.
  const hump = belowHump(result.value);
  return known(analysis, (hump?.full ?? result.value.rated).vesselSpeed);
}

function known(analysis: LineAnalysis, value: NonNullable<Evaluated['value']>): Evaluated {
  return { value, missing: [], note: methodWords(analysis.propulsion!.value!) };
}

/** The hull is not described at all: a speed method, or resistance, is the first thing to write. */
function noSpeed({ vessel, line }: LineAnalysis): Evaluated {
  const needs = new Needs();
  if (!line.propeller)
    needs.miss(
      { what: `the propeller of ${line.path}`, host: line.origin, property: 'propeller' },
      line.nameOrigin,
    );
  else if (vessel.hull) {
    needs.miss({
      what: 'resistance of the hull at two speeds or more, or another fact that a speed method can use',
      host: vessel.hull.origin,
      property: 'resistance',
    });
  } else needs.miss({ what: `the hull of vessel ${vessel.name}`, host: vessel.origin, property: 'hull' });
  return { value: undefined, missing: needs.missing };
}
