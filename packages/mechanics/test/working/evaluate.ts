import { allUnits, toSI, type Unit } from '@tailshaft/mechanics';

/*
 * Works out what a working prints: numbers with their units, √, powers, functions; letters side by side are a product.
 */

const UNITS = new Map<string, Unit>(
  allUnits().flatMap(unit => [unit.display, unit.symbol].filter(Boolean).map(text => [text, unit] as const)),
);
const SPELLINGS = [...UNITS.keys()].sort((one, other) => other.length - one.length);
const POWERS: Readonly<Record<string, number>> = { '²': 2, '³': 3, '⁴': 4, '⁵': 5, '⁶': 6 };
const FUNCTIONS: Readonly<Record<string, (...all: number[]) => number>> = {
  cos: Math.cos,
  sin: Math.sin,
  tan: Math.tan,
  arctan: Math.atan,
  arccos: Math.acos,
  ln: Math.log,
  log10: Math.log10,
  exp: Math.exp,
  min: Math.min,
  max: Math.max,
};
const CONSTANTS: Readonly<Record<string, number>> = {
  π: Math.PI,
  g: 9.80665,
  '½': 0.5,
  '¼': 0.25,
  e: Math.E,
};

/** The number that an expression prints. Bare: its numbers count as they stand, their units are those of the formula. */
export function evaluate(text: string, bare: boolean): number {
  let at = 0;
  const space = () => {
    while (/\s/.test(text[at] ?? '')) at += 1;
  };
  const eat = (...signs: string[]): string | undefined => {
    space();
    const found = signs.find(sign => text.startsWith(sign, at));
    if (found) at += found.length;
    return found;
  };

  const sum = (): number => {
    let value = product();
    for (let sign = eat('+', '-', '−'); sign; sign = eat('+', '-', '−')) {
      const next = product();
      value = sign === '+' ? value + next : value - next;
    }
    return value;
  };
  const product = (): number => {
    let value = signed();
    for (;;) {
      if (eat('×', '·', '*')) value *= signed();
      else if (eat('/')) value /= power();
      else if (startsAtom()) value *= power();
      else return value;
    }
  };
  const signed = (): number => (eat('-', '−') ? -signed() : power());
  const startsAtom = (): boolean => {
    space();
    return /[\d(√π½¼\p{L}|]/u.test(text[at] ?? '');
  };
  const power = (): number => {
    let value = atom();
    for (;;) {
      const raised = text[at] !== undefined ? POWERS[text[at]!] : undefined;
      if (raised !== undefined) {
        at += 1;
        value **= raised;
      } else if (text[at] === '⁻' || text.startsWith(' ⁻', at)) throw new Error(`power at ${text.slice(at)}`);
      else if (eat('^')) value **= eat('-', '−') ? -atom() : atom();
      else return value;
    }
  };
  const atom = (): number => {
    space();
    if (eat('√')) return Math.sqrt(power());
    if (eat('∛')) return Math.cbrt(power());
    if (eat('⌈')) {
      const value = sum();
      if (!eat('⌉')) throw new Error(`no closing bracket at "${text.slice(at)}"`);
      return Math.ceil(value);
    }
    if (eat('|')) {
      const value = sum();
      eat('|');
      return Math.abs(value);
    }
    if (eat('(')) {
      const value = sum();
      if (!eat(')')) throw new Error(`no closing bracket at "${text.slice(at)}"`);
      return value;
    }
    const number = /^\d+(?:\.\d+)?(?:e-?\d+)?/.exec(text.slice(at))?.[0];
    if (number) {
      at += number.length;
      // `/ 2π` divides by the whole.
      if (text[at] !== 'π') return unitBehind(Number(number));
      at += 1;
      const raised = POWERS[text[at] ?? ''];
      if (raised) at += 1;
      return Number(number) * Math.PI ** (raised ?? 1);
    }
    const word = /^\p{L}[\p{L}\d₀-₉_]*/u.exec(text.slice(at))?.[0] ?? text[at] ?? '';
    const called = FUNCTIONS[word];
    if (called) {
      at += word.length;
      const raised = POWERS[text[at] ?? ''];
      if (raised) at += 1;
      if (!eat('(')) return called(power()) ** (raised ?? 1);
      const all = [sum()];
      while (eat(',')) all.push(sum());
      if (!eat(')')) throw new Error(`no closing bracket at "${text.slice(at)}"`);
      return called(...all) ** (raised ?? 1);
    }
    const constant = CONSTANTS[word];
    if (constant === undefined) throw new Error(`"${text.slice(at)}" means nothing in ${text}`);
    at += word.length;
    return constant;
  };
  const unitBehind = (number: number): number => {
    const rest = text.slice(at);
    const gap = /^\s?/.exec(rest)![0].length;
    const spelling = SPELLINGS.find(
      one => rest.startsWith(one, gap) && !/^[\p{L}\d_(]/u.test(rest.slice(gap + one.length)),
    );
    if (!spelling || (gap === 0 && !/^[°′%]/.test(spelling))) return number;
    at += gap + spelling.length;
    return bare && spelling !== '%' ? number : toSI(number, UNITS.get(spelling)!);
  };

  const value = sum();
  space();
  if (at < text.length) throw new Error(`"${text.slice(at)}" is left of ${text}`);
  return value;
}
