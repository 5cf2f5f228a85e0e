import { changeOf, type Needed } from './needed.js';

/** How many figures a message names; all of them are data of the verdict. */
const NAMED = 3;
/** Beyond so many times what stands there a figure is true and no help, where another one does. */
const NEAR = Math.log(1.6);

/** `Any one of these meets it: propeller pitch at most 19.7 in; engine low idle at most 738 rpm.` */
export function neededWords(needed: readonly Needed[]): string {
  const near = needed.filter((one, index) => index === 0 || changeOf(one) <= NEAR);
  const said = near.slice(0, NAMED).map(one => {
    const bound = one.bound === 'exactly' ? '' : `${one.bound} `;
    return `${one.quantity} ${bound}${one.written}`;
  });
  return said.length === 1 ? `This meets it: ${said[0]}.` : `Any one of these meets it: ${said.join('; ')}.`;
}
