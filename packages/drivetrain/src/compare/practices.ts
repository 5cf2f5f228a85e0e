import { CRITERIA, ENTRY_VOCABULARY, type Row, wordsOf } from '@tailshaft/vocabulary';
import type { Practice, Vessel } from '../model/vessel.js';
import type { StatementChange } from './change.js';
import { type FlatFact, flatFacts } from './facts.js';
import { criterionTendency } from './tendency.js';

/**
 * What the practice of a vessel asks: who may accept what and for how long, how grave failures are, and those of its criteria
 * in whose place the vessel chose its own. The others are compared as the criteria of the vessel.
 */
export function practiceChanges(before: Vessel, after: Vessel): StatementChange[] {
  const [was, is] = [before.practice, after.practice];
  if (!was && !is) return [];
  const rows: Change[] =
    was && is
      ? [
          term(was, is),
          ...setAside(before, after),
          ...keyed('right to accept', rightsOf(was), rightsOf(is), rightTendency),
          ...keyed('gravity', gravitiesOf(was), gravitiesOf(is), gravityTendency),
        ]
      : [whole(was, is)];
  return rows
    .filter(({ from, to }) => from !== to)
    .map(({ about, from, to, tendency }) => ({
      kind: 'statement',
      about,
      subject: after.name,
      before: from,
      after: to,
      weight: tendency === 'tightened' ? 71 : 21.5,
      words: `${was && is ? `practice ${is.name}` : 'practice'}: ${from ?? 'not said'} → ${to ?? 'not said'}`,
      ...(tendency ? { tendency } : {}),
      ...(was ? { placeBefore: was.origin } : {}),
      ...(is ? { placeAfter: is.origin } : {}),
    }));
}

interface Change {
  readonly about: 'practice' | 'right to accept' | 'gravity';
  readonly from: string | undefined;
  readonly to: string | undefined;
  readonly tendency: StatementChange['tendency'];
}

const said = (field: string) => wordsOf(ENTRY_VOCABULARY.practice, field);

/** A vessel that leaves its practice, or comes under one. */
function whole(was: Practice | undefined, is: Practice | undefined): Change {
  const judged = (one: Practice | undefined) => (one ? `judged by ${one.name}` : 'judged by none');
  return { about: 'practice', from: judged(was), to: judged(is), tendency: is ? 'tightened' : 'relaxed' };
}

/** How long an acceptance may last; the same term in another unit is the same. */
function term(was: Practice, is: Practice): Change {
  const of = ({ facts }: Practice) => facts.longestAcceptance;
  const words = (one: Practice) => of(one) && `${said('longestAcceptance')} ${of(one)!.written}`;
  const longest = (one: Practice) => of(one)?.value?.si ?? Number.POSITIVE_INFINITY;
  return {
    about: 'right to accept',
    from: words(was),
    to: longest(was) === longest(is) ? words(was) : words(is),
    tendency: longest(is) > longest(was) ? 'relaxed' : 'tightened',
  };
}

/** Criteria of the practice that do not judge this vessel, and are what its own are held against. */
function setAside(before: Vessel, after: Vessel): Change[] {
  const of = ({ practice }: Vessel) => flatFacts(practice!.facts, ENTRY_VOCABULARY.practice);
  const judging = ({ criteria }: Vessel) => flatFacts(criteria ?? {}, CRITERIA);
  const [old, now] = [of(before), of(after)];
  const [judgedBefore, judgedNow] = [judging(before), judging(after)];
  const rows: readonly Row[] = CRITERIA.rows;
  return [...new Set([...old.keys(), ...now.keys()])].flatMap((what): Change[] => {
    const [was, is] = [old.get(what), now.get(what)];
    const isCriterion = rows.some(row => row.field === (is ?? was)!.row?.field);
    const isTold = judgedBefore.get(what)?.meaning !== judgedNow.get(what)?.meaning;
    if (!isCriterion || isTold || was?.meaning === is?.meaning) return [];
    const words = (one: FlatFact | undefined) => one && `${what} ${one.written}`;
    const tendency = was ? criterionTendency(was, is) : 'tightened';
    return [{ about: 'practice', from: words(was), to: words(is), tendency }];
  });
}

type Said = ReadonlyMap<string, { readonly key: string; readonly words: string }>;

function rightsOf(one: Practice | undefined): Said {
  return new Map(
    (one?.facts.acceptances ?? []).map(({ rules, by }) => {
      const key = rolesIn(by?.value).join(', ');
      return [rules, { key, words: `${said('acceptances')} "${rules}" ${key || 'by nobody'}` }];
    }),
  );
}

function gravitiesOf(one: Practice | undefined): Said {
  return new Map(
    (one?.facts.gravities ?? []).map(({ rules, weight }) => {
      const key = weight?.value ?? 'unknown';
      return [rules, { key, words: `${said('gravities')} "${rules}" ${key}` }];
    }),
  );
}

function keyed(
  about: Change['about'],
  old: Said,
  now: Said,
  tendencyOf: (was: string | undefined, is: string | undefined) => StatementChange['tendency'],
): Change[] {
  return [...new Set([...old.keys(), ...now.keys()])].map(rules => {
    const [was, is] = [old.get(rules), now.get(rules)];
    return { about, from: was?.words, to: is?.words, tendency: tendencyOf(was?.key, is?.key) };
  });
}

const rolesIn = (text: string | undefined) =>
  (text ?? '')
    .split(',')
    .map(one => one.trim())
    .filter(Boolean)
    .sort();

/** Fewer of the same roles is stricter. What only one side says cannot be held against the usual roles. */
function rightTendency(was: string | undefined, is: string | undefined): StatementChange['tendency'] {
  if (was === undefined || is === undefined) return 'chosen otherwise';
  const had = rolesIn(was);
  return rolesIn(is).every(role => had.includes(role)) ? 'tightened' : 'relaxed';
}

function gravityTendency(was: string | undefined, is: string | undefined): StatementChange['tendency'] {
  return was !== undefined && is !== 'error' ? 'relaxed' : 'tightened';
}
