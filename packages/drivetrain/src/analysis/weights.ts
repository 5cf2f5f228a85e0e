import {
  given,
  momentOfMass,
  newCentreOfGravity,
  totalMass,
  totalMoment,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Quantity } from '../model/fact.js';
import { home, nameOf, type Part } from '../model/part.js';
import type { Arrangement, ShaftLine, Vessel } from '../model/vessel.js';

/** A heavy part that comes or goes. */
interface Moved {
  readonly part: Part & { readonly mass?: Quantity<'mass'>; readonly position?: Quantity<'length'> };
  readonly line: ShaftLine;
  readonly sign: 1 | -1;
}

/** Engines, motors, gears and transfers that differ between an arrangement and the one it revises. */
export function heavyChanges(arrangement: Arrangement): Moved[] {
  const before = arrangement.before?.lines ?? [];
  const now = arrangement.lines.flatMap(line => heavyParts(line).map(part => ({ part, line })));
  const then = before.flatMap(line => heavyParts(line).map(part => ({ part, line })));
  const kept = (one: { part: Part; line: ShaftLine }) =>
    now.some(
      other =>
        other.line.name === one.line.name &&
        other.part.role === one.part.role &&
        other.part.change === 'retained',
    );
  return [
    ...now.filter(one => one.part.change !== 'retained').map(one => ({ ...one, sign: 1 as const })),
    ...then.filter(one => !kept(one)).map(one => ({ ...one, sign: -1 as const })),
  ];
}

function heavyParts(line: ShaftLine): Moved['part'][] {
  return [line.engine, line.motor, line.gear, ...line.transfers].flatMap(part => (part ? [part] : []));
}

/** Sum of what comes less what goes. */
export function massChange(arrangement: Arrangement, needs: Needs): Value<'mass'> | undefined {
  const masses = heavyChanges(arrangement).map(one => signedMass(one, needs));
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
  const change = massChange(arrangement, needs);
  const moments = heavyChanges(arrangement).map(one => {
    const mass = signedMass(one, needs);
    const lever = needs.fact(one.part.position, {
      what: `position of ${nameOf(one.part)} of ${one.line.name} in ${one.line.arrangement}`,
      host: one.part.origin,
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

function signedMass({ part, line, sign }: Moved, needs: Needs): Value<'mass'> | undefined {
  const mass = needs.fact(part.mass, { what: `mass of ${nameOf(part)}`, host: home(part), property: 'mass' });
  if (!mass || sign > 0) return mass;
  return given(`mass of ${nameOf(part)} taken out of ${line.name}`, 'm', 'mass', -mass.si, {
    ...(mass.origin ? { origin: mass.origin } : {}),
    assumed: 'declared mass, counted negative because it goes',
  });
}
