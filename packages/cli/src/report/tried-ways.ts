import type { Finding, Offer } from '@tailshaft/language';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import { severityOf } from './severity.js';

/** What the editor would offer for a finding. */
export interface TriedWays {
  readonly waysOutTried: readonly TriedWay[];
  /** Trying was given up: too much had been tried by then. */
  readonly triesEnded?: true;
}

export interface TriedWay {
  readonly title: string;
  readonly kind: string;
  /** Found by a search of sizes and catalogue parts; the others are ways that the rule or the text knows itself. */
  readonly searched?: true;
  readonly preferred?: true;
  readonly makesWorse?: true;
}

/**
 * The ways out of failures as the editor would offer them: each has been judged. So many tries, and no time of a clock,
 * bound them for a whole run: the same specs give the same answer.
 */
export class WaysTried {
  private left = MOST_TRIES;

  constructor(
    private readonly specs: Specs,
    private readonly search: 'always' | 'in need',
  ) {}

  of(spec: CheckedSpec, finding: Finding): TriedWays | undefined {
    const severity = severityOf(finding);
    if (severity !== 'error' && severity !== 'warning') return undefined;
    const steps = this.specs.waysOut(spec, finding, this.search);
    if (!steps) return undefined;
    for (;;) {
      const { done, value } = steps.next();
      if (done) return { waysOutTried: value.map(wayOf) };
      if (this.left === 0) return { waysOutTried: [], triesEnded: true };
      this.left -= 1;
    }
  }
}

/** About two seconds of a quiet machine. */
const MOST_TRIES = 200;

function wayOf({ title, route, searched, preferred, makesWorse }: Offer): TriedWay {
  return {
    title,
    kind: route ?? 'corrects the text',
    ...(searched ? { searched } : {}),
    ...(preferred ? { preferred } : {}),
    ...(makesWorse ? { makesWorse } : {}),
  };
}
