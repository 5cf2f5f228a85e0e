import { findUnit, unitsOf } from '@tailshaft/mechanics';
import type { Change } from '../change.js';
import type { Judged } from '../rejudge.js';
import { edited, factsOf } from '../written.js';
import { blockWords } from './names.js';

const QUANTITY = /^(-?)(\d+(?:\.\d+)?)(?![\d/.:])(?:(\s*)([A-Za-z%°·][\w%°·./²³]*))?/;

/** (j) Each quantity at a tenth, ten times, zero, and its number in the nearest other unit. */
export function* push({ text, check }: Judged): Generator<Change> {
  for (const [index, fact] of factsOf(check).entries()) {
    const written = text.slice(fact.value.start, fact.value.end);
    const parts = QUANTITY.exec(written);
    if (!parts || !['quantity', 'point', 'ratio', 'per year', 'span'].includes(fact.row.kind.form)) continue;
    const [whole, sign, number, space = '', unit = ''] = parts;
    const rest = written.slice(whole.length);
    const others = [
      [`${trim(Number(number) / 10)}${space}${unit}`, 'a tenth'],
      [`${trim(Number(number) * 10)}${space}${unit}`, 'ten times'],
      [`0${space}${unit}`, 'zero'],
      ...(otherUnit(unit) ? [[`${number}${space}${otherUnit(unit)}`, 'another unit']] : []),
    ] as const;
    for (const [said, how] of others) {
      yield {
        letter: 'j',
        what: `${how}: ${fact.property} ${sign}${said} in ${blockWords(fact)} (${index})`,
        about: fact.property,
        text: edited(text, { ...fact.value, text: `${sign}${said}${rest}` }),
        at: fact.value.start,
        number: said,
      };
    }
  }
}

function trim(value: number): string {
  return String(Number(value.toPrecision(8)));
}

/** The unit of the same dimension that is least away from this one. */
function otherUnit(written: string): string | undefined {
  const own = findUnit(written);
  const dimension = own?.dimensions[0];
  if (!own || !dimension) return undefined;
  const away = (one: typeof own) => Math.abs(Math.log(one.factor / own.factor));
  return unitsOf(dimension)
    .filter(one => away(one) > 0.01)
    .sort((a, b) => away(a) - away(b))[0]?.symbol;
}
