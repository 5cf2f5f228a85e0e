import { given, renamed, type Value } from '../../core/value.js';
import { overhungDunkerley } from './overhung-dunkerley.js';
import type { ForwardEnd } from './overhung-influence.js';
import { overhungFrequency, whirlInertia } from './overhung-propeller.js';

export interface OverhungInputs {
  readonly span: Value<'length'>;
  readonly overhang: Value<'length'>;
  readonly modulus: Value<'pressure'>;
  readonly section: Value<'second moment of area'>;
  readonly massPerLength: Value<'mass per length'>;
  /** Propeller mass and diametral inertia with entrained water. */
  readonly mass: Value<'mass'>;
  readonly diametralInertia: Value<'moment of inertia'>;
  /** Given together they put the gyroscopic moment in: dry polar inertia, and order of the whirl (see `whirlInertia`). */
  readonly gyroscopic?: {
    readonly polarInertia: Value<'moment of inertia'>;
    readonly order: Value<'number'>;
  };
}

export interface OverhungFrequencies {
  /** Massless shaft, lower and upper root. The upper is NaN when the gyroscopic moment leaves none. */
  readonly lower: Value<'frequency'>;
  readonly upper: Value<'frequency'>;
  /** With the shaft's own mass: a lower bound, gyroscopics left out. */
  readonly withShaftMass: Value<'frequency'>;
}

/** Lateral frequencies with the forward end pinned and fixed: the true frequency of the built shaft lies between. */
export function overhungBracket(inputs: OverhungInputs): Record<ForwardEnd, OverhungFrequencies> {
  return { pinned: frequencies(inputs, 'pinned'), fixed: frequencies(inputs, 'fixed') };
}

/** The order of a whirl driven by the blades: Z with the shaft, −Z against it. */
export function bladeRateOrder(
  blades: Value<'number'>,
  turning: 'with shaft' | 'against shaft',
): Value<'number'> {
  const order = turning === 'with shaft' ? blades.si : -blades.si;
  return given(`order of the whirl at blade rate, ${turning}`, 'q', 'number', order, {
    written: `${blades.written ?? blades.si} blades`,
  });
}

function frequencies(inputs: OverhungInputs, forward: ForwardEnd): OverhungFrequencies {
  const { span: L, overhang: b, modulus: E, section: I, mass: m, diametralInertia: Id, gyroscopic } = inputs;
  const mu = renamed(inputs.massPerLength, inputs.massPerLength.label, 'μ');
  const Ie = gyroscopic ? whirlInertia({ Id, Ip: gyroscopic.polarInertia, q: gyroscopic.order }) : Id;
  return {
    lower: overhungFrequency[forward].lower({ L, b, E, I, m, Ie }),
    upper: overhungFrequency[forward].upper({ L, b, E, I, m, Ie }),
    withShaftMass: overhungDunkerley[forward]({ L, b, E, I, m, Id, mu }),
  };
}
