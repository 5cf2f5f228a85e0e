import type { Origin } from '@tailshaft/mechanics';
import { likewise } from '../model/reads.js';
import type { Rule, Verdicts } from '../rules/rule.js';
import type { Choosable } from './needed.js';
import { NO_ROUTES, type Verdict } from './verdict.js';

/** Whom a rule judges, and where that stands. */
export interface Judged {
  readonly subject: string;
  readonly place: Origin;
  /** The figures of its parts. */
  readonly choosable?: () => Choosable;
}

/**
 * What one rule says of one subject. A fault of ours in it costs just that verdict: it *cannot tell*, says so with what
 * a report needs, and all other rules and subjects keep theirs.
 */
export function isolated(rule: Rule, { subject, place }: Judged, check: () => Verdicts): readonly Verdict[] {
  try {
    const said = check();
    if (said === undefined) return [];
    return (Array.isArray(said) ? (said as readonly Verdict[]) : [said as Verdict]).map(withSafeRoutes);
  } catch (error) {
    return [brokeOff(rule, { subject, place }, error)];
  }
}

/** How the message of every verdict begins that a fault took. */
export const BROKE_OFF = 'This check stopped because of a fault in Tailshaft';

function brokeOff(rule: Rule, { subject, place }: Judged, error: unknown): Verdict {
  return {
    rule: rule.id,
    outcome: 'cannot tell',
    severity: rule.severity,
    subject,
    place,
    message: `${BROKE_OFF}: whether this holds is not known: "${rule.title}". Check it by hand, and report the fault with this spec (${rule.id}: ${saidBy(error)}).`,
    related: [],
    missing: [],
    criterion: rule.criterion,
    workings: [],
    steps: [`Fault in ${rule.id} on ${subject}: ${saidBy(error)}`, ...callsOf(error)],
    explains: [],
    routes: NO_ROUTES,
  };
}

/** Ways out are worked out later, when somebody asks; one that breaks off, or has no number to write, is not offered. */
function withSafeRoutes(verdict: Verdict): Verdict {
  if (verdict.routes === NO_ROUTES) return verdict;
  const routes = () => {
    try {
      return verdict.routes().filter(route => !NO_NUMBER.test(route.title));
    } catch {
      return [];
    }
  };
  return likewise({ ...verdict, routes }, verdict);
}

/** What a size out of all bounds is told as: every way out says in its title what it writes. */
const NO_NUMBER = /\b(?:NaN|Infinity)\b/;

function saidBy(error: unknown): string {
  const said = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  return said.split('\n')[0]!.slice(0, 160);
}

/** The functions that were at work, without places on the disk. */
function callsOf(error: unknown): string[] {
  const stack = error instanceof Error ? (error.stack ?? '') : '';
  const calls = [...stack.matchAll(/^ +at (?:async )?([\w.$<> ]+) \(/gm)].slice(0, 5).map(one => one[1]!);
  return calls.length > 0 ? [`At work: ${calls.join(' < ')}`] : [];
}
