import { ruleWords } from '../judge/rule-words.js';
import type { Verdict } from '../judge/verdict.js';
import type { Role } from '../model/part.js';
import { silentTopics } from '../rules/silent-topics.js';
import type { OpenChange, PartChange } from './change.js';
import { partsOf } from './parts.js';
import type { Side } from './side.js';

/**
 * What could not be told of a part that changed, neither before nor now: a coarser propeller whose load nobody can work
 * out is no harmless change because no verdict moved.
 */
export function untoldChanges(before: Side, after: Side, parts: readonly PartChange[]): OpenChange[] {
  const changes: OpenChange[] = [];
  const [old, now] = [untoldBy(before), untoldBy(after)];
  for (const part of parts) {
    if (isEased(part, before, after)) continue;
    if (
      !REAL.has(part.fate) ||
      (part.fate === 'modified' && part.facts.every(one => one.handed === true || NO_LOAD.test(one.what)))
    )
      continue;
    const rules = [...(now.get(part.subject) ?? [])].filter(
      ([rule]) => concerns(rule, part.role) && old.get(part.subject)?.has(rule),
    );
    if (rules.length === 0) continue;
    const told = rules.map(([rule, why]) => `${ruleWords(rule)}${why}`);
    changes.push({
      kind: 'open',
      subject: part.subject,
      role: part.role,
      rules: rules.map(([rule]) => rule),
      weight: 29,
      words: `${part.words}: not assessed before or now: ${told.join('; ')}`,
      ...(part.placeAfter ? { placeAfter: part.placeAfter } : {}),
    });
  }
  return changes;
}

const REAL = new Set<PartChange['fate']>(['modified', 'replaced', 'added']);

/** A thicker shaft is the better for whatever could not be told of its strength and its spans. */
function isEased({ role, fate, facts, subject }: PartChange, before: Side, after: Side): boolean {
  if (role !== 'shaft' || fate !== 'modified' || facts.some(one => one.what !== 'diameter')) return false;
  const of = (side: Side) => {
    const fact = partsOf(side).get(`${subject} shaft`)?.facts.get('diameter')?.value as
      | { si?: number }
      | undefined;
    return fact?.si;
  };
  const [was, is] = [of(before), of(after)];
  return was !== undefined && is !== undefined && is > was;
}

/** Facts that move no load: which way round a part is, and what identifies it. */
const NO_LOAD =
  /^(hand|set for hand|ahead clutch|pump set for|shift cable|serial|flywheel|expected output|rotation.*|accessory .*)$/;

/** By line: rules that cannot tell, or say nothing for want of anything declared, with why. */
function untoldBy(side: Side): Map<string, Map<string, string>> {
  const found = new Map<string, Map<string, string>>();
  const note = (line: string, rule: string, why: string) => {
    const rules = found.get(line) ?? new Map<string, string>();
    found.set(line, rules);
    if (!rules.has(rule)) rules.set(rule, why);
  };
  const lineOf = (subject: string) =>
    [...side.lines.keys()].find(key => subject === key || subject.startsWith(`${key}.`));
  for (const { subject, verdict } of side.verdicts) {
    const line = lineOf(subject);
    if (line && verdict.outcome === 'cannot tell') note(line, verdict.rule, wanting(verdict));
  }
  const all = side.verdicts.map(one => one.verdict);
  for (const topic of silentTopics(side.vessel, all)) {
    for (const subject of topic.subjects) {
      const line = [...side.lines.values()].find(one => one.line.path === subject)?.key;
      for (const rule of topic.rules) if (line) note(line, rule, ' (not assessed, nothing declared)');
    }
  }
  return found;
}

function wanting({ missing }: Verdict): string {
  const [first, ...more] = new Set(missing.map(one => one.what));
  if (first === undefined) return '';
  return ` (for lack of ${first}${more.length > 0 ? ` and ${more.length} more` : ''})`;
}

/** Loads of a part that a change of it moves; the parts beside it are judged by rules of their own. */
const CONCERNS: Readonly<Record<Role, RegExp>> = {
  propeller: /^(propeller\/(absorbed-power|blade-area|tip-clearance|tip-speed)|capacity\/retained-propeller)/,
  shaft: /^shafting\/(diameter|bearing-span|torsion|combined)|^interface\/torsional-stress/,
  gear: /^capacity\/(gear-input|clutch-holding|rating)/,
  engine: /^capacity\/(gear-input|engine-duty)|^shafting\/diameter|^propeller\/absorbed-power/,
  motor: /^capacity\/(gear-input|motor)|^shafting\/diameter|^propeller\/absorbed-power/,
  transfer: /^capacity\/transfer/,
  coupling: /^capacity\/coupling/,
};

function concerns(rule: string, role: Role): boolean {
  return CONCERNS[role].test(rule);
}
