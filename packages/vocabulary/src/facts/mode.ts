import type { Origin } from '@tailshaft/mechanics';
import type { Fact, Quantity } from './fact.js';

export const DRIVEN_BY = [
  'engine',
  'motor',
  'engine and motor',
  'first engine',
  'second engine',
  'both engines',
] as const;
export type DrivenBy = (typeof DRIVEN_BY)[number];

/** What a way of running says of its movers. */
export interface ModeFacts {
  /** Which movers turn the line. */
  readonly drivenBy?: Fact<DrivenBy>;
  /** The most that the motor gives in this way of running. */
  readonly motorPower?: Quantity<'power'>;
  /** What the motor takes out of the line while it charges. */
  readonly generatorLoad?: Quantity<'power'>;
}

/** One way of running a line that has several movers. */
export interface Mode extends ModeFacts {
  readonly name: string;
  readonly origin: Origin;
  readonly nameOrigin: Origin;
}
