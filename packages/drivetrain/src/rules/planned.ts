import type { ArrangementContext } from '../judge/context.js';
import type { Needs } from '../judge/needs.js';
import type { Vessel } from '../model/vessel.js';

/**
 * Whether the arrangement is what will be built: no other one revises it. The one as found is the base of comparison;
 * what it may carry is no longer a question, and much of it is never known.
 */
export function isPlanned({
  arrangement,
  vessel,
}: Pick<ArrangementContext, 'arrangement' | 'vessel'>): boolean {
  return !vessel.arrangements.some(one => one.revises === arrangement.name);
}

/** Duty class that the vessel is specified for. */
export function wantedDuty(vessel: Vessel, needs: Needs): string | undefined {
  return needs.fact(vessel.duty?.class, {
    what: `duty of vessel ${vessel.name}`,
    host: vessel.origin,
    property: 'duty',
  });
}

/** What stays the same within this share is equal: data sheets round. */
export function ratioTolerance(vessel: Vessel): { readonly share: number; readonly said: string } {
  const own = vessel.criteria?.ratioDifference?.value;
  return own
    ? { share: own.si, said: `ratio difference at most ${own.written ?? `${own.si * 100} %`}` }
    : { share: 0.005, said: 'ratio difference at most 0.5 % (default)' };
}
