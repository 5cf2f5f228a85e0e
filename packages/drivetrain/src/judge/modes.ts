import type { Origin } from '@tailshaft/mechanics';
import { likewise } from '../model/reads.js';
import type { ShaftLine } from '../model/vessel.js';
import { type Needed, settles } from './needed.js';
import { neededWords } from './needed-words.js';
import type { Route } from './route.js';
import type { Resting } from './settle.js';
import type { Verdict } from './verdict.js';

/**
 * Of what a check says of a line in each of its modes, what is told is the worst: a failure before what cannot be told, and
 * of what holds the least margin. It names its mode unless every mode comes to the same. `standing` is what a verdict comes
 * to while facts contradict: a mode in which it is withheld is not passed over for one in which it holds.
 */
export function worstOfModes(
  all: readonly Resting[],
  standing: (one: Resting) => Verdict,
): readonly Resting[] {
  if (!all.some(one => one.running)) return all;
  const groups = new Map<string, Resting[]>();
  // Of several verdicts on one subject the first of each mode belong together, and so on.
  const counts = new Map<ShaftLine, Map<string, number>>();
  const keys = all.map(one => {
    const { rule, verdict, running } = one;
    if (!running) return undefined;
    const seen = counts.get(running) ?? new Map<string, number>();
    counts.set(running, seen);
    const subject = `${rule.id} ${verdict.subject}`;
    const nth = seen.get(subject) ?? 0;
    seen.set(subject, nth + 1);
    const key = `${subject} ${nth}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
    return key;
  });
  const told = new Set<string>();
  return all.flatMap((one, index) => {
    const key = keys[index];
    if (key === undefined) return [one];
    if (told.has(key)) return [];
    told.add(key);
    return [worst(groups.get(key)!, standing)];
  });
}

function worst(group: readonly Resting[], standing: (one: Resting) => Verdict): Resting {
  const [first, ...rest] = group.map(one => ({ one, weighs: weight(standing(one)) }));
  const { one: found } = rest.reduce((most, other) => (other.weighs > most.weighs ? other : most), first!);
  const plain = new Set(group.map(one => `${one.verdict.outcome} ${withoutMode(one)}`));
  const told = withOpenOfAll(withNeededOfAll(found, group), group);
  const verdict = { ...told.verdict, ...(plain.size > 1 ? {} : { message: withoutMode(told) }) };
  return { ...told, verdict: likewise({ ...verdict, routes: () => routesOfLine(told) }, told.verdict) };
}

/** Ways out change parts, which a line has in all its modes. */
function routesOfLine({ verdict, running }: Resting): readonly Route[] {
  const routes = verdict.routes();
  return running ? routes.map(one => ({ ...one, title: withoutName(one.title, running) })) : routes;
}

/** What another mode waits for stays open, whatever puts the failure of this one right. */
function withOpenOfAll(found: Resting, group: readonly Resting[]): Resting {
  const { verdict } = found;
  if (verdict.outcome !== 'fails') return found;
  const waits = group.flatMap(one => (one.verdict.outcome === 'cannot tell' ? one.verdict.missing : []));
  if (waits.length === 0) return found;
  return { ...found, verdict: likewise({ ...verdict, open: [...(verdict.open ?? []), ...waits] }, verdict) };
}

/** The figures that would put it right in every mode: one that helps in this mode and fails in another is none. */
function withNeededOfAll(found: Resting, group: readonly Resting[]): Resting {
  const { needed, message, ...rest } = found.verdict;
  if (!needed) return found;
  const balances = group.flatMap(one => one.verdict.balance ?? []);
  const all = new Map<Origin, Needed>();
  for (const one of [found, ...group].flatMap(({ verdict }) => verdict.needed ?? []))
    if (!all.has(one.at) && balances.every(balance => settles(balance, one.at, one.si))) all.set(one.at, one);
  const left = [...all.values()];
  if (left.length === needed.length && left.every((one, at) => one === needed[at])) return found;
  const bare = message.replace(neededWords(needed), '');
  const verdict: Verdict = {
    ...rest,
    message: left.length > 0 ? `${bare}${neededWords(left)}` : bare,
    ...(left.length > 0 ? { needed: left } : {}),
  };
  return { ...found, verdict: likewise(verdict, found.verdict) };
}

/** The message as it would be of a line that has no modes. */
function withoutMode({ verdict, running }: Resting): string {
  return withoutName(verdict.message, running!);
}

function withoutName(text: string, running: ShaftLine): string {
  const suffix = `, ${running.mode!.name}`;
  return text.replaceAll(running.name, running.name.slice(0, -suffix.length));
}

const OUTCOMES: readonly Verdict['outcome'][] = [
  'does not apply',
  'accepted',
  'holds',
  'cannot tell',
  'fails',
];
const SEVERITIES: readonly Verdict['severity'][] = ['note', 'warning', 'error'];

function weight({ outcome, severity, capacity, demand }: Verdict): number {
  const margin = capacity && demand && demand.si !== 0 ? capacity.si / demand.si - 1 : 0;
  const scarce = Number.isFinite(margin) ? 1 / (1 + Math.exp(Math.max(-30, Math.min(30, margin)))) : 0;
  return 10 * OUTCOMES.indexOf(outcome) + 2 * SEVERITIES.indexOf(severity) + scarce;
}
