import type { Source } from '../core/source.js';
import type { Value } from '../core/value.js';
import { compareValues, type InterfaceDifference } from '../geometry/interface-difference.js';
import { inch } from '../tables/printed-units.js';

/** Printed fit of a half-coupling: light press to slip. m. */
export const couplingBoreGuide = {
  least: inch(0.0005),
  most: inch(0.001),
  source: { title: "shaft vendor's page on half-couplings", confidence: 'published' },
} as const satisfies { least: number; most: number; source: Source };

/** Straight bore and keyway of a half-coupling, or the shaft end that goes into it. */
export interface KeyedBore {
  readonly diameter?: Value<'length'> | undefined;
  readonly keyWidth?: Value<'length'> | undefined;
}

/**
 * Compares nominal shaft and half-coupling. A tenth of a millimetre tells sizes apart; the fit itself is judged by the
 * clearance of measured sizes.
 */
export function compareBoreAndShaft(bore: KeyedBore, shaft: KeyedBore): InterfaceDifference[] {
  return [
    ...compareValues('coupling bore', bore.diameter, shaft.diameter, 0.1e-3),
    ...compareValues('key width', bore.keyWidth, shaft.keyWidth, 0.1e-3),
  ];
}
