import type { Value } from '@tailshaft/mechanics';
import { listed, uncapital } from '@tailshaft/mechanics';
import { OPEN } from '@tailshaft/vocabulary';
import { homeOfFact, isOpen } from '../model/declared-fact.js';
import { type Fact, isWeak } from '../model/fact.js';
import { type AbsentRead, likewise, Reads, readsOf, recorded } from '../model/reads.js';
import type { ShaftLine } from '../model/vessel.js';
import type { Rule, Verdicts } from '../rules/rule.js';
import { cannotTellWords } from './cannot-tell-words.js';
import { isolated, type Judged } from './isolate.js';
import { neededFor } from './needed.js';
import { neededWords } from './needed-words.js';
import type { Missing, Verdict } from './verdict.js';

/** A verdict with everything that was looked at to reach it. */
export interface Resting {
  readonly verdict: Verdict;
  readonly reads: Reads;
  readonly rule: Rule;
  /** The line in the one mode that this is said of, of a line that has several. */
  readonly running?: ShaftLine;
}

/**
 * Runs one check and withholds what its reading does not bear out: a verdict never holds on a fact that is open, left out,
 * doubted or out of range, and a check that falls silent over an open question asks it. What fails stays a failure.
 */
export function settled(rule: Rule, about: Judged, check: () => Verdicts): Resting[] {
  const { value: said, reads } = recorded(() => isolated(rule, about, check));
  const told = said.map(verdict => {
    const own = readsOf(verdict, reads);
    return { verdict: withNeeded(withheld(rule, verdict, own), said, about), reads: own, rule };
  });
  const silent = said.length === 0 ? [reads, ...reads.silent] : reads.silent;
  return [...told, ...stillOpen(rule, about, told, silent)];
}

/** A failing comparison with the figures that would put it right, and nothing else that the same check said wrong. */
function withNeeded(verdict: Verdict, all: readonly Verdict[], { choosable }: Judged): Verdict {
  if (verdict.outcome !== 'fails' || !verdict.balance || !choosable) return verdict;
  const others = all.flatMap(one =>
    one.subject === verdict.subject && one.outcome === 'holds' && one.balance ? [one.balance] : [],
  );
  const needed = neededFor(verdict.balance, choosable(), others);
  if (needed.length === 0) return verdict;
  return likewise({ ...verdict, needed, message: `${verdict.message}${neededWords(needed)}` }, verdict);
}

/** What was looked at for subjects of which nothing was said, and is not known: it is asked, once. */
function stillOpen(rule: Rule, about: Judged, told: readonly Resting[], silent: readonly Reads[]): Resting[] {
  const asked = new Set(told.flatMap(({ verdict }) => verdict.missing.map(one => one.at)));
  if (silent.every(one => one.isPlain)) return [];
  const open = [...new Set(silent.flatMap(openIn))].filter(
    one => !isAskedBy(rule, one) && !asked.has(one.origin),
  );
  const kinds = unsaidKinds(rule, told, silent);
  if (open.length === 0 && kinds.length === 0) return [];
  const reads = new Reads();
  for (const one of open) reads.note(one, false);
  for (const one of kinds) reads.noteAbsent(one);
  const missing = [...open.map(missingFact), ...kinds.map(missingRead)];
  return [{ verdict: ask(rule, about, missing), reads, rule }];
}

/** Kinds of things that nobody says, by which a check would have been chosen or not. */
function unsaidKinds(rule: Rule, told: readonly Resting[], silent: readonly Reads[]): readonly AbsentRead[] {
  const asked = told.flatMap(({ verdict }) => verdict.missing);
  const isAsked = ({ host, property }: AbsentRead) =>
    asked.some(one => one.host === host && one.property === property);
  const absent = new Set(silent.flatMap(one => [...one.absent]));
  return [...absent].filter(one => one.selects && !standsWithout(rule, one.property) && !isAsked(one));
}

function withheld(rule: Rule, verdict: Verdict, reads: Reads): Verdict {
  if (reads.isPlain) return verdict;
  const doubted = rule.judgesEvidence ? [] : [...reads.notable].filter(isDoubted);
  const outside = [...reads.notable].filter(one => one.outOfRange !== undefined);
  if (verdict.outcome === 'fails') {
    const failing = outside.length > 0 ? { ...verdict, outOfRange: outside } : verdict;
    const told = doubted.length > 0 ? ifTrue(failing, doubted) : failing;
    return withOpen(told, rule, reads, doubted);
  }
  if (verdict.outcome !== 'holds' && verdict.outcome !== 'does not apply') return verdict;
  const open = unanswered(rule, reads);
  const absent = verdict.outcome === 'holds' ? absentIn(rule, reads) : [];
  if (open.length > 0 || absent.length > 0) {
    const missing = [...open.map(missingFact), ...absent.map(missingRead)];
    // What does not rest on the question stands, whatever its answer is.
    const { capacity, demand, workings } = verdict;
    const sides = [demand, capacity].filter(one => one?.working && !workings.includes(one)) as Value[];
    return {
      ...ask(rule, verdict, missing),
      workings: [...sides, ...workings],
      related: verdict.related,
    };
  }
  if (verdict.outcome !== 'holds') return verdict;
  if (outside.length > 0) {
    return {
      ...verdict,
      outcome: 'cannot tell',
      message: `${verdict.message} No verdict rests on ${listed(outside.map(wordsOf))}, which is outside the plausible range for such a part.`,
      missing: outside.map(missingFact),
    };
  }
  return doubted.length > 0 ? unproven(verdict, doubted) : verdict;
}

