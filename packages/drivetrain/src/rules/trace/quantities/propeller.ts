import { tipRoomOf } from '../../../analysis/clearance.js';
import { derive } from '../../../analysis/derived.js';
import type { LineAnalysis } from '../../../analysis/line.js';
import { isDucted } from '../../../analysis/propulsion/blades.js';
import { bollardOf } from '../../../analysis/propulsion/bollard.js';
import { Needs } from '../../../judge/needs.js';
import { nameOf } from '../../../model/part.js';
import type { Propeller } from '../../../model/shafting.js';
import { seriesRemark } from '../../propeller/run-words.js';
import { type Evaluated, named } from './quantity.js';
import { missPropeller } from './shaft.js';

export const TIP_CLEARANCE = named('tip clearance', {
  over: 'line',
  better: 'more',
  of: (analysis, _, dimension) =>
    derive(needs => {
      const { propeller } = analysis.line;
      if (!propeller) return missPropeller(analysis, needs);
      const room = tipRoomOf(propeller, needs);
      return room && (dimension === 'length' ? room.gap : room.share);
    }),
});

export const BOLLARD_THRUST = named('bollard thrust', {
  over: 'sum',
  better: 'more',
  of: (analysis, condition) => {
    if (!analysis.line.propeller) return without(analysis);
    if (condition === 'full astern') return asternPull(analysis.line.propeller);
    const result = bollardOf(analysis.line, analysis.vessel);
    if (!result.value) return { ...result, value: undefined };
    return {
      value: result.value.thrust,
      missing: [],
      note: `By the ${result.value.curve.series.name} series at rest; thrust deduction is not included.${seriesRemark(result.value.curve)}`,
    };
  },
});

export const PROPELLER_DEMAND = named('propeller demand', {
  over: 'line',
  better: 'less',
  of: analysis => {
    const result = analysis.propulsion;
    if (!result) return without(analysis);
    return result.value ? { value: result.value.demand, missing: [] } : { ...result, value: undefined };
  },
});

function without(analysis: LineAnalysis): Evaluated {
  const needs = new Needs();
  const { line, vessel } = analysis;
  if (!line.propeller) missPropeller(analysis, needs);
  else {
    needs.miss({
      what: 'resistance of the hull at two speeds or more, or another fact that a speed method can use',
      host: vessel.hull?.origin ?? vessel.origin,
      property: vessel.hull ? 'resistance' : 'hull',
    });
  }
  return { value: undefined, missing: needs.missing };
}

/**
 * No figure: those at hand are of open propellers away from a hull (four quadrants of the B-series), a hull takes part of
 * it, and of a propeller in a nozzle nothing is published here.
 */
function asternPull(propeller: Propeller): Evaluated {
  const needs = new Needs();
  needs.miss({
    what: `thrust astern of ${nameOf(propeller)} behind its hull, as measured`,
    host: propeller.origin,
    property: 'propeller',
  });
  return {
    value: undefined,
    missing: needs.missing,
    refusal: isDucted(propeller)
      ? 'No astern figures of a propeller in a nozzle are published here; nozzle 19A loses more than an open screw.'
      : 'Published astern figures are of open propellers away from a hull, which takes part of the thrust.',
  };
}
