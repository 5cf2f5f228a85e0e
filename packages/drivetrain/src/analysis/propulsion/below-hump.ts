import type { FullThrottle, Propulsion } from './propulsion.js';

/** What full throttle comes to of a vessel that never reaches its balance at rated speed. */
export interface BelowHump {
  readonly full: FullThrottle;
  /** Engine speed at full throttle over rated speed. */
  readonly speedShare: number;
  /** What that share would be at least if nothing stood between. */
  readonly wanted: number;
}

/** Where demand rises with no more than the square of engine speed, full throttle is at least this near to rated speed. */
const SLACK = 0.95;

/**
 * A hull may have two balances: one at rated speed, planing, and a slower one below its resistance hump, at which the engine
 * has nothing left to give. From rest only the slower one is reached. Undefined where full throttle is not known, or is where
 * the demand at rated speed leads one to expect it.
 */
export function belowHump({ full, motor, demand, ratedEngineSpeed }: Propulsion): BelowHump | undefined {
  if (!full.applies || motor) return undefined;
  const speedShare = full.engineSpeed.si / ratedEngineSpeed.si;
  const wanted = SLACK * Math.min(1, demand.si ** -0.5);
  return speedShare < wanted ? { full, speedShare, wanted } : undefined;
}
