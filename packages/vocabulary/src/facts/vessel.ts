import type { Origin } from '@tailshaft/mechanics';
import type { FactsOf } from '../kinds.js';
import type { CERTIFICATE, CRITERIA, DUTY, HULL } from '../vessel.js';
import type { Fact } from './fact.js';

export interface Duty extends FactsOf<typeof DUTY> {
  readonly origin: Origin;
  readonly class?: Fact<string>;
}

export interface Hull extends FactsOf<typeof HULL> {
  readonly origin: Origin;
  readonly form?: Fact<string>;
}

/** A named published criterion or limit that the author chose; absent ones have defaults. */
export interface Criteria extends FactsOf<typeof CRITERIA> {
  readonly origin: Origin;
}

export interface Certificate extends FactsOf<typeof CERTIFICATE> {
  readonly origin: Origin;
}
