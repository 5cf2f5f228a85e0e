import type { Origin } from '@tailshaft/mechanics';
import type { FactsOf } from '../kinds.js';
import type { BOLTED_FLANGE, SHAFT_KEY, SHAFT_SECTION } from '../strength.js';

/** A length of a shaft that has another diameter or bore than the rest of it. */
export interface ShaftSection extends FactsOf<typeof SHAFT_SECTION> {
  readonly name: string;
  readonly origin: Origin;
}

/** The key of a shaft in its propeller or in its half-coupling. */
export interface ShaftKey extends FactsOf<typeof SHAFT_KEY> {
  readonly name: 'propeller' | 'coupling';
  readonly origin: Origin;
}

/** The flange of a coupling, with what its bolts are made of and how they carry the torque. */
export interface BoltedFlange extends FactsOf<typeof BOLTED_FLANGE> {
  readonly origin: Origin;
}
