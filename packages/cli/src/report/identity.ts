import { createHash } from 'node:crypto';
import { everyFinding, type Finding } from '@tailshaft/language';
import type { CheckedSpec, Specs } from '../specs/specs.js';

/**
 * What tells each finding of a file from all others, the same in every run: by rule and what it is about, never by line
 * or by figures, so that a block that moved and a margin that changed keep it. Several of one rule and subject are
 * counted, the gravest first: one more of them is a new one.
 */
export function identitiesOf(specs: Specs, spec: CheckedSpec): Map<Finding, string> {
  const same = new Map<string, Finding[]>();
  for (const finding of everyFinding(spec.findings)) {
    const key = about(specs, finding);
    same.set(key, [...(same.get(key) ?? []), finding]);
  }
  const identities = new Map<Finding, string>();
  for (const [key, findings] of same)
    for (const [index, finding] of [...findings].sort(leastMarginFirst).entries())
      identities.set(finding, identityOf(index === 0 ? key : `${key}\n${index + 1}`));
  return identities;
}

/** The same of what no finding is made of, such as a failure that is accepted. */
export function identityOf(key: string): string {
  return createHash('sha256').update(key).digest('hex').slice(0, 32);
}

function about(specs: Specs, { code, place, verdict, vessel, message }: Finding): string {
  const path = specs.pathInRoot(place.uri);
  const of = verdict ? `${vessel?.vessel.name ?? ''} ${verdict.subject}` : message;
  return [code, path, of].join('\n');
}

function leastMarginFirst(one: Finding, other: Finding): number {
  return marginOf(one) - marginOf(other);
}

/** What has no margin fails altogether. */
export function marginOf({ verdict }: Finding): number {
  return verdict?.margin ?? Number.NEGATIVE_INFINITY;
}
