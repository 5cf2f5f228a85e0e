import type { Origin } from '@tailshaft/mechanics';
import type { Fact } from './fact.js';

/** What one helm shows and lets do. */
export interface HelmStation {
  readonly name: string;
  readonly origin: Origin;
  readonly thrustDirection?: Fact<'shown' | 'not shown'>;
  readonly gearOilPressure?: Fact<'shown' | 'not shown'>;
  readonly gearOilTemperature?: Fact<'shown' | 'not shown'>;
  readonly engineStop?: Fact<'apart from the speed lever' | 'by the speed lever alone' | 'none'>;
}

/** The helms of a vessel, with the text that asks for their fittings. */
export interface Helm {
  readonly origin: Origin;
  /** Text of the flag or class, as the author names it. */
  readonly requiredBy?: Fact<string>;
  readonly stations?: readonly HelmStation[];
}
