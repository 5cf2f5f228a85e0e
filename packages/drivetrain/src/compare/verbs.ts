import type { SilentChange } from './change.js';
import { factChangeWords, partFactChanges } from './facts.js';
import { type KnownPart, partsOf } from './parts.js';
import type { Side } from './side.js';

/**
 * What a line says that it does with a part, against what it does: another verb for the same part, a part said to be
 * retained whose facts are others, one said to be modified to what is not known.
 */
export function verbChanges(before: Side, after: Side, revision: boolean): SilentChange[] {
  const [old, now] = [partsOf(before), partsOf(after)];
  return [...now].flatMap(([key, is]) => {
    const was = old.get(key);
    const said = revision ? sayings(is, was) : sayings(is, keptFrom(is));
    const earlier = was && !revision ? sayings(was, keptFrom(was)) : [];
    const told = said.filter(one => !earlier.includes(one));
    const [from, to] = [was?.part.change, is.part.change];
    if (!revision && from && from !== to && from !== 'new' && to !== 'new')
      told.unshift(`${is.slot} was said to be ${from}, and is said to be ${to} now`);
    return told.map(
      (words): SilentChange => ({
        kind: 'silent',
        what: 'verb and value',
        subject: is.line.key,
        weight: 28,
        words,
        placeAfter: is.part.origin,
        ...(was ? { placeBefore: was.part.origin } : {}),
      }),
    );
  });
}

function sayings(is: KnownPart, from: KnownPart | undefined): string[] {
  if (!from) return [];
  const { change } = is.part;
  if (change !== 'retained' && change !== 'modified') return [];
  const facts = partFactChanges(from.facts, is.facts);
  if (change === 'retained')
    return facts.length > 0
      ? [`${is.slot} is said to be retained, with other facts: ${facts.map(factChangeWords).join('; ')}`]
      : [];
  const open = facts.filter(one => is.facts.get(one.what)?.meaning === 'unknown');
  return open.length > 0
    ? [`${is.slot} is said to be modified, to what is not known: ${open.map(one => one.what).join(', ')}`]
    : [];
}

/** The same part in the line that this one revises. */
function keptFrom({ line, slot }: KnownPart): KnownPart | undefined {
  const old = line.line.before;
  if (!old) return undefined;
  const side = { lines: new Map([[old.path, { key: old.path, line: old, analysis: line.analysis }]]) };
  return partsOf(side).get(`${old.path} ${slot}`);
}
