import type { ArrangementContext } from '../judge/context.js';
import type { Needs } from '../judge/needs.js';
import type { Criterion } from '../judge/verdict.js';
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
export function ratioTolerance(vessel: Vessel): { readonly share: number; readonly criterion: Criterion } {
  const own = vessel.criteria?.ratioDifference?.value;
  const said = `ratio difference at most ${own ? (own.written ?? `${own.si * 100} %`) : '0.5 %'}`;
  return { share: own?.si ?? 0.005, criterion: { said, chosenBy: own ? 'author' : 'default' } };
}
