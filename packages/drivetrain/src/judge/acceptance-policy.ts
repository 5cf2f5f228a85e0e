import { listed } from '@tailshaft/mechanics';
import type { Acceptance } from '../model/vessel.js';
import type { Verdict } from './verdict.js';

/** Who may accept what, and for how long at most, as a workspace sets it. */
export interface AcceptancePolicy {
  /** By the beginning of rule ids, the longest first: `rotation/` before all others. Empty: the usual roles. */
  readonly roles: readonly { readonly rules: string; readonly roles: readonly string[] }[];
  /** Days from the date of an acceptance, or from today where it has none, to its last day. */
  readonly longestDays?: number;
}

export const USUAL_POLICY: AcceptancePolicy = { roles: [] };

/** Words of roles in which somebody answers for a departure; common practice, no source. */
const USUAL_ROLES = [
  ...['surveyor', 'inspector', 'class', 'flag', 'authority', 'naval architect', 'architect', 'designer'],
  ...['engineer', 'superintendent', 'yard', 'manager', 'maker', 'owner', 'master', 'director'],
];

/** The policy of a workspace from the words of its settings; a time that cannot be read sets none. */
export function policyFrom(roles: string, longest: string): AcceptancePolicy {
  const days = daysFrom(longest);
  return { roles: rolesFrom(roles), ...(days === undefined ? {} : { longestDays: days }) };
}

const DAYS: Readonly<Record<string, number>> = { day: 1, week: 7, month: 31, year: 366 };

/** `90 days`, `18 months`, `1 year`; undefined where it is none of these. */
export function daysFrom(written: string): number | undefined {
  const found = /^\s*(\d+)\s*(day|week|month|year)s?\s*$/.exec(written);
  return found ? Number(found[1]) * DAYS[found[2]!]! : undefined;
}

/** `rotation/ class surveyor, flag surveyor; capacity/ naval architect`; roles without a rule are for all rules. */
export function rolesFrom(written: string): AcceptancePolicy['roles'] {
  return written
    .split(';')
    .map(one => one.trim())
    .filter(Boolean)
    .map(one => {
      const [, rules = '', roles = ''] = /^(\S*\/\S*)?\s*(.*)$/.exec(one)!;
      return { rules, roles: roles.split(',').flatMap(role => role.trim().toLowerCase() || []) };
    })
    .sort((one, other) => other.rules.length - one.rules.length);
}

/** What keeps an acceptance from covering a failure, or nothing. */
export function unfitFor(
  { by, because, dated, until }: Acceptance,
  verdict: Pick<Verdict, 'rule' | 'margin'>,
  policy: AcceptancePolicy,
  today: string,
): string | undefined {
  if (!by?.trim() || !because?.trim()) return 'names nobody, or gives no reason';
  const rule = policy.roles.find(one => verdict.rule.startsWith(one.rules));
  const grave = verdict.rule.startsWith('rotation/') || (verdict.margin !== undefined && verdict.margin < 0);
  const roles = rule?.roles ?? (grave ? USUAL_ROLES : undefined);
  if (roles && !roles.some(role => hasWords(by, role)))
    return rule
      ? `is by "${by}", and ${verdict.rule} may be accepted here by ${roles.length > 0 ? `${listed(roles, 'or')} only` : 'nobody'}`
      : `is by "${by}", which names no role: a failure of rotation, or a margin below zero, must be accepted by somebody in a responsible role, such as a surveyor, a naval architect or a maker`;
  const { longestDays } = policy;
  if (longestDays === undefined) return undefined;
  if (until === undefined) return `has no last day, and acceptances last ${longestDays} days at most here`;
  return daysBetween(dated ?? today, until) > longestDays
    ? `lasts until ${until}, and acceptances last ${longestDays} days at most here`
    : undefined;
}

function hasWords(text: string, words: string): boolean {
  return ` ${text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ')} `.includes(` ${words.toLowerCase()} `);
}

function daysBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / 86_400_000;
}
