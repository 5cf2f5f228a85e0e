import type { Origin } from '@tailshaft/mechanics';

/** Why the ways of running of a line cannot be told apart, and where that would be written. */
export interface Unclear {
  readonly what: string;
  readonly host: Origin;
  readonly property: string;
  readonly at?: Origin;
}
