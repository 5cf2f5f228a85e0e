import type { Dimension, Value } from '@tailshaft/mechanics';
import type { LineContext } from '../../judge/context.js';
import type { Needs } from '../../judge/needs.js';
import type { Quantity } from '../../model/fact.js';
import { home, nameOf } from '../../model/part.js';
import type { Propeller, Shaft } from '../../model/shafting.js';

/** The propeller of a line that is to be built, and the shaft that carries it. */
export interface Seat {
  readonly propeller: Propeller;
  readonly shaft: Shaft | undefined;
}

export function seatOf(context: LineContext): Seat | undefined {
  const { propeller, shafts } = context.line;
  return propeller ? { propeller, shaft: shafts.at(-1) } : undefined;
}

/** A fact of the hub, or the gap. */
export function ofHub<D extends Dimension>(
  propeller: Propeller,
  fact: Quantity<D> | undefined,
  property: string,
  needs: Needs,
): Value<D> | undefined {
  return needs.fact(fact, {
    what: `${property} of ${nameOf(propeller)}`,
    host: home(propeller),
    property,
  });
}

/** A fact of the shaft end, or the gap; a line without a shaft is one too. */
export function ofShaft<D extends Dimension>(
  { line }: LineContext,
  shaft: Shaft | undefined,
  fact: Quantity<D> | undefined,
  property: string,
  needs: Needs,
): Value<D> | undefined {
  if (!shaft) {
    return needs.miss(
      { what: `the shaft of ${line.path}`, host: line.origin, property: 'shaft' },
      line.nameOrigin,
    );
  }
  return needs.fact(fact, { what: `${property} of ${nameOf(shaft)}`, host: home(shaft), property });
}
