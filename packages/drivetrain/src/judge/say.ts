import type { Origin, Value } from '@tailshaft/mechanics';
import type { RuleInfo } from '../rules/rule.js';
import type { Needs } from './needs.js';
import type { Route } from './route.js';
import { isUsable, withoutNumber } from './unusable.js';
import {
  type Criterion,
  marginOf,
  NO_ROUTES,
  type Outcome,
  type Related,
  type Severity,
  type Verdict,
} from './verdict.js';

/** What a check adds to its verdict. */
export interface Said {
  readonly place: Origin;
  readonly message: string;
  /** Only where this finding weighs differently from the rule's usual severity. */
  readonly severity?: Severity;
  readonly related?: readonly Related[];
  /** Where it differs from the rule's own words, or the spec may choose it. */
  readonly criterion?: string | Criterion;
  readonly capacity?: Value;
  readonly demand?: Value;
  readonly workings?: readonly Value[];
  readonly steps?: readonly string[];
  readonly explains?: Verdict['explains'];
  /** Facts that contradict each other: whatever rests on one cannot be told until that is settled. */
  readonly disputes?: Verdict['disputes'];
  /** The requirement that is judged. */
  readonly answers?: Origin;
  readonly byAnswer?: Verdict['byAnswer'];
  readonly routes?: () => readonly Route[];
}

/** The four things a check can say of its subject, with the rule's name and severity filled in. */
export function sayFor(rule: Pick<RuleInfo, 'id' | 'severity' | 'criterion'>, subject: string) {
  const make = (wanted: Outcome, given: Said, missing: Verdict['missing'] = []): Verdict => {
    const judged = wanted === 'holds' || wanted === 'fails';
    // A judgement stands on its numbers; a sentence that judges nothing must still not state one that is none.
    const usable = judged ? isUsable(given) : isUsable({ message: given.message });
    const outcome = usable ? wanted : 'cannot tell';
    const said: Said = usable ? given : withoutNumber(given);
    const margin = said.capacity && said.demand ? marginOf(said.capacity, said.demand) : undefined;
    return {
      rule: rule.id,
      outcome,
      severity: said.severity ?? rule.severity,
      subject,
      place: said.place,
      message: said.message,
      related: said.related ?? [],
      missing,
      ...criterionOf(said, rule),
      ...(said.capacity ? { capacity: said.capacity } : {}),
      ...(said.demand ? { demand: said.demand } : {}),
      ...(margin === undefined ? {} : { margin }),
      workings: said.workings ?? [],
      steps: said.steps ?? [],
      explains: said.explains ?? [],
      ...(said.disputes ? { disputes: said.disputes } : {}),
      ...(said.answers ? { answers: said.answers } : {}),
      ...(said.byAnswer?.length ? { byAnswer: said.byAnswer } : {}),
      routes: said.routes ?? NO_ROUTES,
    };
  };

  return {
    holds: (said: Said) => make('holds', said),
    /** `unusable`: what is written but cannot be used, so that open questions about it are folded under this. */
    fails: (said: Said, unusable: Verdict['missing'] = []) => make('fails', said, unusable),
    doesNotApply: (said: Said) => make('does not apply', said),
    /** Names what is missing; offers to write each gap as an open question. */
    cannotTell: (needs: Needs, said: Said) => make('cannot tell', said, needs.missing),
    /**
     * Holds when capacity is at least demand × (1 + wanted margin); fails otherwise.
     * A number that is not finite, on either side, cannot be judged. What misses an estimate or a guide by no more than
     * that is good for is told as at the limit, a warning at most.
     */
    compare({ failMessage, wanted = 0, estimate, ...said }: Compared): Verdict {
      const margin = marginOf(said.capacity, said.demand);
      if (margin === undefined) return make('cannot tell', withoutNumber(said));
      if (margin >= wanted) return make('holds', said);
      const short = (1 + wanted) / (1 + margin) - 1;
      if (estimate === undefined || short > estimate) return make('fails', { ...said, message: failMessage });
      const severity = said.severity ?? rule.severity;
      return make('fails', {
        ...said,
        severity: severity === 'error' ? 'warning' : severity,
        message: atTheLimit(failMessage, estimate),
      });
    },
  };
}

/** A comparison, with what is said when it fails. */
export interface Compared extends Said {
  readonly capacity: Value;
  readonly demand: Value;
  readonly failMessage: string;
  /** Margin that the capacity must have over the demand; none where it need only suffice. */
  readonly wanted?: number;
  /** Share that the criterion is uncertain by, where it is an estimate or a guide and nobody's stated limit. */
  readonly estimate?: number;
}

/** Uncertainty of an estimate or a guide that states none of its own. */
export const USUAL_ESTIMATE = 0.02;

function atTheLimit(message: string, estimate: number): string {
  const lead = /^[^:.]{1,60}: /.exec(message)?.[0] ?? '';
  return `${lead}at the limit, short by no more than the ${Math.round(estimate * 100)} % that this estimate is good for: ${message.slice(lead.length)}`;
}

function criterionOf(
  { criterion }: Said,
  rule: Pick<RuleInfo, 'criterion'>,
): Pick<Verdict, 'criterion' | 'criterionChosenBy'> {
  if (criterion === undefined || typeof criterion === 'string')
    return { criterion: criterion ?? rule.criterion };
  return { criterion: criterion.said, criterionChosenBy: criterion.chosenBy };
}
