import { changeOf, type Needed } from './needed.js';

/** How many figures a message names; all of them are data of the verdict. */
const NAMED = 3;
/** Beyond so many times what stands there a figure is true and no help, where another one does. */
const NEAR = Math.log(1.6);
/** And beyond so many times it is no help at all: another part is, or another place of it. */
const FAR = Math.log(3.3);

/** ` Any one of these meets it: propeller pitch at most 19.7 in; engine low idle at most 738 rpm.` */
export function neededWords(needed: readonly Needed[]): string {
  const near = needed.filter((one, index) => changeOf(one) <= (index === 0 ? FAR : NEAR));
  if (near.length === 0) return '';
  const said = near.slice(0, NAMED).map(one => {
    const bound = one.bound === 'exactly' ? '' : `${one.bound} `;
    return `${one.quantity} ${bound}${one.written}`;
  });
  return said.length === 1
    ? ` This meets it: ${said[0]}.`
    : ` Any one of these meets it: ${said.join('; ')}.`;
}
