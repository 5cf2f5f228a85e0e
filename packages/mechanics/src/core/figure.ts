import type { Figure } from './value.js';

/** What the text of a number says of how fine it is. Signs and marks of feet and inches do not count. */
export function figureOf(text: string, to?: number): Figure {
  const plain = /^[+\-−]?(\d+)(?:\.(\d+))?(?:[eE][+\-−]?\d+)?$/.exec(text);
  if (!plain) return { text, ...(to === undefined ? {} : { to }) };
  const [, whole = '', part = ''] = plain;
  return {
    text,
    decimals: part.length,
    digits: `${whole}${part}`.replace(/^0+/, '').length,
    ...(to === undefined ? {} : { to }),
  };
}

/** One unit of the last digit written, as sheets round as often as they cut off. A whole number, or a fraction, means itself. */
export function lastDigit(figure: Figure | undefined): number {
  return figure?.decimals ? 10 ** -figure.decimals : 0;
}
