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
     * A number that is not finite, on either side, cannot be judged.
     */
    compare(said: Said & { capacity: Value; demand: Value; failMessage: string; wanted?: number }): Verdict {
      const margin = marginOf(said.capacity, said.demand);
      if (margin === undefined) return make('cannot tell', withoutNumber(said));
      return margin >= (said.wanted ?? 0)
        ? make('holds', said)
        : make('fails', { ...said, message: said.failMessage });
    },
  };
}

function criterionOf(
  { criterion }: Said,
  rule: Pick<RuleInfo, 'criterion'>,
): Pick<Verdict, 'criterion' | 'criterionChosenBy'> {
  if (criterion === undefined || typeof criterion === 'string')
    return { criterion: criterion ?? rule.criterion };
  return { criterion: criterion.said, criterionChosenBy: criterion.chosenBy };
}
