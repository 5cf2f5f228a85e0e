import { listed } from '@tailshaft/mechanics';
import { asStated, named } from '@tailshaft/vocabulary';
import { compareDuty } from '../../analysis/duty-class.js';
import { hoursWords } from '../../analysis/hours-words.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import type { Quantity } from '../../model/fact.js';
import type { Vessel } from '../../model/vessel.js';

/**
 * The service of the vessel kept within what a rating is for. It is the owner's to agree, and what the vessel may then not do
 * stands in the title; every check that rests on the duty is judged anew.
 */
export function serviceWithin(
  { duty }: Vessel,
  rating: { readonly duty: string; readonly hours?: Quantity<'number'> },
  whose: string,
): Route[] {
  const { class: now, hours } = duty ?? {};
  if (!duty) return [];
  const lighter = now?.value !== undefined && compareDuty(rating.duty, now.value) === 'lighter';
  const most = rating.hours;
  const fewer = most?.value && hours?.value && most.value.si < hours.value.si;
  const edits: ModelEdit[] = [
    ...(lighter ? [{ do: 'replace' as const, at: now.origin, value: named(rating.duty) }] : []),
    ...(fewer ? [{ do: 'replace' as const, at: hours.origin, value: asStated(most) }] : []),
  ];
  const words = [
    ...(lighter ? [`${rating.duty} duty instead of ${now.value}`] : []),
    ...(fewer ? [`${hoursWords(most)} instead of ${hoursWords(hours)}`] : []),
  ];
  return edits.length > 0
    ? [
        {
          title: `Limit the service of the vessel to ${listed(words)}, as ${whose} is rated, for the owner to agree`,
          edits,
        },
      ]
    : [];
}
