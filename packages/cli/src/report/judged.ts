import type { Finding } from '@tailshaft/language';
import type { CheckedSpec } from '../specs/specs.js';

/** How a finding stands to the baseline. One that is known and got worse is told as a new one is. */
export type Standing = 'new' | 'worse' | 'known';

/** A judged file, with how each of its findings stands to the baseline, where there is one. */
export interface Judged {
  readonly spec: CheckedSpec;
  readonly standings?: ReadonlyMap<Finding, Standing>;
}

/** Whether a finding was there when the baseline was written, and has become no worse since. */
export function isKnown({ standings }: Judged, finding: Finding): boolean {
  return standings?.get(finding) === 'known';
}
