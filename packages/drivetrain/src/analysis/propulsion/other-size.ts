import {
  diameterThatAbsorbs,
  findUnit,
  given,
  pitchThatAbsorbs,
  type SizingCase,
  toSI,
  type Value,
  writtenUnit,
} from '@tailshaft/mechanics';
import { inUnit, spellQuantity } from '@tailshaft/vocabulary';
import type { ShaftLine, Vessel } from '../../model/vessel.js';
import { LineAnalysis } from '../line.js';
import { absorbingSize } from './absorbing-size.js';
import type { Propulsion } from './propulsion.js';
import { withSize } from './with-size.js';

/** A size that a propeller could have instead, in words as the spec writes sizes, and what follows from it. */
export interface OtherSize {
  readonly written: string;
  readonly value: Value<'length'>;
  readonly analysis: LineAnalysis;
  readonly propulsion: Propulsion;
}

/** The pitch with which this propeller takes the power that reaches it at rated speed, in whole steps of its unit. */
export function pitchForRated(line: ShaftLine, vessel: Vessel, now: Propulsion): OtherSize | undefined {
  return sizeFor(line, vessel, now, 'pitch');
}

/** The diameter, with the pitch kept, for the same. */
export function diameterForRated(line: ShaftLine, vessel: Vessel, now: Propulsion): OtherSize | undefined {
  return sizeFor(line, vessel, now, 'diameter');
}

/** The greatest pitch below the present one with which a run is as it should be, in whole steps of its unit. */
export function pitchOver(
  line: ShaftLine,
  vessel: Vessel,
  fits: (run: Propulsion) => boolean,
): OtherSize | undefined {
  const model = line.propeller!.pitch?.value;
  if (!model || line.propeller!.effectivePitch) return undefined;
  for (const share of SHARES) {
    const size = sizeAt(line, vessel, 'pitch', rounded(model.si * share, model, true));
    if (size && fits(size.propulsion)) return size;
  }
  return undefined;
}

/** Parts of the present pitch that are tried: with less than seven tenths it is another propeller. */
const SHARES = Array.from({ length: 14 }, (_, index) => 0.98 - 0.02 * index);

/** Speed changes with the size that is looked for, so the demand is worked out anew at each size that is tried. */
function sizeFor(
  line: ShaftLine,
  vessel: Vessel,
  now: Propulsion,
  what: 'pitch' | 'diameter',
): OtherSize | undefined {
  const model = line.propeller![what]?.value;
  if (!model || line.propeller!.effectivePitch) return undefined;
  const run = (si: number) =>
    new LineAnalysis(withSize(line, { [what]: given(what, '', 'length', si) }), vessel).propulsion?.value;
  const found = absorbingSize(run, { si: model.si, demand: now.demand.si }, sized(now, what));
  return (
    sizeAt(line, vessel, what, rounded(found, model)) ??
    sizeAt(line, vessel, what, rounded(found, model, true))
  );
}

/** What follows from one size. */
export function sizeAt(
  line: ShaftLine,
  vessel: Vessel,
  what: 'pitch' | 'diameter',
  value: Value<'length'>,
): OtherSize | undefined {
  const analysis = new LineAnalysis(withSize(line, { [what]: value }), vessel);
  const propulsion = analysis.propulsion?.value;
  return propulsion && { written: value.written!, value, analysis, propulsion };
}

/** The duty that a propeller of this run is sized for. */
export function sizingOf({ curve, rated, available, density }: Propulsion): SizingCase {
  return {
    series: curve.series.name,
    geometry: curve.geometry,
    power: available,
    shaftSpeed: rated.shaftSpeed,
    speedOfAdvance: rated.speedOfAdvance,
    density,
  };
}

function sized(propulsion: Propulsion, what: 'pitch' | 'diameter'): number | undefined {
  const sizing = sizingOf(propulsion);
  if (what === 'pitch') {
    const found = pitchThatAbsorbs(sizing);
    return found.applies ? found.pitch.si : undefined;
  }
  const found = diameterThatAbsorbs(sizing, 'pitch');
  return found.applies ? found.diameter.si : undefined;
}

/** Half inches or five millimetres, in the unit that the present size is written in; down where told. */
export function rounded(si: number, model: Value<'length'>, down = false): Value<'length'> {
  const unit = writtenUnit(model) ?? findUnit('mm')!;
  const step = unit.symbol === 'in' ? 0.5 : unit.symbol === 'mm' ? 5 : unit.symbol === 'cm' ? 0.5 : 0.005;
  const count = si / toSI(1, unit) / step;
  const number = Number(((down ? Math.floor(count + 1e-9) : Math.round(count)) * step).toFixed(3));
  const size = inUnit('length', number, unit.symbol);
  return given(model.label, model.symbol, 'length', size.si, {
    written: spellQuantity(size),
    unit: unit.symbol,
  });
}
