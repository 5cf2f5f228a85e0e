import type { Dimension } from '../core/dimension.js';
import { UNITS } from './table/index.js';
import { asciiSpelling } from './typographic.js';
import { measures, type Unit } from './unit.js';

/**
 * The unit with this symbol, alias or typographic spelling; case matters (kn is a knot, kN a kilonewton).
 * Undefined when there is none: ask `ambiguousUnit` and `suggestUnit` why.
 */
export function findUnit(symbol: string): Unit | undefined {
  return BY_SPELLING.get(symbol) ?? BY_SPELLING.get(asciiSpelling(symbol));
}

/** Units that measure this kind of quantity, best known first. */
export function unitsOf(dimension: Dimension): Unit[] {
  const own = UNITS.filter(unit => unit.dimensions[0] === dimension);
  const shared = UNITS.filter(unit => unit.dimensions[0] !== dimension && measures(unit, dimension));
  return [...own, ...shared];
}

/** Every unit. */
export function allUnits(): readonly Unit[] {
  return UNITS;
}

const BY_SPELLING = new Map<string, Unit>();
for (const unit of UNITS) {
  const spellings = new Set([unit.symbol, ...unit.aliases, ...(unit.display ? [unit.display] : [])]);
  for (const spelling of spellings) {
    const other = BY_SPELLING.get(spelling);
    if (other) throw new Error(`${spelling} spells both ${other.symbol} and ${unit.symbol}`);
    BY_SPELLING.set(spelling, unit);
  }
}
