import { fromSI, given, type Unit, type Value, writtenUnit } from '@tailshaft/mechanics';
import { inUnit, type NewQuantity, spellQuantity } from '@tailshaft/vocabulary';

/** Metric and inch steps that a length is made or set in, metres and inches. */
export interface Steps {
  readonly metric: number;
  readonly inch: number;
}

/** A size as it would be written: in the unit of the one before, in a step that it is made in. */
export interface Size {
  readonly value: Value;
  readonly quantity: NewQuantity;
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
  const quantity = unit ? inUnit(now.dimension, rounded, unit.symbol) : sameKind(rounded, now);
  const written = spellQuantity(quantity);
  const value = given(now.label, now.symbol, now.dimension, quantity.si, { written });
  return { value, quantity, written };
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

/** A ratio as it is now: to one, or plain. */
function sameKind(number: number, { dimension, figure }: Value): NewQuantity {
  const si = Number(number.toFixed(3));
  return figure?.to === 1 ? { dimension, si, to: 1 } : { dimension, si };
}
