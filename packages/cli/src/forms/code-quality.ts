import type { Finding } from '@tailshaft/language';
import { identitiesOf } from '../report/identity.js';
import type { Judged } from '../report/judged.js';
import { gravestFirst, type Rank, rankOf, severityOf } from '../report/severity.js';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import { jsonText } from '../terminal/visible.js';
import type { Form } from './form.js';

const SEVERITY = { error: 'critical', warning: 'major', note: 'minor', information: 'info' } as const;

/** A Code Quality report, as GitLab takes it: the site itself tells new findings from those of the target branch. */
export class CodeQuality implements Form {
  private readonly issues: { readonly rank: Rank; readonly issue: object }[] = [];

  constructor(private readonly specs: Specs) {}

  add({ spec }: Judged): void {
    const identities = identitiesOf(this.specs, spec);
    for (const finding of spec.findings)
      if (!finding.verdict?.asFound) {
        const issue = this.issueOf(finding, spec, identities.get(finding)!);
        this.issues.push({ rank: rankOf(finding), issue });
      }
  }

  text(): string {
    return jsonText(this.issues.sort((a, b) => gravestFirst(a.rank, b.rank)).map(one => one.issue));
  }

  private issueOf(finding: Finding, spec: CheckedSpec, fingerprint: string) {
    const spot = this.specs.spot(finding.place);
    return {
      description: finding.message,
      check_name: finding.code,
      fingerprint,
      severity: SEVERITY[severityOf(finding)],
      location: {
        path: spot?.shown ?? spec.shown,
        lines: { begin: spot?.line ?? 1, end: spot?.endLine ?? 1 },
      },
    };
  }
}
