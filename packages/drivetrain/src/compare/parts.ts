import type { Part, Role } from '../model/part.js';
import type { PartChange, PartFate } from './change.js';
import { type FlatFact, factChangeWords, factsOfPart, partFactChanges, signature } from './facts.js';
import type { Side, SideLine } from './side.js';

/** A part with the facts it is compared by. */
export interface KnownPart {
  readonly part: Part;
  readonly line: SideLine;
  /** `gear`, or `shaft 2` for the second of its kind. */
  readonly slot: string;
  readonly facts: ReadonlyMap<string, FlatFact>;
}

/**
 * What became of every part, line by line, kept ones too. Where the later side is a revision of the earlier one in the
 * same text, its own words say which parts are replaced.
 */
export function partChanges(before: Side, after: Side, revision: boolean): PartChange[] {
  const [old, now] = [partsOf(before), partsOf(after)];
  const changes: PartChange[] = [];
  for (const [key, was] of old) {
    const is = now.get(key);
    const moved = is && movedFrom(was, is, old, now);
    changes.push(moved && !revision ? movedChange(was, is, moved) : changeOf(was, is, revision));
  }
  for (const [key, is] of now) if (!old.has(key)) changes.push(changeOf(undefined, is, revision));
  return changes;
}

/** Every part of a side by its line and its place in the chain of its kind. */
export function partsOf(side: Pick<Side, 'lines'>): Map<string, KnownPart> {
  const parts = new Map<string, KnownPart>();
  for (const line of side.lines.values()) {
    const count = new Map<Role, number>();
    for (const part of line.line.chain) {
      const number = (count.get(part.role) ?? 0) + 1;
      count.set(part.role, number);
      const slot = number > 1 ? `${part.role} ${number}` : part.role;
      parts.set(`${line.key} ${slot}`, { part, line, slot, facts: factsOfPart(part) });
    }
  }
  return parts;
}

/** Weights by role: what decides the direction and the loads first. */
const ROLE_WEIGHT: Readonly<Record<Role, number>> = {
  engine: 0,
  motor: 0,
  gear: 0.1,
  transfer: 0.2,
  propeller: 0.3,
  shaft: 0.4,
  coupling: 0.5,
};
const FATE_WEIGHT: Readonly<Record<PartFate, number>> = {
  'moved between sides': 28,
  removed: 56,
  replaced: 57,
  added: 58,
  modified: 59,
  kept: 90,
};

function changeOf(was: KnownPart | undefined, is: KnownPart | undefined, revision: boolean): PartChange {
  const facts = was && is ? partFactChanges(was.facts, is.facts) : [];
  const renamed = was && is && (isOtherMake(was, is, facts) || (revision && is.part.change === 'replaced'));
  const fate: PartFate = !was
    ? 'added'
    : !is
      ? 'removed'
      : renamed
        ? 'replaced'
        : facts.length
          ? 'modified'
          : 'kept';
  return make(fate, was, is, facts, fateWords(fate, was, is, facts));
}

/** Whether another part is named. One that only moved between catalogue and line, fact by fact, is the same part. */
function isOtherMake(was: KnownPart, is: KnownPart, facts: PartChange['facts']): boolean {
  const [old, now] = [was.part, is.part];
  if (old.entry?.name === now.entry?.name) return false;
  const moved = old.entry === undefined || now.entry === undefined;
  const [from, to] = [old.source?.value, now.source?.value];
  return !moved || facts.length > 0 || from?.title !== to?.title || from?.dated !== to?.dated;
}

