import type { Value } from '@tailshaft/mechanics';
import { percent } from '@tailshaft/mechanics';
import type { Propulsion } from '../../analysis/propulsion/propulsion.js';
import type { Criterion } from '../../judge/verdict.js';
import type { Vessel } from '../../model/vessel.js';

/** Share of the power that reaches a propeller that it is to ask at rated speed. */
export interface DemandBand {
  readonly least: number;
  readonly most: number;
  readonly criterion: Criterion;
}

const LEAST = 0.86;
const MOST = 1.06;

/** The band that the criteria choose, or the usual one. */
export function demandBand(vessel: Vessel): DemandBand {
  const { propellerDemandLeast, propellerDemandMost } = vessel.criteria ?? {};
  const words = (own: Value | undefined, usual: number) =>
    own ? (own.written ?? percent(own.si)) : percent(usual);
  const chosen = propellerDemandLeast?.value && propellerDemandMost?.value;
  return {
    least: propellerDemandLeast?.value?.si ?? LEAST,
    most: propellerDemandMost?.value?.si ?? MOST,
    criterion: {
      said: `power absorbed at rated speed between ${words(propellerDemandLeast?.value, LEAST)} and ${words(propellerDemandMost?.value, MOST)} of the power delivered to the propeller`,
      // A band of which one end is the usual one is not the author's.
      chosenBy: chosen ? 'author' : 'default',
    },
  };
}

/** Whether a propeller takes what the band allows. A motor by itself may use its power anywhere up to its top speed. */
export function isInBand({ demand, motor }: Propulsion, { least, most }: Pick<DemandBand, 'least' | 'most'>) {
  return demand.si <= most && Math.max(demand.si, motor?.powerShare?.si ?? 0) >= least;
}
