import {
  dividedShaft,
  halfInertia,
  lumpedInertia,
  propellerInertiaInWater,
  renamed,
  SHAFT_PIECES,
  TORSIONAL_ENTRAINED_WATER,
  type TorsionalGear,
  type TorsionalModel,
  type TorsionalShaft,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Quantity } from '../model/fact.js';
import { home, nameOf, type Part } from '../model/part.js';
import type { Coupling, Shaft } from '../model/shafting.js';
import type { ShaftLine } from '../model/vessel.js';
import { inputCouplings } from './couplings.js';
import { missPair } from './pair.js';
import { type ShaftTwist, shaftTwist } from './shaft-twist.js';
import { gearRatio } from './speeds.js';

/** Names of the inertias at whose speeds orders are counted. */
export const ENGINE = 'engine';
export const PROPELLER = 'propeller';

/** The parts of a line as a torsional system, and the names under which each spring of it stands there. */
export interface TorsionalTrain {
  readonly model: TorsionalModel;
  /** A shaft has several, one behind the other: it turns along its length. */
  readonly springs: ReadonlyMap<Coupling | Shaft, readonly string[]>;
  /** Inertias along a shaft, which are no part of their own. */
  readonly along: ReadonlySet<string>;
  /** Natural frequencies of the parts against each other; those of a shaft within itself lie above them. */
  readonly frequencies: number;
}

interface Place {
  readonly name: string;
  readonly inertias: Value<'moment of inertia'>[];
}

/**
 * Engine or motor to propeller, in the order that power passes: every coupling that gives is a spring wherever it
 * stands, every shaft is one, a rigid coupling only adds its inertia. Each part counts at its own speed.
 */
export function torsionalTrain(line: ShaftLine, needs: Needs): TorsionalTrain | undefined {
  const prime = line.engine ?? line.motor;
  const { gear, propeller } = line;
  if (!prime || !propeller || line.shafts.length === 0 || line.transfers.length > 0) return undefined;
  if (gear && inputCouplings(line).length === 0) {
    needs.miss({
      what: `torsional stiffness of the damper before ${nameOf(gear)}`,
      host: line.origin,
      property: 'coupling',
    });
  }
  const springs = new Map<Coupling | Shaft, readonly string[]>();
  const along = new Set<string>();
  const shafts: TorsionalShaft[] = [];
  const gears: TorsionalGear[] = [];
  let here: Place = { name: ENGINE, inertias: [] };
  const places = [here];
  let ratio: Value<'ratio'> | undefined;
  /** Places that a part stands at, gears as one. */
  const parts = new Set<Place>();
  const carry = (inertia: Value<'moment of inertia'> | undefined) => {
    if (!inertia) return;
    here.inertias.push(inertia);
    if (inertia.si > 0) parts.add(here);
  };
  const goOn = (name: string) => {
    here = { name, inertias: [] };
    places.push(here);
  };
  const spring = (part: Coupling | Shaft, stiffness: Value<'torsional stiffness'> | undefined) => {
    const name = springName(part, line);
    const from = here.name;
    goOn(`behind ${name}`);
    springs.set(part, [name]);
    shafts.push({ name, from, to: here.name, ...(stiffness ? { stiffness } : {}) });
  };
  const cut = (shaft: Shaft, twist: ShaftTwist) => {
    const { stiffness, between, atEnd } = dividedShaft(twist.stiffness, twist.inertia);
    const whole = springName(shaft, line);
    const names = Array.from({ length: SHAFT_PIECES }, (_, at) => `${whole}, part ${at + 1}`);
    springs.set(shaft, names);
    here.inertias.push(atEnd);
    for (const name of names) {
      const from = here.name;
      const last = name === names.at(-1);
      goOn(last ? `behind ${whole}` : `behind ${name}`);
      if (!last) along.add(here.name);
      shafts.push({ name, from, to: here.name, stiffness });
      here.inertias.push(last ? atEnd : between);
    }
  };

  for (const part of line.chain) {
    if (part === prime) carry(inertiaOf(prime, prime.inertia, 'inertia', needs));
    else if (gear && part === gear) {
      carry(inertiaOf(gear, gear.inputInertia, 'input inertia', needs));
      const driver = here;
      goOn('gear output');
      carry(inertiaOf(gear, gear.outputInertia, 'output inertia', needs));
      if (parts.has(here)) parts.delete(driver);
      ratio = needs.take(gearRatio(gear, 'ahead'))?.value;
      gears.push({
        name: nameOf(gear),
        driver: driver.name,
        driven: here.name,
        ...(ratio ? { ratio } : {}),
        sense: 'same',
      });
    } else if (part === propeller) {
      missPair(propeller, 'inertia', needs);
      const dry = inertiaOf(propeller, propeller.inertia, 'inertia', needs);
      carry(
        dry &&
          propellerInertiaInWater({
            I: renamed(dry, 'propeller inertia', 'I'),
            w: TORSIONAL_ENTRAINED_WATER,
          }),
      );
    }
    const coupling = line.couplings.find(one => one === part);
    if (coupling) {
      const whole = coupling.inertia?.value;
      if (coupling.kind?.value === 'rigid') carry(whole);
      else {
        const half = whole && halfInertia({ J: whole });
        carry(half);
        spring(coupling, couplingStiffness(coupling, needs));
        carry(half);
      }
    }
    const shaft = line.shafts.find(one => one === part);
    const twist = shaft && shaftTwist(shaft, needs);
    if (shaft && twist) cut(shaft, twist);
  }
  if (needs.any || (gear && !ratio)) return undefined;
  // The last place is the propeller's, whatever leads to it.
  const last = here.name;
  const named = (name: string) => (name === last ? PROPELLER : name);
  return {
    model: {
      inertias: places.map(({ name, inertias }) => ({
        name: named(name),
        inertia: lumpedInertia(inertias),
      })),
      shafts: shafts.map(one => ({ ...one, from: named(one.from), to: named(one.to) })),
      gears: gears.map(one => ({ ...one, driven: named(one.driven) })),
      reference: ENGINE,
    },
    springs,
    along,
    frequencies: Math.max(1, parts.size - 1),
  };
}

/** A coupling that is not said to be rigid gives; how much is its sheet's to say. */
function couplingStiffness(coupling: Coupling, needs: Needs): Value<'torsional stiffness'> | undefined {
  return needs.fact(coupling.stiffness, {
    what: `torsional stiffness of ${nameOf(coupling)}`,
    host: home(coupling),
    property: 'torsional stiffness',
  });
}

function inertiaOf(
  part: Part,
  fact: Quantity<'moment of inertia'> | undefined,
  property: string,
  needs: Needs,
) {
  return needs.fact(fact, { what: `${property} of ${nameOf(part)}`, host: home(part), property });
}

/** A name that no other spring of the line has. */
function springName(part: Coupling | Shaft, line: ShaftLine): string {
  if (part.role === 'shaft') {
    return line.shafts.length === 1 ? 'shaft' : `shaft ${line.shafts.indexOf(part as Shaft) + 1}`;
  }
  const name = nameOf(part);
  const twins = line.couplings.filter(one => nameOf(one) === name);
  return twins.length === 1 ? name : `${name}, ${twins.indexOf(part as Coupling) + 1}`;
}
