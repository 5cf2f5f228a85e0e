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

/** What trying came to, and how many tries it took; without ways it was given up. */
export interface Tries {
  readonly taken: number;
  readonly ways: readonly TriedWay[] | undefined;
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

  of(spec: CheckedSpec, finding: Finding): Tries | undefined {
    const severity = severityOf(finding);
    if (severity !== 'error' && severity !== 'warning') return undefined;
    const steps = this.specs.waysOut(spec, finding, this.search);
    if (!steps) return undefined;
    for (let taken = 0; ; taken++) {
      const { done, value } = steps.next();
      if (done) return { taken, ways: value.map(wayOf) };
      if (this.left === 0) return { taken, ways: undefined };
      this.left -= 1;
    }
  }
}

/** Grants tries in the order of the report, wherever they were made: several threads together try more than one may. */
export class TriesGranted {
  private left = MOST_TRIES;

  grants({ taken, ways }: Tries): boolean {
    const granted = ways !== undefined && taken <= this.left;
    this.left = granted ? this.left - taken : 0;
    return granted;
  }
}

/** What is said where too much had been tried by then. */
export const TRIES_ENDED: TriedWays = { waysOutTried: [], triesEnded: true };

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
