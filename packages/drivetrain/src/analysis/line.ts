import type { ShaftLine, Vessel } from '../model/vessel.js';

/**
 * What follows from the declared facts of one shaft line, each part worked out when first asked for.
 * The getters delegate to one file per subject beside this one.
 */
export class LineAnalysis {
  constructor(
    readonly line: ShaftLine,
    readonly vessel: Vessel,
  ) {}
}
