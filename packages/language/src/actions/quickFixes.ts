import type { Missing, Route } from '@tailshaft/drivetrain';
import { textEditsFor } from '../edit/modelEdits.js';
import { problemEdits } from '../edit/problemEdits.js';
import type { Finding } from '../project/finding.js';
import type { Offer, TextOf } from './offer.js';

/** Every way out of a finding: the corrections of a text, the routes of a rule, and each gap as an open question. */
export function quickFixes(finding: Finding, textOf: TextOf): Offer[] {
  const { problem, verdict } = finding;
  const offers: Offer[] = [];
  const offer = (title: string, edits: Offer['edits'], preferred: boolean) => {
    if (edits.length > 0 && !offers.some(one => sameEdits(one.edits, edits)))
      offers.push({ title, kind: 'quickfix', edits, finding, ...(preferred ? { preferred } : {}) });
  };
  for (const choice of problem?.choices ?? []) {
    const edits = problemEdits(problem!, choice, finding.place.uri, textOf(finding.place.uri));
    offer(choice.title, edits, problem!.choices!.length === 1);
  }
  if (!verdict) return offers;
  for (const route of verdict.routes()) {
    if (verdict.missing.some(gap => writesGap(route, gap))) continue;
    offer(route.title, textEditsFor(route.edits, textOf), route.preferred === true);
  }
  for (const gap of verdict.missing) {
    if (gap.at) continue;
    // An example that is a value would be an answer, not a question.
    const text = gap.example.includes('unknown') ? gap.example : 'unknown';
    const set = { do: 'set', host: gap.host, property: gap.property, text } as const;
    offer(`Add ${gap.property} as an open question: ${gap.what}`, textEditsFor([set], textOf), false);
  }
  return offers;
}

/** Whether a route does no more than to leave a blank for this gap. */
function writesGap(route: Route, gap: Missing): boolean {
  const [edit] = route.edits;
  return (
    route.stub === true &&
    route.edits.length === 1 &&
    edit?.do === 'set' &&
    edit.host === gap.host &&
    edit.property === gap.property
  );
}

function sameEdits(one: Offer['edits'], other: Offer['edits']): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
