import type { NewRequirement } from '../../../judge/route.js';
import type { Requirement } from '../../../model/vessel.js';
import { GEAR_TORQUE_MARGIN } from './gear.js';
import { BOLLARD_THRUST, PROPELLER_DEMAND, TIP_CLEARANCE } from './propeller.js';
import type { NamedQuantity } from './quantity.js';
import { SHAFT_SPEED, SHAFT_TORQUE, TIP_SPEED } from './shaft.js';
import { SPEED } from './speed.js';

export type { Evaluated, NamedQuantity } from './quantity.js';
export { together } from './together.js';

/** Every derived quantity that `require` can be about. */
export const NAMED_QUANTITIES: readonly NamedQuantity[] = [
  SPEED,
  SHAFT_SPEED,
  SHAFT_TORQUE,
  TIP_SPEED,
  TIP_CLEARANCE,
  BOLLARD_THRUST,
  PROPELLER_DEMAND,
  GEAR_TORQUE_MARGIN,
];

/** Requirements that have a rule of their own. */
const OWN_RULES: readonly { readonly rule: string; readonly takes: (one: Requirement) => boolean }[] = [
  {
    rule: 'rotation/turning-requirement',
    takes: one => one.about === 'propellers turn' && (one.word === 'outward' || one.word === 'inward'),
  },
  {
    rule: 'speed/idle-in-gear',
    takes: one =>
      one.about === 'speed' &&
      one.bound === 'at most' &&
      /\bidle\b/.test(one.condition ?? '') &&
      !/astern/.test(one.condition ?? ''),
  },
  { rule: 'speed/slow-running', takes: one => one.about === 'trolling speed' && one.bound === 'at most' },
];

/** How a requirement is verified: by a rule of its own, by a named quantity, or not at all, and why not. */
export type Verification =
  | { readonly by: 'rule'; readonly rule: string }
  | { readonly by: 'quantity'; readonly quantity: NamedQuantity; readonly condition: string | undefined }
  /** Its bound cannot be read, which is told at its unit. */
  | { readonly by: 'unread' }
  | { readonly by: 'nothing'; readonly why: string; readonly meant?: NewRequirement };

export function verificationOf(one: Requirement): Verification {
  if (one.unitless) return { by: 'unread' };
  const own = one.mode === undefined ? OWN_RULES.find(({ takes }) => takes(one)) : undefined;
  if (own) return { by: 'rule', rule: own.rule };
  const quantity = NAMED_QUANTITIES.find(({ name }) => name === one.about);
  if (!quantity) {
    const known = NAMED_QUANTITIES.map(({ name }) => name).join(', ');
    return { by: 'nothing', why: `no check computes "${one.about}"; checks exist for ${known}` };
  }
  const { conditions, dimensions, name, example } = quantity;
  const condition = one.condition;
  if (one.bound !== 'at least' && one.bound !== 'at most') {
    return { by: 'nothing', why: `a computed ${name} takes "at least" or "at most": ${example}` };
  }
  const value = one.quantity?.value;
  if (!value) return { by: 'nothing', why: `it names no number to compare the ${name} with: ${example}` };
  if (!dimensions.includes(value.dimension)) {
    return {
      by: 'nothing',
      why: `${name} is a ${dimensions.join(' or a ')}, and ${one.quantity!.written} is not: ${example}`,
    };
  }
  if (condition !== undefined && !conditions.includes(condition)) {
    const usual = conditions[0];
    return {
      by: 'nothing',
      why: usual
        ? `${name} is computed at ${conditions.join(', ')}, not at "${condition}"`
        : `${name} takes no condition, and "at ${condition}" is one`,
      meant: {
        about: one.about,
        bound: one.bound,
        quantity: one.quantity!,
        ...(usual ? { condition: usual } : {}),
        ...(one.mode ? { mode: one.mode } : {}),
        ...(one.note ? { note: one.note } : {}),
      },
    };
  }
  return { by: 'quantity', quantity, condition: condition ?? conditions[0] };
}
