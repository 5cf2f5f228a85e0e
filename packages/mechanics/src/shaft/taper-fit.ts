import type { Value } from '../core/value.js';
import { compareValues, type InterfaceDifference } from '../geometry/interface-difference.js';

/** Tapered seat of a shaft or of a propeller hub. Whatever is not known stays absent. */
export interface TaperedSeat {
  /** Change of diameter per length. */
  readonly taper?: Value<'ratio'> | undefined;
  readonly largeEnd?: Value<'length'> | undefined;
  readonly length?: Value<'length'> | undefined;
  readonly keywayWidth?: Value<'length'> | undefined;
}

/**
 * Tolerances of this screening, common practice, no source. Half a millimetre of large end is 8 mm of seat at 1:16.
 * Contact is proved by blueing the hub to the shaft, never by numbers.
 */
export const taperFitTolerances = {
  taper: 0.0005,
  largeEnd: 0.5e-3,
  length: 3e-3,
  keywayWidth: 0.1e-3,
} as const;

/** Compares a shaft's taper with the bore of the propeller that is to go on it; an empty list means all agree. */
export function compareTapers(shaft: TaperedSeat, hub: TaperedSeat): InterfaceDifference[] {
  const allow = taperFitTolerances;
  return [
    ...compareValues('taper', shaft.taper, hub.taper, allow.taper),
    ...compareValues('large end of the taper', shaft.largeEnd, hub.largeEnd, allow.largeEnd),
    ...compareValues('length of the taper', shaft.length, hub.length, allow.length, false),
    ...compareValues('keyway width', shaft.keywayWidth, hub.keywayWidth, allow.keywayWidth),
  ];
}
