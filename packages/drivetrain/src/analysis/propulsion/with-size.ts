import type { Value } from '@tailshaft/mechanics';
import type { ShaftLine } from '../../model/vessel.js';

/** The same line with another propeller pitch or diameter; its blades are taken to load as that pitch says. */
export function withSize(
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
