import {
  type Dimension,
  percent,
  renamed,
  TIP_CLEARANCE_CRITERIA,
  tipClearanceShare,
  tipGap,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Criterion } from '../judge/verdict.js';
import type { Quantity } from '../model/fact.js';
import { home, nameOf } from '../model/part.js';
import { isSaid } from '../model/reads.js';
import type { Propeller } from '../model/shafting.js';
import type { Vessel } from '../model/vessel.js';

/** Room between blade tip and hull. */
export interface TipRoom {
  readonly gap: Value<'length'>;
  /** gap ÷ diameter */
  readonly share: Value<'ratio'>;
  readonly diameter: Value<'length'>;
}

/** Whether anything is said of the room above the propeller. */
export function hasTipRoom(propeller: Propeller): boolean {
  return isSaid(() => propeller.tipClearance) || isSaid(() => propeller.axisToHull);
}

/** The tip clearance as declared, or from the height of the hull over the shaft axis. */
export function tipRoomOf(propeller: Propeller, needs: Needs): TipRoom | undefined {
  const name = nameOf(propeller);
  const bare = needs.fact(propeller.diameter, {
    what: `diameter of ${name}`,
    host: home(propeller),
    property: 'diameter',
  });
  const diameter = bare && renamed(bare, 'propeller diameter', 'D');
  const gap = gapOf(propeller, diameter, needs);
  if (!diameter || !gap) return undefined;
  return { gap, share: tipClearanceShare({ clearance: gap, diameter }), diameter };
}

function gapOf(
  propeller: Propeller,
  propellerDiameter: Value<'length'> | undefined,
  needs: Needs,
): Value<'length'> | undefined {
  const name = nameOf(propeller);
  const here = <D extends Dimension>(fact: Quantity<D> | undefined, property: string) =>
    needs.fact(fact, { what: `${property} of ${name}`, host: propeller.origin, property });
  if (isSaid(() => propeller.tipClearance) || !isSaid(() => propeller.axisToHull)) {
    const own = here(propeller.tipClearance, 'tip clearance');
    return own && renamed(own, 'tip clearance', 'c');
  }
  const axis = here(propeller.axisToHull, 'axis to hull');
  if (!axis || !propellerDiameter) return undefined;
  return renamed(
    tipGap({ axisToHull: renamed(axis, 'shaft axis to hull', 's'), propellerDiameter }),
    'tip clearance',
    'c',
  );
}

const MOTOR_CRAFT = TIP_CLEARANCE_CRITERIA.find(one => one.craft === 'motor craft')!;

/** Least share of the diameter that is wanted, and who wants it. */
export function wantedTipShare(vessel: Vessel): { readonly share: number; readonly criterion: Criterion } {
  const own = vessel.criteria?.tipClearance?.value;
  const share = own?.si ?? MOTOR_CRAFT.share;
  const said = `tip clearance at least ${own?.written ?? percent(share)} of the diameter`;
  return own
    ? { share, criterion: { said, chosenBy: 'author' } }
    : { share, criterion: { said: `${said} (common practice for motor craft)`, chosenBy: 'default' } };
}
