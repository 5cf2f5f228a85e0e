import { percent } from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Criterion } from '../judge/verdict.js';
import type { Vessel } from '../model/vessel.js';

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
  const said = `ratio difference at most ${own ? (own.written ?? percent(own.si)) : '0.5 %'}`;
  return { share: own?.si ?? 0.005, criterion: { said, chosenBy: own ? 'author' : 'default' } };
}
