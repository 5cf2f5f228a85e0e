import type { LineAnalysis } from '../analysis/line.js';
import { isDisputed, isUncovered } from '../judge/all-together.js';
import { analysesOf, type Check, checksOf, concluded, judgeVessel, saidBy } from '../judge/judge.js';
import type { Resting } from '../judge/settle.js';
import { NO_ROUTES, type Verdict } from '../judge/verdict.js';
import { recorded, slotted } from '../model/reads.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { RULES } from '../rules/index.js';
import type { Asked } from './asked.js';
import type { StudyCase } from './result.js';
import { SlotMemo } from './slot-memo.js';
import { Views } from './viewed.js';

/** One candidate while it is judged. */
export interface Judging {
  readonly vessel: Vessel;
  readonly analysisOf: (line: ShaftLine) => LineAnalysis;
  /** What one check says of it, by the number of the check. */
  readonly said: (check: number) => readonly Resting[];
  /** The verdicts that `check` would tell, from all that was said. */
  readonly verdicts: () => Verdict[];
  /** Varied places that a check looked at. */
  readonly slotsOf: (check: number) => ReadonlySet<number>;
  readonly leaves: readonly number[];
  /** How many checks there are. */
  readonly checks: number;
}

/** Judges candidates by the ordinary checks, and keeps what one said for every other in which it looks at the same. */
export class Judge {
  #views: Views | undefined;
  #memos: SlotMemo<readonly Resting[]>[] = [];
  #slots: ReadonlySet<number>[] = [];

  constructor(private readonly of: StudyCase) {}

  /** Prepares to judge a candidate; nothing is worked out until somebody asks. */
  judging(vessel: Vessel): Judging {
    // A line in one of its modes is made anew for each candidate: nothing that was said of another one is of it.
    const plain = !vessel.arrangements.some(({ lines }) => lines.some(line => line.modes));
    if (plain) this.#views ??= new Views(vessel);
    const viewed = plain ? this.#views?.of(vessel) : undefined;
    if (viewed?.grown) this.#memos = [];
    const seen = viewed?.vessel ?? vessel;
    const analysisOf = analysesOf(seen);
    let checks: readonly Check[] | undefined;
    const { catalogue, today, policy } = this.of;
    const all = () => {
      checks ??= checksOf(seen, catalogue, today, RULES, analysisOf);
      return checks;
    };
    const own = new Map<number, readonly Resting[]>();
    const said = (check: number): readonly Resting[] => {
      const had = own.get(check);
      if (had) return had;
      const memo = viewed && this.#memo(check);
      const found = memo?.find(viewed!.leaves);
      if (found) {
        own.set(check, found);
        return found;
      }
      const { value, slots } = slotted(() => saidBy(all()[check]!));
      const slim = value.map(light);
      memo?.keep(slots, viewed!.leaves, slim);
      this.#slots[check] = slots;
      own.set(check, slim);
      return slim;
    };
    return {
      vessel: seen,
      analysisOf,
      said,
      verdicts: () => {
        const spoken = all().map((_, check) => said(check));
        // Which facts each rests on is not kept: only a contradiction, or what the checks do not cover, asks for that.
        return isUncovered(seen) || spoken.some(isDisputed)
          ? judgeVessel(vessel, catalogue, today, RULES, policy)
          : concluded(spoken.flat(), seen, today, RULES, policy);
      },
      slotsOf: check => this.#slots[check] ?? new Set(),
      leaves: viewed?.leaves ?? [],
      get checks() {
        return all().length;
      },
    };
  }

  #memo(check: number): SlotMemo<readonly Resting[]> {
    this.#memos[check] ??= new SlotMemo();
    return this.#memos[check];
  }
}

/** What counts in a study of what a check said: the words and the working of it would fill the memory. */
function light({ rule, verdict }: Resting): Resting {
  const slim = { ...verdict, message: '', workings: [], related: [], steps: [], routes: NO_ROUTES };
  return { rule, reads: NOTHING_READ, verdict: slim };
}

const NOTHING_READ = recorded(() => undefined).reads;

/** Verdicts of one check that rule a candidate out whatever the other checks say. */
export function rulesOut(said: readonly Resting[], asked: Asked): boolean {
  return said.some(
    ({ verdict }) => verdict.outcome === 'fails' && asked.concerns(verdict) && asked.mustHold(verdict),
  );
}
