import {
  capital,
  findUnit,
  formatQuantity,
  formatValue,
  NO_VALUE,
  naturalUnit,
  type Turn,
  type Unit,
  type Value,
  writtenUnit,
} from '@tailshaft/mechanics';
import type { Spelling } from '@tailshaft/vocabulary';

/** A value as the author wrote it where he did, or in the unit of its trade. */
export function valueWords(value: Value): string {
  return value.written?.replace(/([A-Za-z])\.(?=[a-z])/g, '$1·') ?? formatValue(value);
}

/** The same in SI, for the column beside what was written; undefined where there is nothing to convert. */
export function siWords(value: Value): string | undefined {
  if (value.dimension === 'number' || value.dimension === 'ratio' || isWrittenInSi(value)) return undefined;
  const text = formatQuantity(value.si, siUnit(value));
  return text === NO_VALUE || sameWords(text, value.written) ? undefined : text;
}

/** `2.9 m` and `300 kW` are SI with their prefix; a degree is used with it (SI Brochure, table 8). */
function isWrittenInSi(value: Value): boolean {
  const { dimension } = value;
  const unit = writtenUnit(value);
  if (!unit?.dimensions.includes(dimension)) return false;
  const thousands = Math.log10(unit.factor) / 3;
  return (
    unit.symbol === 'deg' || (unit.system === 'metric' && Number.isInteger(thousands) && unit.offset === 0)
  );
}

function siUnit(value: Value): Unit {
  const coherent = COHERENT[value.dimension];
  return (coherent === undefined ? undefined : findUnit(coherent)) ?? naturalUnit(value);
}

/** Where the trade speaks in other units than SI. */
const COHERENT: Partial<Record<Value['dimension'], string>> = {
  'rotational speed': 'rad/s',
  speed: 'm/s',
  time: 's',
};

function sameWords(one: string, other: string | undefined): boolean {
  const bare = (text: string) => text.replace(/[·.\s]/g, '');
  return other !== undefined && bare(one) === bare(other);
}

const TURN_SIGN: Readonly<Record<Turn, string>> = { clockwise: '↻', 'counter-clockwise': '↺' };

/** A turn with the sign of its way round. */
export function turnWords(turn: Turn | undefined): string {
  return turn ? `${TURN_SIGN[turn]} ${turn}` : '? cannot tell';
}

/** Words of a property as a label: they no longer compile when the property is renamed. */
export const labelOf = (words: Spelling): string => capital(words);
