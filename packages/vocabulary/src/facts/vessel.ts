import type { Origin } from '@tailshaft/mechanics';
import type { FactsOf } from '../kinds.js';
import type { CERTIFICATE, CRITERIA, DUTY, HULL } from '../vessel.js';
import type { WEIGHT } from '../weight.js';
import type { Fact } from './fact.js';

export interface Duty extends FactsOf<typeof DUTY> {
  readonly origin: Origin;
  readonly class?: Fact<string>;
}

/** A mass beside the machinery, with the arrangement that it comes or goes with. */
export interface Weight extends FactsOf<typeof WEIGHT> {
  readonly name: string;
  readonly origin: Origin;
}

export interface Hull extends FactsOf<typeof HULL> {
  readonly origin: Origin;
  readonly form?: Fact<string>;
  readonly weights?: readonly Weight[];
}

/** A named published criterion or limit that the author chose; absent ones have defaults. */
export interface Criteria extends FactsOf<typeof CRITERIA> {
  readonly origin: Origin;
}

export interface Certificate extends FactsOf<typeof CERTIFICATE> {
  readonly origin: Origin;
}
