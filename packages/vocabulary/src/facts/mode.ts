import type { Origin } from '@tailshaft/mechanics';
import type { FactsOf } from '../kinds.js';
import type { MODE } from '../mode.js';
import type { DRIVEN_BY } from '../words.js';

export type DrivenBy = (typeof DRIVEN_BY)[number];

/** One way of running a line that has several movers. */
export interface Mode extends FactsOf<typeof MODE> {
  readonly name: string;
  readonly origin: Origin;
  readonly nameOrigin: Origin;
}
