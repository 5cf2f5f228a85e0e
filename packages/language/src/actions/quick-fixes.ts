import {
  findRule,
  type Missing,
  otherParts,
  otherSizes,
  type Route,
  type RouteKind,
  suitedParts,
  type Verdict,
  wantedParts,
} from '@tailshaft/drivetrain';
import { capital, listed, plural } from '@tailshaft/mechanics';
import { textEditsFor, textEditsForSpelled } from '../edit/model-edits.js';
import { problemEdits } from '../edit/problem-edits.js';
import type { TextEdit } from '../edit/text-edit.js';
import type { Finding } from '../project/finding.js';
import { aboutOf } from '../project/finding-place.js';
import { hostOf, placeOf } from '../reading/place.js';
import { editsAsFound } from './as-found.js';
import type { Consequence, Worse } from './consequence.js';
import type { Offer, TextOf } from './offer.js';

/** What an edit of the document would lead to. */
export type Judge = (edits: readonly TextEdit[]) => Consequence;

/** The same, with each edit judged once. */
export function onceEach(judge: Judge): Judge {
  const known = new Map<string, Consequence>();
  return edits => {
    const key = JSON.stringify(edits);
    const had = known.get(key) ?? judge(edits);
    known.set(key, had);
    return had;
  };
}

/**
 * The ways out of a finding: the corrections of a text, then the routes of a rule. Each route has been tried: it is offered
 * only when the result reads and the finding is gone, and what else gets worse stands in its title.
 */
export function cures(finding: Finding, textOf: TextOf, judge: Judge): Offer[] {
  return ended(curing(finding, textOf, judge));
}

/**
 * The ways out of a finding and of those that are told under it. One that the others put right already is not put right a
 * second time: a line that mirrors another follows it.
 */
export function* curingAll(...[finding, ...rest]: Parameters<typeof curing>): Generator<void, Offer[]> {
  const [, judge] = rest;
  const offers = yield* curing(finding, ...rest);
  for (const one of finding.folded ?? []) {
    const { verdict, vessel } = one;
    const isSettled =
      verdict &&
      offers.some(({ route, edits }) => route && judge(edits).settles(verdict, vessel?.vessel.name));
    if (!isSettled) offers.push(...(yield* curing(one, ...rest)));
  }
  return toldApart(once(offers));
}

/** What is offered for two lines in the same words says which of them it is for. */
export function toldApart(offers: readonly Offer[]): Offer[] {
  const count = new Map<string, number>();
  for (const { title } of offers) count.set(title, (count.get(title) ?? 0) + 1);
  return offers.map(one => {
    const { verdict, vessel } = one.finding ?? {};
    const line = verdict && vessel && aboutOf(verdict, vessel.vessel).line;
    return line && count.get(one.title)! > 1 ? { ...one, title: `${line.name}: ${one.title}` } : one;
  });
}

/**
 * The same of one finding, with a rest before each route that is tried: whoever runs it can see to other things there, or give
 * up. Sizes and parts are searched for only where nothing else does, if `search` says so.
 */
function* curing(
  finding: Finding,
  textOf: TextOf,
  judge: Judge,
  search: 'always' | 'in need' = 'always',
): Generator<void, Offer[]> {
  const { problem, verdict, vessel } = finding;
  const offers: Offer[] = [];
  for (const choice of problem?.choices ?? []) {
    const edits = problemEdits(problem!, choice, finding.place.uri, textOf(finding.place.uri));
    const preferred = problem!.choices!.length === 1;
    if (edits.length > 0)
      offers.push({
        title: choice.title,
        kind: 'quickfix',
        edits,
        finding,
        ...(preferred ? { preferred } : {}),
      });
  }
  const routes = (verdict?.routes() ?? []).filter(one => kindOf(one, verdict!) !== 'asks');
  offers.push(...(yield* successes(routes, finding, textOf, judge)));
  if (verdict && vessel && !verdict.asFound)
    offers.push(...(yield* successes(suitedParts(verdict, vessel), finding, textOf, judge)));
  const enough = search === 'in need' && offers.some(one => !one.makesWorse);
  // Nothing is searched for a rule that no choice of parts and sizes can settle: its page says why.
  if (verdict && vessel && !verdict.asFound && !findRule(verdict.rule)?.noCure && !enough) {
    // What no rule names is searched for: other sizes, and other parts where nothing else has been found.
    const sizes = otherThan(offers, otherSizes(verdict, vessel), textOf);
    offers.push(...(yield* searched(sizes, finding, textOf, judge, SEARCHED)));
    if (offers.length === 0)
      offers.push(...(yield* searched(otherParts(verdict, vessel), finding, textOf, judge, SEARCHED)));
    // A part that nobody has found yet comes last: only where all else makes something worse.
    if (!offers.some(one => !one.makesWorse))
      offers.push(...(yield* searched(wantedParts(verdict, vessel), finding, textOf, judge, WANTED)));
  }
  return once(offers).sort(bestFirst);
}

