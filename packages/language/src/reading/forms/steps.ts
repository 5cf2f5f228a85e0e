import { findUnit, fromSI, type Value, writtenUnit } from '@tailshaft/mechanics';
import type { Row } from '@tailshaft/vocabulary';
import { scan } from '../../text/scan.js';
import { Cursor } from '../cursor.js';
import type { Range } from '../place.js';
import { kindOfText, type Tok } from '../token.js';
import { takeQuantity } from './quantity.js';

/** More values than anybody tries of one thing. */
const MOST_VALUES = 1000;

/**
 * The values of a range, each as a line would write it, in the unit of its first end; or why it is none. The unit may stand
 * once, behind the last end.
 */
export function valuesBetween(
  { words, kind }: Row,
  from: string,
  to: string,
  by: string,
  uri: string,
  at: Range,
): readonly string[] | string {
  if (kind.form !== 'quantity') return `"${words}" has no range.`;
  const read = (text: string) => quantityIn(text, words, kind.dimension, uri, at);
  const high = read(to);
  const low = high && (read(from) ?? read(`${from} ${unitWords(to)}`));
  const step = read(by);
  if (!high || !low || !step)
    return `A range is two values of "${words}" and a step, each with its unit: "26 in .. 30 in by 0.5 in".`;
  if (!(step.si > 0) || !(high.si > low.si))
    return `A range goes from the smaller value to the greater one, by a step above zero: "${from} .. ${to} by ${by}" does not.`;
  const count = Math.floor((high.si - low.si) / step.si + 1e-9) + 1;
  if (count > MOST_VALUES)
    return `"${from} .. ${to} by ${by}" is ${count} values: ${MOST_VALUES} is the most that a study tries for one property.`;
  const unit = writtenUnit(low) ?? findUnit('1')!;
  const symbol = unit.symbol === '1' ? '' : ` ${unit.symbol}`;
  return Array.from({ length: count }, (_, index) => {
    const number = fromSI(low.si + index * step.si, unit);
    return `${Number(number.toPrecision(9))}${symbol}`;
  });
}

/** `in` of `30 in`. */
function unitWords(text: string): string {
  return text.replace(/^[\d\s./¼-¾⅐-⅞+-]+/, '');
}

function quantityIn(
  text: string,
  property: string,
  dimension: Extract<Row['kind'], { form: 'quantity' }>['dimension'],
  uri: string,
  { start, end }: Range,
): Value | undefined {
  const atoms: Tok[] = scan(text).map(one => ({
    kind: kindOfText(one.text),
    text: one.text,
    start,
    end,
    line: 0,
  }));
  const cursor = new Cursor(atoms, uri, () => false);
  const value = takeQuantity(cursor, property, dimension);
  return cursor.index === atoms.length && cursor.problems.length + cursor.concerns.length === 0
    ? value
    : undefined;
}
