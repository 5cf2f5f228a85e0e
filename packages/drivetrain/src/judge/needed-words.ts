import type { Needed } from './needed.js';

/** How many figures a message names; all of them are data of the verdict. */
const NAMED = 3;

/** `Any one of these meets it: propeller pitch at most 19.7 in; engine low idle at most 738 rpm.` */
export function neededWords(needed: readonly Needed[]): string {
  const said = needed.slice(0, NAMED).map(one => {
    const bound = one.bound === 'exactly' ? '' : `${one.bound} `;
    return `${one.quantity} ${bound}${one.written}`;
  });
  return said.length === 1 ? `This meets it: ${said[0]}.` : `Any one of these meets it: ${said.join('; ')}.`;
}
