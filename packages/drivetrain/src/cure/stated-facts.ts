import type { Value } from '@tailshaft/mechanics';
import { amount, asStated, type NewValue, newWord, OPEN, quantityOf, spell } from '@tailshaft/vocabulary';
import { shaftBehind } from '../analysis/couplings.js';
import { ratingsOf } from '../analysis/gear-data.js';
import type { Engine, Motor } from '../model/engine.js';
import type { Fact, Rotation } from '../model/fact.js';
import type { Flange, Gear, Pilot, Transfer } from '../model/gear.js';
import type { Part } from '../model/part.js';
import type { Coupling, Shaft } from '../model/shafting.js';
import type { ShaftLine } from '../model/vessel.js';
import { sizeBeyond } from './sizes.js';

/** A figure that bounds what a bought part may be used for, and the way in which it is relaxed. */
export interface Limit {
  readonly fact: Fact<Value>;
  /** The same of a second input, which is relaxed with it. */
  readonly also?: readonly Fact<Value>[];
  readonly way: 1 | -1;
  /** Where the words of its property do not say it. */
  readonly says?: string;
  /** Rules that must hold as well. */
  readonly further?: readonly string[];
}

/** Another value of one fact. */
export interface Swap {
  readonly fact: Fact<unknown>;
  readonly value: unknown;
  /** The same as it is written. */
  readonly as: NewValue;
}

/** What its sheet allows a part, that another one could be made for. */
export function limitsOf(part: Part): Limit[] {
  const up = (...facts: (Fact<Value> | undefined)[]) => bounds(facts, 1);
  const down = (...facts: (Fact<Value> | undefined)[]) => bounds(facts, -1);
  switch (part.role) {
    case 'gear': {
      const gear = part as Gear;
      return [
        ...ratingsOf(gear, gear.variant).flatMap(one =>
          bounds([one.powerPerSpeed ?? one.torque], 1).map(limit => ({
            ...limit,
            says: `rated ${one.duty}`,
          })),
        ),
        ...limitsOfInputs(gear),
        ...up(gear.inputSpeedMax, gear.thrust, gear.installedAngleMax, gear.runningAngleMax),
        ...down(gear.inputSpeedMin),
      ];
    }
    case 'coupling': {
      const coupling = part as Coupling;
      return [...up(coupling.torque, coupling.vibratoryTorque), ...down(coupling.rivetRing)];
    }
    case 'transfer': {
      const transfer = part as Transfer;
      return up(transfer.torque, transfer.inputSpeedMax, transfer.thrust);
    }
    case 'motor': {
      const motor = part as Motor;
      return up(motor.thrustCapacity, motor.torque, motor.topSpeed);
    }
    case 'engine': {
      const engine = part as Engine;
      return [
        ...up(engine.installedAngleMax, engine.runningAngleMax),
        ...down(engine.height, engine.width, engine.length, engine.lowIdle),
      ];
    }
    default:
      return [];
  }
}

/** A gear with two input shafts is made for one as for the other. */
function limitsOfInputs({ inputs, variant }: Gear): Limit[] {
  const all = [...inputs, ...(variant?.inputs ?? [])];
  const ratings = all.flatMap(one => one.ratings);
  const of = (duty: string) =>
    ratings.flatMap(one => (one.duty === duty ? [one.powerPerSpeed ?? one.torque] : []));
  const together = (facts: readonly (Fact<Value> | undefined)[]): Limit[] => {
    const [first, ...also] = bounds(facts, 1);
    return first ? [{ ...first, also: also.map(one => one.fact) }] : [];
  };
  return [
    ...[...new Set(ratings.map(one => one.duty))].flatMap(duty =>
      together(of(duty)).map(limit => ({ ...limit, says: `rated ${duty}` })),
    ),
    ...together(all.map(one => one.speedMax)),
  ];
}

function bounds(facts: readonly (Fact<Value> | undefined)[], way: 1 | -1): Limit[] {
  return facts.flatMap(fact => (fact?.value ? [{ fact, way }] : []));
}

