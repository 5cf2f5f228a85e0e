import {
  boltStrengthOf,
  boltTorqueByFriction,
  boltTorqueInShear,
  DRY_FLANGE_FRICTION,
  given,
  renamed,
  torsionalYieldDistortionEnergy,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Quantity } from '../model/fact.js';
import { nameOf } from '../model/part.js';
import type { Coupling } from '../model/shafting.js';
import type { BoltedFlange } from '../model/strength.js';
import type { Vessel } from '../model/vessel.js';
import { assumedOf } from './efficiencies.js';

/** The bolts of a coupling as they carry the torque. */
export interface BoltStrength {
  readonly by: 'shear' | 'friction';
  /** What they take until they yield in shear, or until the faces slip. */
  readonly torque: Value<'torque'>;
}

/** Whether the spec says anything of how the bolts of a coupling carry. */
export function saysHowBoltsCarry({ flange }: Coupling): boolean {
  return Boolean(flange?.boltClass || flange?.boltYield || flange?.boltFit || flange?.boltPreload);
}

/** Torque that the bolts of a coupling take, at yield or at slip. */
export function boltStrength(coupling: Coupling, vessel: Vessel, needs: Needs): BoltStrength | undefined {
  const flange = coupling.flange!;
  const circle = needs.fact(flange.boltCircle, wantedOfFlange(coupling, flange, 'bolt circle'));
  const bolts = needs.fact(flange.bolts, wantedOfFlange(coupling, flange, 'bolts'));
  const fit = needs.fact(flange.boltFit, {
    ...wantedOfFlange(coupling, flange, 'bolt fit'),
    what: `fit of the bolts of ${nameOf(coupling)}: fitted ones carry in shear, others by friction`,
  });
  const strength =
    fit === 'clearance'
      ? needs.fact(flange.boltPreload, wantedOfFlange(coupling, flange, 'bolt preload'))
      : fit === 'fitted'
        ? boltYieldOf(coupling, flange, needs)
        : undefined;
  if (!circle || !bolts || !strength) return undefined;
  const boltCircle = renamed(circle, 'bolt circle', 'D');
  const count = given('number of bolts', 'n', 'number', bolts.count, {
    ...(flange.bolts ? { origin: flange.bolts.origin, written: `${bolts.count}` } : {}),
  });
  if (fit === 'clearance') {
    const friction = assumedOf(vessel, 'flange friction', 'number') ?? FRICTION;
    const preload = renamed(strength as Value<'force'>, 'preload of a bolt', 'F');
    return { by: 'friction', torque: boltTorqueByFriction({ friction, bolts: count, preload, boltCircle }) };
  }
  const shearYield = torsionalYieldDistortionEnergy({ tensileYield: strength as Value<'pressure'> });
  return {
    by: 'shear',
    torque: boltTorqueInShear({
      boltDiameter: renamed(bolts.size, 'bolt diameter', 'd_b'),
      boltCircle,
      bolts: count,
      allowedShear: renamed(shearYield, 'shear yield of the bolts', 'τ'),
    }),
  };
}

/** Tensile strength of the bolts as declared, or by their class. */
export function boltTensileOf(
  coupling: Coupling,
  flange: BoltedFlange,
  needs: Needs,
): Value<'pressure'> | undefined {
  return ofClass(coupling, flange, flange.boltStrength, 'tensileStrength', needs);
}

function boltYieldOf(coupling: Coupling, flange: BoltedFlange, needs: Needs): Value<'pressure'> | undefined {
  return ofClass(coupling, flange, flange.boltYield, 'tensileYield', needs);
}

const CLASS_WORDS = {
  tensileStrength: {
    label: 'tensile strength of the bolts',
    symbol: 'R_m',
    property: 'bolt tensile strength',
  },
  tensileYield: { label: 'tensile yield of the bolts', symbol: 'S_y', property: 'bolt yield' },
} as const;

function ofClass(
  coupling: Coupling,
  flange: BoltedFlange,
  own: Quantity<'pressure'> | undefined,
  which: keyof typeof CLASS_WORDS,
  needs: Needs,
): Value<'pressure'> | undefined {
  const { label, symbol, property } = CLASS_WORDS[which];
  const name = flange.boltClass?.value;
  const known = name === undefined ? undefined : boltStrengthOf(name);
  if (!own && known) {
    return given(label, symbol, 'pressure', known[which], {
      assumed: `class ${name} by ${known.source.title}${known.source.confidence === 'from memory' ? ' (from memory)' : ''}`,
    });
  }
  const what =
    name !== undefined && !known
      ? `${property} of ${nameOf(coupling)}: "${name}" is no class of ISO 898-1 or ISO 3506-1`
      : `${property} of ${nameOf(coupling)}, or its bolt class`;
  const value = needs.fact(own, { ...wantedOfFlange(coupling, flange, property), what });
  return value && renamed(value, label, symbol);
}

function wantedOfFlange(coupling: Coupling, flange: BoltedFlange, property: string) {
  return { what: `${property} of ${nameOf(coupling)}`, host: flange.origin, property };
}

const FRICTION = given('friction of the flange faces', 'μ', 'number', DRY_FLANGE_FRICTION.value, {
  assumed: `${DRY_FLANGE_FRICTION.value}: ${DRY_FLANGE_FRICTION.source.title} (common practice, no source)`,
  replaceWith: 'assume flange friction',
});
