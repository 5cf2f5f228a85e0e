import { bollardByPowerAndDiameter, bollardUpperBound, renamed, type Value } from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Quantity } from '../model/fact.js';
import type { Transfer } from '../model/gear.js';
import { home, nameOf, type Part } from '../model/part.js';
import type { Bearing, Coupling, Shaft } from '../model/shafting.js';
import type { ShaftLine } from '../model/vessel.js';
import type { LineAnalysis } from './line.js';
import { greatestDiameter, isPair } from './pair.js';
import { isDucted } from './propulsion/blades.js';
import { shaftThrustInNozzle } from './propulsion/bollard.js';
import { waterDensity } from './propulsion/hull-forms.js';

/** Something that may take the thrust of the propeller. */
export interface ThrustTaker {
  readonly name: string;
  readonly part: Part;
  readonly bearing?: Bearing;
  /** Where its capacity is to be written, and in which words. */
  readonly host: object;
  readonly limit: Quantity<'force'> | undefined;
}

export interface ThrustPath {
  /** The first that the thrust meets on its way forward. */
  readonly taker: ThrustTaker | undefined;
  /** A joint or coupling on the way that does not pass it, met before any taker. */
  readonly stoppedBy: Coupling | undefined;
  /** Couplings met first that do not say whether they pass it. */
  readonly unsure: readonly Coupling[];
  /** Boxes met first that state no thrust rating: their output bearing gets the thrust, whatever stands ahead of them. */
  readonly unrated: readonly Transfer[];
}

/** Follows the thrust of the propeller forward until something takes it, or cannot pass it on. */
export function thrustPath(line: ShaftLine): ThrustPath {
  const unsure: Coupling[] = [];
  const unrated: Transfer[] = [];
  for (const part of [...line.chain].reverse()) {
    const coupling = line.couplings.find(one => one === part);
    if (coupling) {
      const passes = coupling.passesThrust;
      const usually = coupling.kind?.value === 'rigid' || passes?.value === 'yes';
      if (
        passes?.value === 'no' ||
        (coupling.kind?.value === 'joint' && passes?.value !== 'yes' && !passes)
      ) {
        return { taker: undefined, stoppedBy: coupling, unsure, unrated };
      }
      if (!usually) unsure.push(coupling);
      continue;
    }
    const taker = takerAt(line, part);
    if (taker) return { taker, stoppedBy: undefined, unsure, unrated };
    const box = line.transfers.find(one => one === part);
    if (box) unrated.push(box);
  }
  return { taker: undefined, stoppedBy: undefined, unsure, unrated };
}

function takerAt(line: ShaftLine, part: Part): ThrustTaker | undefined {
  if (part.role === 'shaft') {
    const bearing = ((part as Shaft).bearings ?? []).find(one => one.kind?.value === 'thrust');
    return (
      bearing && {
        name: `thrust bearing ${bearing.name}`,
        part,
        bearing,
        host: bearing.origin,
        limit: bearing.thrust,
      }
    );
  }
  const common = { name: nameOf(part), part, host: home(part) };
  const { gear, motor, transfers } = line;
  // A reversing gear carries the thrust by design, and its rating is looked at by whoever judges it.
  if (gear && part === gear)
    return {
      ...common,
      get limit() {
        return gear.thrust;
      },
    };
  // Motor and transfer carry it only when they say so.
  const limit = part === motor ? motor.thrustCapacity : transfers.find(one => one === part)?.thrust;
  return limit && { ...common, limit };
}

/** Asks for the rating of every box that the thrust meets first. */
export function wantRatedBoxes({ unrated }: ThrustPath, needs: Needs): void {
  for (const box of unrated)
    needs.fact(box.thrust, {
      what: `thrust that ${nameOf(box)} may carry: the propeller pushes on its output before anything ahead of it`,
      host: home(box),
      property: 'thrust at most',
    });
}

/**
 * Thrust on the shaft at the bollard with full rated power: the worst that the thrust bearing meets, by a rule of power and
 * size; in a nozzle by the series, as the nozzle hands its part to the hull.
 */
export function bollardThrust(analysis: LineAnalysis, needs: Needs): Value<'force'> | undefined {
  const { propeller } = analysis.line;
  if (!propeller) return undefined;
  const diameter = greatestDiameter(propeller, needs);
  const rated = needs.take(analysis.rated);
  const loads = rated && analysis.loads(rated);
  if (loads && !loads.shaft) needs.take({ value: undefined, missing: loads.missing });
  if (!diameter || !loads?.shaft) return undefined;
  if (isDucted(propeller)) {
    const power = renamed(loads.shaft.power, 'power at the propeller', 'PD');
    return shaftThrustInNozzle(propeller, power, analysis.vessel, needs);
  }
  // No rule of thumb covers a pair: what no disc of its size can exceed does.
  if (isPair(propeller))
    return bollardUpperBound({
      density: waterDensity(analysis.vessel),
      diameter: renamed(diameter, 'propeller diameter', 'D'),
      power: renamed(loads.shaft.power, 'power at the propeller', 'PD'),
    });
  return bollardByPowerAndDiameter({
    diameter: renamed(diameter, 'propeller diameter', 'D'),
    power: renamed(loads.shaft.power, 'power at the propeller', 'PD'),
  });
}
