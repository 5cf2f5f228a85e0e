import { everyFinding, type Finding } from '@tailshaft/language';
import { CannotRun } from '../cannot-run.js';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import { identitiesOf, marginOf } from './identity.js';
import type { Standing } from './judged.js';
import { SEVERITIES, type Severity, severityOf } from './severity.js';

interface Known {
  readonly id: string;
  readonly code: string;
  readonly severity: Severity;
  /** Absent where it has none: it fails altogether. */
  readonly margin?: number;
  readonly path: string;
  /** For people: nothing is compared with it. */
  readonly message: string;
}

/** A margin may move by rounding elsewhere; half a point of it is a change. */
const SAME_MARGIN = 0.005;

/**
 * Findings that were there on a certain day. They are told as known, and change no status; they are not accepted, for
 * nobody has answered for them.
 */
export class Baseline {
  private readonly known: ReadonlyMap<string, Known>;
  private readonly met = new Set<string>();
  private readonly paths = new Set<string>();

  constructor(
    readonly written: string,
    findings: readonly Known[],
  ) {
    this.known = new Map(findings.map(one => [one.id, one]));
  }

  static read(text: string, shown: string): Baseline {
    const content = parsed(text);
    if (!isBaseline(content))
      throw new CannotRun(`${shown} is not a baseline of tailshaft: write one with --write-baseline`);
    return new Baseline(content.written, content.findings);
  }

  /** How each finding of a file stands; new, where one of what is told under it is new. */
  standingsOf(specs: Specs, spec: CheckedSpec): Map<Finding, Standing> {
    this.paths.add(specs.pathInRoot(spec.check.uri));
    const identities = identitiesOf(specs, spec);
    const single = (finding: Finding): Standing => {
      const id = identities.get(finding)!;
      const known = this.known.get(id);
      this.met.add(id);
      if (!known) return 'new';
      const graver = SEVERITIES.indexOf(severityOf(finding)) < SEVERITIES.indexOf(known.severity);
      const less = marginOf(finding) < (known.margin ?? Number.NEGATIVE_INFINITY) - SAME_MARGIN;
      return graver || less ? 'worse' : 'known';
    };
    const standings = new Map<Finding, Standing>();
    for (const finding of spec.findings) {
      const all = everyFinding([finding]).map(single);
      standings.set(finding, ['new' as const, 'worse' as const].find(one => all.includes(one)) ?? 'known');
    }
    return standings;
  }

  /** How many of the files that were judged are not found any more. */
  gone(): number {
    return [...this.known.values()].filter(one => this.paths.has(one.path) && !this.met.has(one.id)).length;
  }
}

/** The text of a baseline file, in a stable order: it is kept under version control. */
export function baselineText(written: string, findings: readonly Known[]): string {
  const ordered = [...findings].sort((a, b) => (a.path + a.id < b.path + b.id ? -1 : 1));
  return `${JSON.stringify({ form: 1, program: 'tailshaft', written, findings: ordered }, null, 2)}\n`;
}

/** Everything that is found in a file, as a baseline keeps it. */
export function knownOf(specs: Specs, spec: CheckedSpec): Known[] {
  const path = specs.pathInRoot(spec.check.uri);
  return [...identitiesOf(specs, spec)].map(([finding, id]) => {
    const margin = marginOf(finding);
    return {
      id,
      code: finding.code,
      severity: severityOf(finding),
      ...(Number.isFinite(margin) ? { margin: Math.round(margin * 1e4) / 1e4 } : {}),
      path,
      message: finding.message,
    };
  });
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function isBaseline(content: unknown): content is { written: string; findings: Known[] } {
  const { form, program, written, findings } = (content ?? {}) as Record<string, unknown>;
  return (
    form === 1 &&
    program === 'tailshaft' &&
    typeof written === 'string' &&
    Array.isArray(findings) &&
    findings.every(
      one =>
        typeof one?.id === 'string' &&
        typeof one.path === 'string' &&
        SEVERITIES.includes(one.severity) &&
        (one.margin === undefined || typeof one.margin === 'number'),
    )
  );
}
