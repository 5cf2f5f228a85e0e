import {
  given,
  momentOfMass,
  newCentreOfGravity,
  type Origin,
  totalMass,
  totalMoment,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Quantity } from '../model/fact.js';
import { home, nameOf, type Part, type Role } from '../model/part.js';
import type { Arrangement, ShaftLine, Vessel, Weight } from '../model/vessel.js';

/** Something heavy that comes or goes. */
export interface HeavyChange {
  readonly name: string;
  /** Its shaft line; undefined beside the machinery. */
  readonly line?: ShaftLine;
  readonly mass: Quantity<'mass'> | undefined;
  readonly position: Quantity<'length'> | undefined;
  /** Where its mass and its position are stated. */
  readonly massHost: Origin;
  readonly positionHost: Origin;
  /** Undefined where nobody knows whether it comes or goes; `ask` says what is missing. */
  readonly sign: 1 | -1 | undefined;
  readonly ask?: (needs: Needs) => void;
}

/** Engines, motors, gears, transfers and stated weights that differ between an arrangement and what was found. */
export function heavyChanges(arrangement: Arrangement, vessel: Vessel): HeavyChange[] {
  const before = arrangement.before?.lines ?? [];
  const now = arrangement.lines.flatMap(heavyIn);
  const then = before.flatMap(heavyIn);
  const kept = (one: Heavy) =>
    now.some(
      other =>
        other.line.name === one.line.name &&
        other.part.role === one.part.role &&
        other.nth === one.nth &&
        other.part.change === 'retained',
    );
  return [
    ...now.filter(one => one.part.change !== 'retained').map(one => ofPart(one, 1)),
    ...then.filter(one => !kept(one)).map(one => ofPart(one, -1)),
    ...(vessel.hull?.weights ?? []).flatMap(one => ofWeight(one, arrangement, vessel)),
  ];
}

interface Heavy {
  readonly part: Part & { readonly mass?: Quantity<'mass'>; readonly position?: Quantity<'length'> };
  readonly line: ShaftLine;
  /** Which one of its role it is in the line. */
  readonly nth: number;
}

function heavyIn(line: ShaftLine): Heavy[] {
  const parts = heavyParts(line);
  return parts.map(part => ({
    part,
    line,
    nth: parts.filter(one => one.role === part.role).indexOf(part),
  }));
}

/** Engines, motors, gears and transfers of a line, every one of them. */
export function heavyParts(line: ShaftLine): Heavy['part'][] {
  return line.chain.filter(one => HEAVY.has(one.role)) as Heavy['part'][];
}

const HEAVY = new Set<Role>(['engine', 'motor', 'gear', 'transfer']);

function ofPart({ part, line }: Heavy, sign: 1 | -1): HeavyChange {
  return {
    name: nameOf(part),
    line,
    mass: part.mass,
    position: part.position,
    massHost: home(part),
    positionHost: part.origin,
    sign,
  };
}

/** A weight counts in the arrangement that it is stated with and in those that revise it; where that is open, in each. */
function ofWeight(weight: Weight, arrangement: Arrangement, vessel: Vessel): HeavyChange[] {
  const { name, origin, mass, position } = weight;
  const change = { name: `weight ${name}`, mass, position, massHost: origin, positionHost: origin };
  const wanted = (what: string, property: string) => ({
    what: `${what} weight ${name}`,
    host: origin,
    property,
  });
  const ask = (needs: Needs): void => {
    needs.fact(weight.moves, wanted('whether it comes aboard or goes ashore, of', 'moves'));
    const of = needs.fact(weight.arrangement, wanted('arrangement that moves', 'under'));
    if (of !== undefined && !vessel.arrangements.some(one => one.name === of))
      needs.miss(wanted(`an arrangement of this vessel (none is called ${of}) that moves`, 'under'));
  };
  const of = weight.arrangement?.value;
  const known = vessel.arrangements.some(one => one.name === of);
  if (known && !stepsTo(arrangement, vessel).has(of!)) return [];
  const moves = known ? weight.moves?.value : undefined;
  return [{ ...change, sign: moves && (moves === 'aboard' ? 1 : -1), ask }];
}

/** The names of an arrangement and of those that it revises, without the one that was found. */
function stepsTo(arrangement: Arrangement, { arrangements }: Vessel): ReadonlySet<string> {
  const names = new Set<string>();
  let step: Arrangement | undefined = arrangement;
  while (step?.revises && !names.has(step.name)) {
    names.add(step.name);
    const { revises }: Arrangement = step;
    step = arrangements.find(one => one.name === revises);
  }
  return names;
}

/** Sum of what comes less what goes. */
export function massChange(
  arrangement: Arrangement,
  vessel: Vessel,
  needs: Needs,
): Value<'mass'> | undefined {
  const masses = heavyChanges(arrangement, vessel).map(one => signedMass(one, needs));
  if (masses.some(one => one === undefined)) return undefined;
  return totalMass(masses.map(one => one!));
}

/** Centre of gravity of the vessel before and after, along its length. */
export function balanceChange(
  arrangement: Arrangement,
  vessel: Vessel,
  needs: Needs,
): { readonly before: Value<'length'>; readonly after: Value<'length'> } | undefined {
  const host = vessel.hull?.origin ?? vessel.origin;
  const displacement = needs.fact(vessel.hull?.lightship, {
    what: `lightship of ${vessel.name}`,
    host,
    property: 'lightship',
  });
  const before = needs.fact(vessel.hull?.centreOfGravity, {
    what: `centre of gravity of ${vessel.name}`,
    host,
    property: 'centre of gravity at',
  });
  const change = massChange(arrangement, vessel, needs);
  const moments = heavyChanges(arrangement, vessel).map(one => {
    const mass = signedMass(one, needs);
    const lever = needs.fact(one.position, {
      what: `position of ${one.name}${one.line ? ` of ${one.line.name} in ${one.line.arrangement}` : ''}`,
      host: one.positionHost,
      property: 'position',
    });
    return mass && lever && momentOfMass({ mass, lever });
  });
  if (!displacement || !before || !change || moments.some(one => one === undefined)) return undefined;
  const after = newCentreOfGravity({
    displacement,
    centreOfGravity: before,
    massChange: change,
    momentChange: totalMoment(moments.map(one => one!)),
  });
  return { before, after };
}

function signedMass(change: HeavyChange, needs: Needs): Value<'mass'> | undefined {
  const { name, line, sign } = change;
  change.ask?.(needs);
  const mass = needs.fact(change.mass, { what: `mass of ${name}`, host: change.massHost, property: 'mass' });
  if (!mass || sign === undefined) return undefined;
  if (sign > 0) return mass;
  return given(`mass of ${name} taken out${line ? ` of ${line.name}` : ''}`, 'm', 'mass', -mass.si, {
    ...(mass.origin ? { origin: mass.origin } : {}),
    assumed: 'declared mass, counted negative because it goes',
  });
}