/** Sizes for which nothing is offered yet: where the rule names one that does, another of the same thing is no further way. */
function otherThan(offers: readonly Offer[], routes: readonly Route[], textOf: TextOf): Route[] {
  const place = ({ uri, start, end }: TextEdit) => (end > start ? `${uri}:${start}-${end}` : undefined);
  const known = new Set(offers.filter(one => !one.makesWorse).flatMap(({ edits }) => edits.map(place)));
  known.delete(undefined);
  return routes.filter(({ edits }) => !textEditsFor(edits, textOf).every(one => known.has(place(one))));
}

/**
 * What costs nothing else stands before what does, then what the rule itself prefers and names, and of these what puts other
 * failures right as well.
 */
function bestFirst(one: Offer, other: Offer): number {
  const rank = ({ makesWorse, preferred, searched }: Offer) =>
    (makesWorse ? 4 : 0) + (preferred ? 0 : 2) + (searched ? 1 : 0);
  return rank(one) - rank(other) || (other.mends ?? 1) - (one.mends ?? 1);
}

/** So many ways out are offered that a search found, and so many parts to be found. */
const SEARCHED = 3;
const WANTED = 2;

function ended<T>(steps: Generator<void, T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

function* searched(...given: Parameters<typeof successes>): Generator<void, Offer[]> {
  return (yield* successes(...given)).map(offer => ({ ...offer, searched: true as const }));
}

function* successes(
  routes: readonly Route[],
  finding: Finding,
  textOf: TextOf,
  judge: Judge,
  most = Number.POSITIVE_INFINITY,
): Generator<void, Offer[]> {
  const found: Offer[] = [];
  for (const route of routes) {
    if (found.length >= most) break;
    yield;
    const offer = tried(route, finding, textOf, judge);
    if (offer) found.push(offer);
  }
  return found;
}

/** What is missing for a verdict, each datum as an open question at the place where it belongs. */
export function questions(finding: Finding, textOf: TextOf, judge: Judge): Offer[] {
  const { verdict } = finding;
  if (!verdict) return [];
  const asked = verdict.missing.flatMap(gap => {
    if (gap.at) return [];
    // An example that is a value would be an answer, not a question.
    const text = gap.example.includes('unknown') ? gap.example : 'unknown';
    const edits = textEditsForSpelled([{ do: 'set', host: gap.host, property: gap.property, text }], textOf);
    const title = `Add ${gap.property} as an open question: ${gap.what}`;
    // A whole part may be spoken for already by the arrangement before: a property never is.
    const reads = isProperty(gap) || (edits.length > 0 && judge(edits).reads);
    return edits.length > 0 && reads
      ? [{ title, kind: 'quickfix', edits, finding, asks: true } satisfies Offer]
      : [];
  });
  const stubs = verdict.routes().flatMap(route => {
    if (kindOf(route, verdict) !== 'asks' || verdict.missing.some(gap => writesGap(route, gap))) return [];
    const edits = textEditsFor(route.edits, textOf);
    return edits.length > 0
      ? [{ title: route.title, kind: 'quickfix', edits, finding, asks: true } satisfies Offer]
      : [];
  });
  return once([...stubs, ...asked]);
}

function isProperty({ host, property }: Missing): boolean {
  return hostOf(host)?.vocabulary.rows.some(one => one.words === property) ?? false;
}

/** What a route is: as it says itself, or as the ways out of its rule are. */
export function kindOf(route: Route, verdict: Verdict): RouteKind {
  if (route.kind) return route.kind;
  if (route.stub) return 'asks';
  return findRule(verdict.rule)?.curesRecord ? 'corrects the record' : 'changes the design';
}

function tried(route: Route, finding: Finding, textOf: TextOf, judge: Judge): Offer | undefined {
  const verdict = finding.verdict!;
  const edits = textEditsFor(route.edits, textOf);
  if (edits.length === 0) return undefined;
  const kind = kindOf(route, verdict);
  // The vessel as found is a record: what is to be built is written where it is proposed.
  if (kind === 'changes the design' && editsAsFound(edits, finding)) return undefined;
  const judged = judge(edits);
  const { reads, settles } = judged;
  const open = reads ? settles(verdict, finding.vessel?.vessel.name) : undefined;
  if (!open) return undefined;
  const { worse, mended } = judged;
  const others = worse.filter(
    one => (one.rule !== verdict.rule || one.subject !== verdict.subject) && !isCopied(one, route, judged),
  );
  const preferred = route.preferred === true && others.length === 0 && open.length === 0;
  return {
    title: `${worseFirst(route.title, thenWorse(others))}${withIt(finding, edits, judged)}${stillOpen(open)} (${kind})`,
    kind: 'quickfix',
    edits,
    finding,
    route: kind,
    ...(others.length > 0 ? { makesWorse: true } : {}),
    ...(mended > 1 ? { mends: mended } : {}),
    ...(preferred ? { preferred } : {}),
  };
}

/** A part to be found that fails where the part it is like fails already: nothing is lost by it. */
function isCopied({ rule, subject, outcome }: Worse, { edits }: Route, { ofEntry }: Consequence): boolean {
  return edits.some(
    edit =>
      edit.do === 'declare like' &&
      edit.name === subject &&
      ofEntry(edit.entry).some(one => one.rule === rule && one.outcome === outcome),
  );
}

/** Lines that mirror the one that is changed, and of which the same is said: they are put right with it. */
function withIt(
  { verdict, vessel: judged, folded = [] }: Finding,
  edits: readonly TextEdit[],
  { settles }: Consequence,
): string {
  if (!judged || folded.length === 0) return '';
  const { line } = aboutOf(verdict!, judged.vessel);
  const names = folded.flatMap(one => {
    if (one.verdict?.rule !== verdict!.rule) return [];
    const { line: other } = aboutOf(one.verdict, judged.vessel);
    if (!line || other?.mirrors !== line.name) return [];
    const { uri, start, end } = placeOf(other.origin);
    const isOwn = edits.some(edit => edit.uri === uri && edit.start >= start && edit.end <= end);
    return !isOwn && settles(one.verdict, judged.vessel.name) ? [other.name] : [];
  });
  return names.length > 0 ? `; ${listed(names)} ${plural(names.length, 'follows', 'follow')}` : '';
}

/** What was not known before, and is not known then. */
function stillOpen(open: readonly Missing[]): string {
  const what = [...new Set(open.map(one => one.what))];
  if (what.length === 0) return '';
  return `; ${listed(what)} ${plural(what.length, 'stays an open question', 'stay open questions')}`;
}

/** What gets worse stands behind what is done: a menu cuts off the end of a long title. */
function worseFirst(title: string, worse: string): string {
  const end = title.indexOf(': ');
  if (end < 0 || worse === '') return title + worse;
  const follows = title.slice(end + 2);
  return `${title.slice(0, end)}${worse}. ${capital(follows)}`;
}

/** What a way out makes worse, in its title: the first two by name, the rest by number. */
export function thenWorse(worse: readonly Worse[]): string {
  if (worse.length === 0) return '';
  const said = worse.map(one => {
    const title = findRule(one.rule)?.title ?? one.rule;
    return `"${title}" ${one.deeper ? 'fails by more' : one.outcome === 'fails' ? 'fails' : 'cannot tell'}`;
  });
  const shown = [...new Set(said)];
  const more = shown.length > 2 ? ` and ${shown.length - 2} more get worse` : '';
  return `; but then ${shown.slice(0, 2).join(' and ')}${more}`;
}

/** Whether a route does no more than to leave a blank for this gap. */
function writesGap(route: Route, gap: Missing): boolean {
  const [edit] = route.edits;
  return (
    route.edits.length === 1 && edit?.do === 'set' && edit.host === gap.host && edit.property === gap.property
  );
}

/** Each edit once, the first time it is offered. */
export function once(offers: readonly Offer[]): Offer[] {
  const seen = new Set<string>();
  return offers.filter(({ edits }) => {
    const key = JSON.stringify(edits);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
