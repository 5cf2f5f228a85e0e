import type { LineAnalysis } from '../analysis/line.js';
import { isDisputed, isUncovered } from '../judge/all-together.js';
import { analysesOf, type Check, checksOf, concluded, judgeVessel, saidBy } from '../judge/judge.js';
import type { Resting } from '../judge/settle.js';
import { NO_ROUTES, type Verdict } from '../judge/verdict.js';
import { Kept, KeptBy, recorded } from '../model/reads.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { RULES } from '../rules/index.js';
import type { Asked } from './asked.js';
import type { StudyCase } from './result.js';
import { Views } from './viewed.js';

/** One candidate while it is judged. */
export interface Judging {
  readonly vessel: Vessel;
  readonly analysisOf: (line: ShaftLine) => LineAnalysis;
  /** Whether only all verdicts together, with what each rests on, tell what fails. */
  readonly isUncovered: boolean;
  /** What one check says of it, by the number of the check. */
  readonly said: (check: number) => readonly Resting[];
  /** The verdicts that `check` would tell, from all that was said. */
  readonly verdicts: () => Verdict[];
  /** Varied places that a check looked at. */
  readonly slotsOf: (check: number) => readonly number[];
  readonly leaves: readonly number[];
  /** Candidates of one shape have the same varied places. */
  readonly shape: number;
  /** How many checks there are. */
  readonly checks: number;
}

/** So many shapes of a vessel are remembered; what is of yet another one is judged by itself. */
const SHAPES = 16;

/** Judges candidates by the ordinary checks, and keeps what one said for every other in which it looks at the same. */
export class Judge {
  readonly #shapes: { readonly views: Views; bench?: Bench }[] = [];

  constructor(private readonly of: StudyCase) {}

  /** Prepares to judge a candidate; nothing is worked out until somebody asks. Another one is judged when this one is done. */
  judging(vessel: Vessel): Judging {
    for (const [at, shape] of this.#shapes.entries()) {
      const viewed = shape.views.of(vessel);
      if (!viewed) continue;
      if (shape.bench?.vessel !== viewed.vessel) shape.bench = new Bench(viewed.vessel, this.of);
      return shape.bench.judging(viewed.leaves, at);
    }
    if (this.#shapes.length === SHAPES) return new Bench(vessel, this.of).judging([], SHAPES);
    this.#shapes.push({ views: new Views(vessel) });
    return this.judging(vessel);
  }
}

/** So many results are kept of one check that looked at the same places. */
const SAID = 160;

/** The checks of one vessel, which candidates take the shape of one after the other. */
class Bench {
  readonly #kept = new Kept();
  readonly #said = new KeptBy<Check>(SAID);
  /** What they said of candidates whose lines the checks do not cover, with the facts that it rests on. */
  readonly #saidUncovered = new KeptBy<Check>(SAID);
  readonly #analysisOf: (line: ShaftLine) => LineAnalysis;

  constructor(
    readonly vessel: Vessel,
    private readonly of: StudyCase,
  ) {
    this.#analysisOf = analysesOf(vessel);
  }

  judging(leaves: readonly number[], shape: number): Judging {
    const { vessel } = this;
    const { catalogue, today, policy } = this.of;
    const all = () => this.#checks();
    const uncovered = this.#kept.once('uncovered', () => isUncovered(vessel));
    const made = (check: number) => {
      const one = all()[check]!;
      // What a verdict is worth may depend on the facts that it rests on only where the checks do not cover a line.
      return uncovered
        ? this.#saidUncovered.made(one, () => saidBy(one).map(light))
        : this.#said.made(one, () => saidBy(one).map(lightest));
    };
    const said = (check: number) => made(check).value as readonly Resting[];
    return {
      vessel,
      analysisOf: this.#analysisOf,
      isUncovered: uncovered,
      said,
      verdicts: () => {
        const spoken = all().map((_, check) => said(check));
        // Which facts each rests on is not kept: a contradiction asks for that.
        return spoken.some(isDisputed)
          ? judgeVessel(vessel, catalogue, today, RULES, policy)
          : concluded(spoken.flat(), vessel, today, RULES, policy);
      },
      slotsOf: check => made(check).places,
      leaves,
      shape,
      get checks() {
        return all().length;
      },
    };
  }

  #checks(): readonly Check[] {
    const { catalogue, today } = this.of;
    return this.#kept.once('checks', () =>
      // Nobody is told in a study what figure would put a failure right.
      checksOf(this.vessel, catalogue, today, RULES, this.#analysisOf).map(({ at, ...check }) => ({
        ...check,
        at: { subject: at.subject, place: at.place },
      })),
    );
  }
}

/** What counts in a study of what a check said: the words and the working of it would fill the memory. */
function light(one: Resting): Resting {
  const { capacity, demand, balance: _, ...verdict } = one.verdict;
  const bare = {
    ...verdict,
    ...(capacity ? { capacity: withoutWorking(capacity) } : {}),
    ...(demand ? { demand: withoutWorking(demand) } : {}),
  };
  const slim = { ...bare, message: '', workings: [], related: [], steps: [], routes: NO_ROUTES };
  return { ...one, verdict: slim };
}

function lightest(one: Resting): Resting {
  return { ...light(one), reads: NOTHING_READ };
}

function withoutWorking<V extends object>(value: V): V {
  const { working: _, ...bare } = value as V & { readonly working?: unknown };
  return bare as V;
}

const NOTHING_READ = recorded(() => undefined).reads;

/** Verdicts of one check that rule a candidate out whatever the other checks say. */
export function rulesOut(said: readonly Resting[], asked: Asked): Verdict[] {
  return said.flatMap(({ verdict }) =>
    verdict.outcome === 'fails' && asked.concerns(verdict) && asked.mustHold(verdict) ? [verdict] : [],
  );
}