/** What a part must share with its neighbours, as they have it: in groups that go together. */
export function copiesFor(part: Part, line: ShaftLine): Swap[][] {
  const { engine, gear } = line;
  const groups: (Swap | undefined)[][] = [];
  if (part.role === 'coupling') {
    const coupling = part as Coupling;
    const shaft = shaftBehind(line, coupling);
    groups.push(
      forFlywheel(coupling, engine),
      [like(coupling.leastCylinders, engine?.cylinders)],
      [like(coupling.splineTeeth, gear?.splineTeeth), like(coupling.splinePitch, gear?.splinePitch)],
      forShaft(coupling, shaft),
      flangeLike(coupling.flange, gear?.outputFlange),
    );
  }
  if (part.role === 'gear' && gear)
    groups.push(
      [like(gear.inputHousing, engine?.housing)],
      [like(gear.inputRotation, engine?.rotation)],
      flangeLike(gear.outputFlange, line.couplings.find(one => one.flange)?.flange),
    );
  return groups.map(group => group.filter(one => one !== undefined)).filter(group => group.length > 0);
}

/** A damper of another size has another rivet ring: one that enters the recess, or one that is asked for. */
function forFlywheel(
  { flywheelSize, rivetRing }: Coupling,
  engine: Engine | undefined,
): (Swap | undefined)[] {
  const size = like(flywheelSize, engine?.flywheelSize);
  if (!rivetRing?.value) return [size];
  const recess = engine?.recessDiameter?.value;
  // One of the very size of the recess does not go in.
  const ring = recess && sizeBeyond(rivetRing.value, recess.si * (1 - 1e-6), { metric: 0.001, inch: 1 / 16 });
  if (ring && ring.value.si < rivetRing.value.si)
    return [size, { fact: rivetRing, value: ring.value, as: amount(ring.quantity) }];
  return [size, size && !ring ? asked(rivetRing) : undefined];
}

/** Bored for the shaft end, and keyed as the shaft is; where nobody says how, the key is asked for. */
function forShaft({ bore, keyWidth }: Coupling, shaft: Shaft | undefined): (Swap | undefined)[] {
  const bored = like(bore, shaft?.couplingEnd ?? shaft?.diameter);
  const key = shaft?.couplingKeyWidth;
  return [bored, bored && keyWidth && !key ? asked(keyWidth) : like(keyWidth, key)];
}

function asked(fact: Fact<unknown>): Swap {
  return { fact, value: undefined, as: OPEN };
}

function like<T>(fact: Fact<T> | undefined, model: Fact<T> | undefined): Swap | undefined {
  const value = model?.value;
  if (!fact || value === undefined || fact.written === model!.written) return undefined;
  return { fact, value, as: asStated(model!) };
}

function flangeLike(flange: Flange | undefined, model: Flange | undefined): (Swap | undefined)[] {
  if (!flange || !model) return [];
  return [
    like(flange.outsideDiameter, model.outsideDiameter),
    like(flange.boltCircle, model.boltCircle),
    like(flange.bolts, model.bolts),
    pilotFor(flange.pilot, model.pilot),
  ];
}

/** A spigot for a recess, a recess for a spigot. */
function pilotFor(fact: Fact<Pilot> | undefined, model: Fact<Pilot> | undefined): Swap | undefined {
  const theirs = model?.value;
  if (!fact || !theirs?.kind) return undefined;
  const kind = theirs.kind === 'male' ? 'female' : 'male';
  const as: NewValue = { is: 'pilot', diameter: quantityOf(theirs.diameter), kind };
  return spell(as) === fact.written ? undefined : { fact, value: { ...theirs, kind }, as };
}

const OTHER_ROTATION: Readonly<Partial<Record<Rotation['word'], Rotation['word']>>> = {
  standard: 'opposite',
  opposite: 'standard',
  clockwise: 'counter-clockwise',
  'counter-clockwise': 'clockwise',
};

/** What a part of the same size is also made as. */
export function otherWords(part: Part): Swap[][] {
  const { passesThrust } = part as Coupling;
  if (part.role === 'coupling' && passesThrust?.value === 'no')
    return [[{ fact: passesThrust, value: 'yes', as: newWord('yes') }]];
  const { rotation } = part as Engine;
  const other = part.role === 'engine' && rotation?.value && OTHER_ROTATION[rotation.value.word];
  if (!rotation?.value || !other) return [];
  const value: Rotation = { ...rotation.value, word: other };
  return [[{ fact: rotation, value, as: { is: 'rotation', rotation: value } }]];
}
