import type { Dimension } from '../core/dimension.js';
import { citeSource, type Source } from '../core/source.js';
import { typographic } from './typographic.js';

/** Which tradition a unit belongs to; `any` is at home everywhere (rpm, kn, deg). */
export type UnitSystem = 'metric' | 'US' | 'imperial' | 'any';

/**
 * One unit of measure. SI value = (number + offset) × factor; offset is zero except for °C and °F.
 * A unit with several dimensions has the same factor in each: `N.m` is a torque and a power per speed.
 */
export interface Unit {
  /** ASCII spelling, as typed in a spec: `kg.m2`. Unique. */
  readonly symbol: string;
  /** Typographic spelling, as printed: `kg·m²`. */
  readonly display: string;
  /** Other spellings that are read as this unit. */
  readonly aliases: readonly string[];
  readonly name: string;
  /** What it measures, its usual meaning first. */
  readonly dimensions: readonly Dimension[];
  /** Coherent SI units of its dimension in one of it. */
  readonly factor: number;
  /** Added to the number before the factor: only for temperatures counted from another zero. */
  readonly offset: number;
  readonly system: UnitSystem;
  /** Where the trade uses it. */
  readonly use: string;
  readonly source: Source;
}

type Row = readonly [
  symbol: string,
  name: string,
  factor: number,
  system: UnitSystem,
  use: string,
  more?: {
    readonly aliases?: readonly string[];
    readonly display?: string;
    readonly also?: readonly Dimension[];
    readonly offset?: number;
    readonly source?: Source;
  },
];

/** Turns table rows of one dimension into units; rows stand in the order in which people know them. */
export function unitRows(dimension: Dimension, source: Source, rows: readonly Row[]): Unit[] {
  return rows.map(([symbol, name, factor, system, use, more = {}]) => ({
    symbol,
    display: more.display ?? typographic(symbol),
    aliases: more.aliases ?? [],
    name,
    dimensions: [dimension, ...(more.also ?? [])],
    factor,
    offset: more.offset ?? 0,
    system,
    use,
    source: more.source ?? source,
  }));
}

/** Whether a unit can stand for a quantity of this kind. */
export function measures(unit: Unit, dimension: Dimension): boolean {
  return unit.dimensions.includes(dimension);
}

/** What the unit is, for a person: `hp — horsepower, 745.7 W; engine power, US; source`. */
export function describeUnit(unit: Unit): string {
  return `${unit.display} — ${unit.name}; ${unit.use}. ${citeSource(unit.source)}`;
}
