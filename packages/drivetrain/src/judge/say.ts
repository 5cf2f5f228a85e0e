import type { Origin, Value } from '@tailshaft/mechanics';
import { percent } from '@tailshaft/mechanics';
import type { RuleInfo } from '../rules/rule.js';
import type { Balance } from './needed.js';
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
  /** What is held against the criterion over what that allows, where no capacity and demand say it. */
  readonly over?: number;
  /** What is compared, where it is not the capacity with the demand. */
  readonly balance?: Balance;
  /** Share that this judgement is uncertain by, where it is not that of the rule. */
  readonly estimate?: number;
  readonly workings?: readonly Value[];
  readonly steps?: readonly string[];
  readonly explains?: Verdict['explains'];
  /** Data that another half of the check waits for, whatever puts this failure right. */
  readonly open?: Verdict['open'];
  /** Facts that contradict each other: whatever rests on one cannot be told until that is settled. */
  readonly disputes?: Verdict['disputes'];
  /** Facts that what happened to their part outweighs: nothing holds on them. */
  readonly outweighs?: Verdict['outweighs'];
  /** The requirement that is judged. */
  readonly answers?: Origin;
  readonly byAnswer?: Verdict['byAnswer'];
  readonly routes?: () => readonly Route[];
}

/** The four things a check can say of its subject, with the rule's name and severity filled in. */
export function sayFor(rule: Speaking, subject: string) {
  const make = (wanted: Outcome, bare: Said, missing: Verdict['missing'] = [], margined = 0): Verdict => {
    const over = bare.over ?? overOf(bare, margined);
    const given = wanted === 'fails' ? atTheLimit(rule, bare, over) : bare;
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
      ...(judged && usable && over !== undefined && Number.isFinite(over) ? { over } : {}),
      ...(judged && usable ? balanceOf(said, margined) : {}),
      workings: said.workings ?? [],
      steps: said.steps ?? [],
      explains: said.explains ?? [],
      ...(said.open?.length ? { open: said.open } : {}),
      ...(said.disputes ? { disputes: said.disputes } : {}),
      ...(said.outweighs ? { outweighs: said.outweighs } : {}),
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
    cannotTell: (needs: Needs, said: Said) =>
      make('cannot tell', { ...said, workings: withKnown(said.workings, needs.known) }, needs.missing),
    /**
     * Holds when capacity is at least demand × (1 + wanted margin); fails otherwise.
     * A number that is not finite, on either side, cannot be judged. What misses an estimate or a guide by no more than
     * that is good for is told as at the limit, a warning at most.
     */
    compare({ failMessage, wanted = 0, ...said }: Compared): Verdict {
      const margin = marginOf(said.capacity, said.demand);
      if (margin === undefined) return make('cannot tell', withoutNumber(said));
      if (margin >= wanted) return make('holds', said, [], wanted);
      return make('fails', { ...said, message: failMessage }, [], wanted);
    },
    /** Holds when what differs differs by no more than it may; nothing is divided, so that no difference at all is none. */
    within({ failMessage, difference, differs, allowed, ...said }: Within): Verdict {
      const over = Math.abs(difference) / allowed;
      const compared: Said = {
        ...said,
        over,
        ...(differs ? { balance: { same: [differs], within: allowed } } : {}),
      };
      if (!(over > 1 + 1e-9)) return make('holds', compared);
      return make('fails', { ...compared, message: failMessage });
    },
  };
}

/** What a check says it worked out, and what else was on the way. */
function withKnown(workings: readonly Value[] = [], known: ReadonlySet<Value>): readonly Value[] {
  return known.size === 0 ? workings : [...new Set([...workings, ...known])];
}

/** A comparison, with what is said when it fails. */
export interface Compared extends Said {
  readonly capacity: Value;
  readonly demand: Value;
  readonly failMessage: string;
  /** Margin that the capacity must have over the demand; none where it need only suffice. */
  readonly wanted?: number;
}

/** A difference, in whatever unit, with what it may be. */
export interface Within extends Said {
  readonly difference: number;
  /** The difference with its working, where it is of declared figures that could be others. */
  readonly differs?: Value;
  readonly allowed: number;
  readonly failMessage: string;
}

function balanceOf({ balance, capacity, demand }: Said, wanted: number): Pick<Verdict, 'balance'> {
  if (balance) return { balance };
  return capacity && demand ? { balance: { more: capacity, less: demand, wanted } } : {};
}

type Speaking = Pick<RuleInfo, 'id' | 'severity' | 'criterion' | 'estimate'>;

/** Uncertainty of an estimate or a guide that states none of its own. */
export const USUAL_ESTIMATE = 0.02;

/** What is held against the criterion over what that allows: above one it fails. */
function overOf({ capacity, demand }: Said, wanted: number): number | undefined {
  const margin = capacity && demand && marginOf(capacity, demand);
  return margin === undefined ? undefined : (1 + wanted) / (1 + margin);
}

/**
 * What misses an estimate or a guide by no more than that is good for is told as at the limit, a warning at most. A limit
 * that the author of the spec stated has no such room.
 */
function atTheLimit(rule: Speaking, said: Said, over: number | undefined): Said {
  const chosen = typeof said.criterion === 'object' && said.criterion.chosenBy === 'author';
  const estimate = said.estimate ?? (chosen ? undefined : rule.estimate);
  if (estimate === undefined || over === undefined || !(over > 1 && over <= 1 + estimate)) return said;
  const severity = said.severity ?? rule.severity;
  const { message } = said;
  const lead = /^[^:.]{1,60}: /.exec(message)?.[0] ?? '';
  return {
    ...said,
    severity: severity === 'error' ? 'warning' : severity,
    message: `${lead}at the limit, short by no more than the ${percent(estimate)} accuracy of this estimate: ${message.slice(lead.length)}`,
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
