import {
  formatQuantity,
  fromSI,
  given,
  toSI,
  type Unit,
  type Value,
  writtenUnit,
} from '@tailshaft/mechanics';

/** Metric and inch steps that a length is made or set in, metres and inches. */
export interface Steps {
  readonly metric: number;
  readonly inch: number;
}

/** A size as it would be written: in the unit of the one before, in a step that it is made in. */
export interface Size {
  readonly value: Value;
  readonly written: string;
}

/** The nearest size in steps that is not short of `si`, seen from the size now; undefined where its unit is not known. */
export function sizeBeyond(now: Value, si: number, knob: Steps): Size | undefined {
  const unit = writtenUnit(now);
  if (!unit && now.dimension !== 'ratio') return undefined;
  const step = stepIn(now, unit, knob, si);
  const number = unit ? fromSI(si, unit) : si;
  const away = si > now.si ? Math.ceil(number / step - 1e-9) : Math.floor(number / step + 1e-9);
  const rounded = Number((away * step).toPrecision(10));
  if (!(rounded > 0)) return undefined;
  const written = unit ? wordsFor(rounded, unit) : asRatio(rounded, now);
  const value = given(now.label, now.symbol, now.dimension, unit ? toSI(rounded, unit) : rounded, {
    written,
  });
  return { value, written };
}

function stepIn(now: Value, unit: Unit | undefined, knob: Steps, si: number): number {
  if (unit?.symbol === 'in') return knob.inch;
  if (now.dimension === 'length' && unit) return fromSI(knob.metric, unit);
  if (now.dimension === 'angle') return 0.5;
  if (now.dimension === 'ratio') return unit ? 1 : 0.01;
  // Two figures are what a rating is ordered by.
  const size = Math.abs(unit ? fromSI(si, unit) : si);
  return 10 ** (Math.floor(Math.log10(size || 1)) - 1);
}

function wordsFor(number: number, unit: Unit): string {
  if (unit.symbol !== 'in') return formatQuantity(toSI(number, unit), unit, 6);
  const whole = Math.floor(number + 1e-9);
  const sixteenths = Math.round((number - whole) * 16);
  if (sixteenths === 0) return `${whole} in`;
  const divisor = [8, 4, 2, 1].find(one => sixteenths % one === 0)!;
  const fraction = `${sixteenths / divisor}/${16 / divisor}`;
  return whole > 0 ? `${whole} ${fraction} in` : `${fraction} in`;
}

function asRatio(number: number, now: Value): string {
  return now.unit === '%' ? `${Number((number * 100).toFixed(1))} %` : String(Number(number.toFixed(3)));
}
