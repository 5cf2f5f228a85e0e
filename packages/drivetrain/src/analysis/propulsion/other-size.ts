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
import type { Propulsion } from './propulsion.js';

/** A size that a propeller could have instead, in words as the spec writes sizes, and what follows from it. */
export interface OtherSize {
  readonly written: string;
  readonly value: Value<'length'>;
  readonly analysis: LineAnalysis;
  readonly propulsion: Propulsion;
}

/** The same line with another propeller pitch or diameter; its blades are taken to load as that pitch says. */
function withSize(
  line: ShaftLine,
  size: { readonly pitch?: Value<'length'>; readonly diameter?: Value<'length'> },
): ShaftLine {
  const propeller = line.propeller!;
  const fact = (value: Value<'length'>) => ({
    value,
    written: value.written ?? '',
    origin: propeller.origin,
  });
  const changed = {
    ...propeller,
    ...(size.pitch ? { pitch: fact(size.pitch) } : {}),
    ...(size.diameter ? { diameter: fact(size.diameter) } : {}),
  };
  return {
    ...line,
    propeller: changed,
    chain: line.chain.map(part => (part === propeller ? changed : part)),
  };
}

/** The pitch with which this propeller takes the power that reaches it at rated speed, in whole steps of its unit. */
export function pitchForRated(line: ShaftLine, vessel: Vessel, now: Propulsion): OtherSize | undefined {
  return sizeFor(line, vessel, now, 'pitch');
}

/** The diameter, with the pitch kept, for the same. */
export function diameterForRated(line: ShaftLine, vessel: Vessel, now: Propulsion): OtherSize | undefined {
  return sizeFor(line, vessel, now, 'diameter');
}

/** Speed changes with the size that is looked for, so the sizing is repeated from the speed it leads to. */
function sizeFor(
  line: ShaftLine,
  vessel: Vessel,
  now: Propulsion,
  what: 'pitch' | 'diameter',
): OtherSize | undefined {
  const model = line.propeller![what]?.value;
  if (!model || line.propeller!.effectivePitch) return undefined;
  let propulsion = now;
  let size: Value<'length'> | undefined;
  for (let turn = 0; turn < 4; turn++) {
    const found = sized(propulsion, what);
    if (found === undefined) return undefined;
    if (size && Math.abs(found - size.si) < 1e-4 * size.si) break;
    size = given(what, '', 'length', found);
    const then = new LineAnalysis(withSize(line, { [what]: size }), vessel).propulsion?.value;
    if (!then) return undefined;
    propulsion = then;
  }
  return size && sizeAt(line, vessel, what, rounded(size.si, model));
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

function sized(
  { curve, rated, available, density }: Propulsion,
  what: 'pitch' | 'diameter',
): number | undefined {
  const sizing: SizingCase = {
    series: curve.series.name,
    geometry: curve.geometry,
    power: available,
    shaftSpeed: rated.shaftSpeed,
    speedOfAdvance: rated.speedOfAdvance,
    density,
  };
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
