import type { Origin } from '@tailshaft/mechanics';
import type { Fact } from './fact.js';

export const DAMAGES = ['broken', 'cracked', 'bent', 'worn', 'corroded', 'overheated', 'struck'] as const;
export type DamageKind = (typeof DAMAGES)[number];

export const DAMAGE_PLACES = [
  'keyway',
  'taper',
  'thread',
  'coupling end',
  'section change',
  'bearing',
  'seal',
  'between bearings',
  'flange',
  'bolts',
  'blade',
  'hub',
  'teeth',
  'clutch',
  'housing',
  'elsewhere',
] as const;
export type DamagePlace = (typeof DAMAGE_PLACES)[number];

/** What happened to a part: what was found, where on it, when and by whom, and what was done about it. */
export interface Damage {
  readonly origin: Origin;
  readonly what: DamageKind;
  readonly at?: Fact<DamagePlace>;
  /** ISO date of the finding. */
  readonly dated?: Fact<string>;
  readonly seenBy?: Fact<string>;
  readonly cause?: Fact<string>;
  /** What was done so that the part may stay. */
  readonly madeGood?: Fact<string>;
  /** ISO date. */
  readonly madeGoodOn?: Fact<string>;
}

/** What may have happened to a part at its place. */
export interface Damageable {
  readonly damages?: readonly Damage[];
}
