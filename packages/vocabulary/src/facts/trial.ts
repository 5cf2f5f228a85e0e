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
  /** What the engine display says of its load. */
  readonly load?: Quantity<'ratio'>;
  readonly fuelRate?: Quantity<'volume flow'>;
  readonly boost?: Quantity<'pressure'>;
  readonly gearOilPressure?: Quantity<'pressure'>;
  readonly fuelPressure?: Quantity<'pressure'>;
  readonly intakeDepression?: Quantity<'pressure'>;
  readonly smoke?: Fact<'none' | 'light' | 'black' | 'white' | 'blue'>;
  /** Share of its travel that the lever stood at. */
  readonly lever?: Quantity<'ratio'>;
  /** Whether the lever of the pump or governor itself reached its stop. */
  readonly throttle?: Fact<'at its stop' | 'short of its stop'>;
}

/** One station of one line, tried at the dock at low power. */
export interface DockStep {
  readonly origin: Origin;
  /** Name of the shaft line. */
  readonly line: string;
  readonly station?: Fact<string>;
  readonly ahead?: Fact<Pull>;
  readonly astern?: Fact<Pull>;
  readonly neutral?: Fact<'no drive' | 'drives'>;
  /** Shaft with the lever ahead, seen from aft. */
  readonly shaftTurns?: Fact<'clockwise' | 'counter-clockwise'>;
}

export type Pull = 'pulls ahead' | 'pulls astern' | 'no pull';

export const DRILLS = ['loss of control', 'full astern', 'stop', 'one engine'] as const;

/** Something that is run on purpose, so that nobody sees it first in need. */
export interface Drill {
  readonly origin: Origin;
  readonly what: (typeof DRILLS)[number];
  readonly result?: Fact<'as required' | 'not as required'>;
  readonly station?: Fact<string>;
  readonly time?: Quantity<'time'>;
  readonly distance?: Quantity<'length'>;
  readonly engineSpeed?: Quantity<'rotational speed'>;
  readonly remark?: Fact<string>;
}

export type TrialPoint = 'no load' | 'idle ahead' | 'part throttle' | 'rated speed' | 'full throttle';

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
  readonly ballast?: Quantity<'mass'>;
  readonly fuelAboard?: Quantity<'ratio'>;
  readonly people?: Quantity<'number'>;
  /** Filters, valves and intake of fuel and air. */
  readonly fuelAndAir?: Fact<'checked' | 'not checked'>;
  /** Lever ahead pulls ahead: each side alone, from every station, at the dock. */
  readonly dockDirection?: Fact<'proven' | 'not proven'>;
  readonly sternAndStop?: Fact<'recorded' | 'not recorded'>;
  readonly runs: readonly TrialRun[];
  readonly docks?: readonly DockStep[];
  readonly drills?: readonly Drill[];
}