function fateWords(
  fate: PartFate,
  was: KnownPart | undefined,
  is: KnownPart | undefined,
  facts: PartChange['facts'],
): string {
  const slot = (is ?? was)!.slot;
  if (fate === 'added') return `${slot} added: ${title(is!)}`;
  if (fate === 'removed') return `${slot} removed: ${title(was!)}`;
  if (fate === 'replaced') {
    const [from, to] = [title(was!), title(is!)];
    // Another such part is seldom quite such: what differs of it is told.
    const same = was!.part.entry?.name === is!.part.entry?.name;
    const told = same && facts.length > 0 ? `; ${factsTold(facts)}` : '';
    return from === to
      ? `${slot} replaced by another such: ${to}${told}`
      : `${slot} replaced: ${from} → ${to}${told}`;
  }
  if (fate === 'kept') return `${slot} kept: ${title(is!)}`;
  const named = is!.part.entry ? ` ${is!.part.entry.name}` : '';
  return `${slot}${named} modified: ${factsTold(facts)}`;
}

function factsTold(facts: PartChange['facts']): string {
  const told = facts.slice(0, FACTS_TOLD).map(factChangeWords).join('; ');
  return facts.length > FACTS_TOLD ? `${told}; and ${facts.length - FACTS_TOLD} more facts` : told;
}

const FACTS_TOLD = 6;

/** The part's name with what is fitted of it: `gear Alder-63 2.04:1 clutch A`, or what it is where it has none. */
function title({ part, facts }: KnownPart): string {
  const told = ['ratio', 'ahead clutch', 'at'].flatMap(what => {
    const fact = facts.get(what);
    if (!fact) return [];
    return [
      what === 'ratio' ? fact.written : what === 'at' ? `at ${fact.written}` : `clutch ${fact.written}`,
    ];
  });
  if (part.entry) return [part.entry.name, ...told].join(' ');
  const facts3 = ['kind', 'material', 'hand', 'blades', 'diameter', 'pitch'].flatMap(what => {
    const fact = facts.get(what);
    return fact ? [`${what} ${fact.written}`] : [];
  });
  return [...told, ...facts3].join(', ') || 'declared in place';
}

/**
 * The line whose part this now is: fact by fact the one that another line had before. Only where that line has lost it,
 * got ours for it, or got another make; a part that merely became equal to its neighbour did not move.
 */
function movedFrom(
  was: KnownPart,
  is: KnownPart,
  old: ReadonlyMap<string, KnownPart>,
  now: ReadonlyMap<string, KnownPart>,
): KnownPart | undefined {
  const here = identity(is);
  if (identity(was) === here) return undefined;
  for (const [key, other] of old) {
    if (other.slot !== is.slot || other.line.key === is.line.key) continue;
    if (other.line.line.arrangement !== was.line.line.arrangement || identity(other) !== here) continue;
    const left = now.get(key);
    const swapped = left && identity(left) === identity(was);
    if (!left || swapped || left.part.entry?.name !== other.part.entry?.name) return other;
  }
  return undefined;
}

/** What tells one part from another: its serial number where it has one, else everything declared of it. */
function identity({ part, facts }: KnownPart): string {
  const serial = facts.get('serial');
  return serial ? `serial ${serial.meaning}` : `${part.entry?.name ?? ''}\n${signature(facts)}`;
}

function movedChange(was: KnownPart, is: KnownPart, other: KnownPart): PartChange {
  const words = `${is.slot} moved here from ${other.line.line.name}: ${title(is)}`;
  return {
    ...make('moved between sides', was, is, partFactChanges(was.facts, is.facts), words),
    from: other.line.key,
  };
}

function make(
  fate: PartFate,
  was: KnownPart | undefined,
  is: KnownPart | undefined,
  facts: PartChange['facts'],
  words: string,
): PartChange {
  const { part, line } = (is ?? was)!;
  return {
    kind: 'part',
    fate,
    role: part.role,
    subject: line.key,
    ...(was ? { before: title(was), placeBefore: was.part.origin } : {}),
    ...(is ? { after: title(is), placeAfter: is.part.origin } : {}),
    facts,
    weight: FATE_WEIGHT[fate] + ROLE_WEIGHT[part.role],
    words,
  };
}
