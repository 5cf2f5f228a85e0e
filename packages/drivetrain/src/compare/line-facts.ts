import { MODE_VOCABULARY, type Mode } from '@tailshaft/vocabulary';
import type { RenameChange, SilentChange, StatementChange } from './change.js';
import { marksMoved } from './evidence.js';
import { type FlatFact, factChanges, factChangeWords, flatFacts } from './facts.js';
import { pairUp } from './pairing.js';
import type { Side, SideLine } from './side.js';

/** What a line says beside its parts: the side that it stands on, and the modes that it runs in. */
export function lineChanges(before: Side, after: Side): (StatementChange | RenameChange | SilentChange)[] {
  return [...after.lines].flatMap(([key, is]) => {
    const was = before.lines.get(key);
    return was ? [...sideMoved(was, is), ...modesMoved(was, is)] : [];
  });
}

function sideMoved(was: SideLine, is: SideLine): (StatementChange | SilentChange)[] {
  const side = ({ line }: SideLine) => flatFacts({ side: line.side }, undefined);
  return [
    ...moved('arrangement', 'shaft line', is.key, side(was), side(is)),
    ...restated(is.key, is.line.name, side(was), side(is)),
  ];
}

function modesMoved(was: SideLine, is: SideLine): (StatementChange | RenameChange | SilentChange)[] {
  const { pairs, removed, added } = pairUp(was.line.modes ?? [], is.line.modes ?? [], {
    name: one => one.name,
    traits: one => new Set([...factsOf(one).values()].map(fact => `${fact.what} ${fact.meaning}`)),
    likeness: 0.5,
  });
  return [
    ...pairs.flatMap(([one, other]) => [
      ...(one.name === other.name ? [] : [renamed(is.key, one.name, other.name)]),
      ...moved('mode', `mode ${other.name}`, is.key, factsOf(one), factsOf(other)),
      ...restated(is.key, `mode ${other.name}`, factsOf(one), factsOf(other)),
    ]),
    ...removed.map(one => ({ ...whole(is.key, 'taken out', one), before: told(one), after: undefined })),
    ...added.map(one => ({ ...whole(is.key, 'added', one), before: undefined, after: told(one) })),
  ];
}

const factsOf = (mode: Mode) => flatFacts(mode, MODE_VOCABULARY);

const told = (mode: Mode) =>
  [mode.name, ...[...factsOf(mode).values()].map(fact => `${fact.what} ${fact.written}`)].join(' ');

/** A mode as a whole: what it is judged by goes or comes with it. */
function whole(subject: string, fate: 'added' | 'taken out', mode: Mode) {
  return {
    kind: 'statement' as const,
    about: 'mode' as const,
    subject,
    weight: 30,
    words: `mode ${fate}: ${told(mode)}`,
    // Less is judged where one is gone.
    ...(fate === 'added'
      ? { placeAfter: mode.origin }
      : { placeBefore: mode.origin, tendency: 'relaxed' as const }),
  };
}

const renamed = (subject: string, from: string, to: string): RenameChange => ({
  kind: 'rename',
  of: 'mode',
  from,
  to,
  subject,
  weight: 70,
  words: `mode ${from} renamed ${to}`,
});

type Facts = ReadonlyMap<string, FlatFact>;

function moved(
  about: 'arrangement' | 'mode',
  of: string,
  subject: string,
  was: Facts,
  is: Facts,
): StatementChange[] {
  return factChanges(was, is).map(change => {
    const [old, now] = [was.get(change.what)?.origin, is.get(change.what)?.origin];
    return {
      kind: 'statement',
      about,
      subject,
      before: change.before,
      after: change.after,
      weight: 44,
      words: `${of}: ${factChangeWords(change)}`,
      ...(old ? { placeBefore: old } : {}),
      ...(now ? { placeAfter: now } : {}),
    };
  });
}

function restated(subject: string, of: string, was: Facts, is: Facts): SilentChange[] {
  return [...is].flatMap(([what, now]): SilentChange[] => {
    const old = was.get(what);
    const marks = old && marksMoved(old, now);
    if (!marks) return [];
    return [
      {
        kind: 'silent',
        what: 'evidence',
        subject,
        weight: marks.weaker ? 31 : 75,
        words: `${of}, ${what} ${now.written}: ${marks.words}`,
        ...(old.origin ? { placeBefore: old.origin } : {}),
        ...(now.origin ? { placeAfter: now.origin } : {}),
      },
    ];
  });
}
