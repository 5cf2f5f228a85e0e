import type { Finding } from '@tailshaft/language';
import { identitiesOf } from '../report/identity.js';
import type { Judged } from '../report/judged.js';
import { gravestFirst, type Rank, rankOf, severityOf } from '../report/severity.js';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import { jsonText } from '../terminal/visible.js';
import type { Form } from './form.js';

const SEVERITY = { error: 'critical', warning: 'major', note: 'minor', information: 'info' } as const;

interface Ranked {
  readonly rank: Rank;
  readonly issue: object;
}

/** A Code Quality report, as GitLab takes it: the site itself tells new findings from those of the target branch. */
export class CodeQuality implements Form<readonly Ranked[]> {
  private readonly issues: Ranked[] = [];

  constructor(private readonly specs: Specs) {}

  pieceOf({ spec }: Judged): readonly Ranked[] {
    const identities = identitiesOf(this.specs, spec);
    return spec.findings
      .filter(one => !one.verdict?.asFound)
      .map(one => ({ rank: rankOf(one), issue: this.issueOf(one, spec, identities.get(one)!) }));
  }

  take(issues: readonly Ranked[]): void {
    this.issues.push(...issues);
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
