import { tipRoomOf } from '../../../analysis/clearance.js';
import { derive } from '../../../analysis/derived.js';
import type { LineAnalysis } from '../../../analysis/line.js';
import { bollardOf } from '../../../analysis/propulsion/bollard.js';
import { Needs } from '../../../judge/needs.js';
import type { Evaluated, NamedQuantity } from './quantity.js';
import { missPropeller } from './shaft.js';

export const TIP_CLEARANCE: NamedQuantity = {
  name: 'tip clearance',
  doc: 'Room between blade tip and hull, as a length or as a share of the diameter.',
  example: 'require tip clearance at least 17 %',
  dimensions: ['length', 'ratio'],
  conditions: [],
  over: 'line',
  of: (analysis, _, dimension) =>
    derive(needs => {
      const { propeller } = analysis.line;
      if (!propeller) return missPropeller(analysis, needs);
      const room = tipRoomOf(propeller, needs);
      return room && (dimension === 'length' ? room.gap : room.share);
    }),
};

export const BOLLARD_THRUST: NamedQuantity = {
  name: 'bollard thrust',
  doc: 'Thrust of all propellers together with the vessel held, by the B-series and the torque of the engine.',
  example: 'require bollard thrust at least 12 kN',
  dimensions: ['force'],
  conditions: [],
  over: 'sum',
  of: analysis => {
    if (!analysis.line.propeller) return without(analysis);
    const result = bollardOf(analysis.line, analysis.vessel);
    if (!result.value) return { ...result, value: undefined };
    return {
      value: result.value.thrust,
      missing: [],
      note: 'By the Wageningen B series at rest; what the propeller sucks from the hull is not taken off.',
    };
  },
};

export const PROPELLER_DEMAND: NamedQuantity = {
  name: 'propeller demand',
  doc: 'Power that the propeller absorbs at rated speed over the power that reaches it.',
  example: 'require propeller demand at most 95 %',
  dimensions: ['ratio'],
  conditions: ['rated power'],
  over: 'line',
  of: analysis => {
    const result = analysis.propulsion;
    if (!result) return without(analysis);
    return result.value ? { value: result.value.demand, missing: [] } : { ...result, value: undefined };
  },
};

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
