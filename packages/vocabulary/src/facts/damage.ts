import type { Origin } from '@tailshaft/mechanics';
import type { DAMAGE_RECORD } from '../damage.js';
import type { FactsOf } from '../kinds.js';
import type { DAMAGE_PLACES, DAMAGES } from '../words.js';

export type DamageKind = (typeof DAMAGES)[number];
export type DamagePlace = (typeof DAMAGE_PLACES)[number];

/** What happened to a part: what was found, where on it, when and by whom, and what was done about it. */
export interface Damage extends FactsOf<typeof DAMAGE_RECORD> {
  readonly origin: Origin;
  readonly what: DamageKind;
}

/** What may have happened to a part at its place. */
export interface Damageable {
  readonly damages?: readonly Damage[];
}
