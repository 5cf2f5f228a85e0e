import type { Origin } from '@tailshaft/mechanics';
import type { Fact, Quantity } from './fact.js';

/** What was read on one shaft line at one point of a trial. */
export interface TrialRun {
  readonly origin: Origin;
  /** Name of the shaft line. */
  readonly line: string;
  readonly at?: Fact<TrialPoint>;
  readonly engineSpeed?: Quantity<'rotational speed'>;
  readonly shaftSpeed?: Quantity<'rotational speed'>;
  /** Through the water, both ways taken together. */
  readonly speed?: Quantity<'speed'>;
  /** At the propeller shaft. */
  readonly shaftPower?: Quantity<'power'>;
  readonly coolantTemperature?: Quantity<'temperature'>;
  readonly gearOilTemperature?: Quantity<'temperature'>;
  readonly exhaustTemperature?: Quantity<'temperature'>;
}

export type TrialPoint = 'idle ahead' | 'part throttle' | 'rated speed' | 'full throttle';

/** One trial sheet: the state it was run in, and its readings. */
export interface Trial {
  readonly origin: Origin;
  readonly name: string;
  /** Name of the arrangement that was tried. */
  readonly of?: string;
  /** ISO date. */
  readonly dated?: string;
  readonly displacement?: Quantity<'mass'>;
  readonly bottom?: Fact<'clean' | 'foul'>;
  readonly tachometers?: Fact<'checked' | 'not checked'>;
  readonly waterDepth?: Quantity<'length'>;
  readonly weather?: Fact<string>;
  /** Lever ahead pulls ahead: each side alone, from every station, at the dock. */
  readonly dockDirection?: Fact<'proven' | 'not proven'>;
  readonly sternAndStop?: Fact<'recorded' | 'not recorded'>;
  readonly runs: readonly TrialRun[];
}
