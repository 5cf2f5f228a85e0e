import type { Hand } from '@tailshaft/mechanics';
import { Needs } from '../judge/needs.js';
import type { Fact } from '../model/fact.js';
import { home, nameOf } from '../model/part.js';
import type { Propeller } from '../model/shafting.js';
import type { ShaftLine } from '../model/vessel.js';
import { isPair } from './pair.js';
import type { RotationAnalysis } from './rotation.js';

/** How the propeller of a line goes with the way its shaft turns ahead. */
export interface HandCheck {
  readonly hand: Hand | undefined;
  readonly needed: Hand | undefined;
  /** Set where both propellers of a counter-rotating pair are of the hand that only the forward one may have. */
  readonly afterAlike?: true;
  /** `either` where a motor is run whichever way the hand wants. */
  readonly state: 'right' | 'wrong' | 'either' | 'cannot tell';
  readonly needs: Needs;
}

/** Whether the propeller drives ahead with the lever ahead; undefined where there is no propeller or nothing drives it. */
export function handCheck(line: ShaftLine, rotation: RotationAnalysis): HandCheck | undefined {
  const { propeller } = line;
  if (!propeller || !(line.engine || line.motor)) return undefined;
  const needs = new Needs();
  needs.take({ value: rotation.ahead, missing: rotation.missing });
  const hand = needs.fact(handFact(propeller), {
    what: `hand of ${nameOf(propeller)}`,
    host: home(propeller),
    property: 'hand',
  });
  const needed = rotation.neededHand;
  const state = needs.any ? 'cannot tell' : rotation.either ? 'either' : hand === needed ? 'right' : 'wrong';
  if (!isPair(propeller) || state === 'wrong') return { hand, needed, state, needs };
  const after = needs.fact(propeller.afterHand, {
    what: `hand of the after one of the pair of ${nameOf(propeller)}`,
    host: home(propeller),
    property: 'after hand',
  });
  if (after === undefined || state === 'cannot tell') return { hand, needed, state: 'cannot tell', needs };
  return after === hand
    ? { hand, needed, state: 'wrong', needs, afterAlike: true }
    : { hand, needed, state, needs };
}

/** The hand that the blades have as they stand: the setting of a propeller that can be assembled either way. */
export function handFact(propeller: Propeller): Fact<Hand> | undefined {
  return isConvertible(propeller) ? (propeller.handSetting ?? propeller.hand) : propeller.hand;
}

/** The hand as declared, proven or not. */
export function handOf(line: ShaftLine): Hand | undefined {
  const fact = line.propeller && handFact(line.propeller);
  return fact?.value;
}

/** Folding and feathering propellers are assembled for one hand or the other. */
export function isConvertible(propeller: Propeller): boolean {
  const kind = propeller.kind?.value;
  return kind === 'folding' || kind === 'feathering' || propeller.handSetting !== undefined;
}