/** What it would wait for if it did not fail: that stays open, whatever puts the failure right. */
function withOpen(verdict: Verdict, rule: Rule, reads: Reads, doubted: readonly Fact<unknown>[]): Verdict {
  const waits = [
    ...unanswered(rule, reads).map(missingFact),
    ...absentIn(rule, reads).map(missingRead),
    ...doubted.map(inDoubt),
  ];
  return waits.length > 0 ? { ...verdict, open: [...(verdict.open ?? []), ...waits] } : verdict;
}

/** What would hold, on facts that nobody has proven. */
function unproven(verdict: Verdict, doubted: readonly Fact<unknown>[]): Verdict {
  return {
    ...verdict,
    outcome: 'cannot tell',
    message: `${verdict.message} This holds only if ${listed(doubted.map(wordsOf))} is true: prove it by a plate, a drawing or a measurement.`,
    missing: doubted.map(inDoubt),
  };
}

function inDoubt(fact: Fact<unknown>): Missing {
  const gap = missingFact(fact);
  const more = fact.outdated
    ? `as it is now (${fact.written} was ${fact.outdated})`
    : `by more than ${fact.evidence?.kind}`;
  return { ...gap, what: `${gap.what} ${more}` };
}

/** What fails, told with what it rests on. */
function ifTrue(verdict: Verdict, doubted: readonly Fact<unknown>[]): Verdict {
  return { ...verdict, message: `${verdict.message} This is so if ${listed(doubted.map(wordsOf))} is true.` };
}

/** The open question that a check comes to where something that it looked at is not known. */
function ask(rule: Rule, { subject, place }: Judged, missing: readonly Missing[]): Verdict {
  const what = uncapital(rule.title);
  return {
    rule: rule.id,
    outcome: 'cannot tell',
    severity: rule.severity,
    subject,
    place: missing[0]?.at ?? place,
    message: cannotTellWords(`${subject.split('.')[1] ?? subject}: whether ${what}`, missing),
    related: [],
    missing,
    criterion: rule.criterion,
    workings: [],
    steps: [],
    explains: [],
    routes: () => missing.filter(one => !one.at).map(stub),
  };
}

function stub({ what, host, property }: Missing) {
  return {
    title: `Write "${property} unknown": the sheet then lists ${what} as an open question`,
    edits: [{ do: 'set', host, property, value: OPEN } as const],
    stub: true,
  };
}

/** An assumption of the author where the product would estimate is as good as its own: it is told, and judged with. */
function isDoubted(fact: Fact<unknown>): boolean {
  if (fact.outdated !== undefined) return true;
  return isWeak(fact) && !(fact.evidence?.kind === 'assumed' && homeOfFact(fact)?.estimated);
}

function unanswered(rule: Rule, reads: Reads): Fact<unknown>[] {
  return openIn(reads).filter(one => !isAskedBy(rule, one));
}

function openIn(reads: Reads): Fact<unknown>[] {
  return [...reads.notable].filter(one => isOpen(one) && !homeOfFact(one)?.estimated);
}

/** Some checks are about the open question itself, or stand whatever its answer is. */
function isAskedBy(rule: Rule, fact: Fact<unknown>): boolean {
  return standsWithout(rule, homeOfFact(fact)?.property ?? '');
}

function standsWithout({ standsWithout: words }: Rule, property: string): boolean {
  return words === 'anything' || (words?.includes(property) ?? false);
}

function absentIn(rule: Rule, reads: Reads): AbsentRead[] {
  return [...reads.absent].filter(one => one.takenAs === undefined && !standsWithout(rule, one.property));
}

function missingRead({ host, property, of }: AbsentRead): Missing {
  return { what: wordsFor(property, of), host, property, example: 'unknown' };
}

/** `the kind of the propeller`; words that are no noun are quoted. */
function wordsFor(property: string, of: string | undefined): string {
  const said = NO_NOUN.test(property) ? `"${property}"` : `the ${property}`;
  return of && of !== property ? `${said} of the ${of}` : said;
}

const NO_NOUN =
  /^(at|for|from|by|running|turns|passes|chosen|said|limited|measured)\b|\b(by|for|from|least|most)$/;

export function missingFact(fact: Fact<unknown>): Missing {
  const home = homeOfFact(fact);
  const property = home?.property ?? fact.written;
  return {
    what: wordsFor(property, home?.of),
    host: home?.host ?? fact.origin,
    property,
    example: 'unknown',
    at: fact.origin,
  };
}

export function wordsOf(fact: Fact<unknown>): string {
  const property = homeOfFact(fact)?.property;
  const kind = fact.outdated ?? fact.evidence?.kind;
  return `${property ? `the ${property} ` : ''}${fact.written}${kind ? ` (${kind})` : ''}`;
}

export function isJudged({ outcome }: Verdict): boolean {
  return outcome === 'holds' || outcome === 'fails';
}
