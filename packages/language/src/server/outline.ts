import {
  type Counts,
  countsOf,
  findRule,
  type Outcome,
  type Severity,
  type Verdict,
  worstFirst,
} from '@tailshaft/drivetrain';
import { DocumentState, delayNextTick, type LangiumDocument } from 'langium';
import type { Connection, Location } from 'vscode-languageserver';
import type { JudgedVessel } from '../project/project.js';
import { placeOf } from '../reading/place.js';
import { onDocument } from './handlers.js';
import { linesOf } from './lines.js';
import { locationOf } from './places.js';
import type { TailshaftServices } from './services.js';
import { wholeWorkspace } from './workspace/whole-workspace.js';

/** Asks for the vessels of one file with everything judged of them. */
export const OUTLINE = 'tailshaft/outline';
/** Asks for the same of all files that were read so far, or, when it asks for `all`, of every file once it is read. */
export const VESSELS = 'tailshaft/vessels';

export interface OutlineCheck {
  readonly rule: string;
  readonly title: string;
  readonly outcome: Outcome;
  readonly severity: Severity;
  readonly message: string;
  readonly subject: string;
  readonly margin?: number;
  readonly location?: Location;
}

/** A vessel, arrangement or line: how its checks stand, those on itself, and what is inside it. */
export interface OutlineNode {
  readonly kind: 'vessel' | 'arrangement' | 'line';
  readonly name: string;
  readonly title?: string;
  /** `proposed.Port`; the name of a vessel. */
  readonly path: string;
  readonly location?: Location;
  /** Of everything inside: checks, not findings. */
  readonly counts: Counts;
  /** An arrangement as found, which another one revises: a record, of which nothing asks to be done. */
  readonly asFound?: boolean;
  /** How many of those that fail are errors, and how many warnings; the others are notes. */
  readonly errors: number;
  readonly warnings: number;
  /** What asks for attention first: the gravest that fails, or else what cannot be told. */
  readonly worst?: string;
  readonly checks: readonly OutlineCheck[];
  readonly children: readonly OutlineNode[];
}

export interface Outline {
  readonly uri: string;
  readonly vessels: readonly OutlineNode[];
}

/** Outlines of closed files, of which nothing else is kept. */
const kept = new WeakMap<LangiumDocument, string>();
/** Who shows no tree of vessels pays for none. */
const wanting = new WeakSet<TailshaftServices>();

/** Makes the outline of a closed file while everything of it is known, as text: objects would take three times the room. */
export function keepOutline(services: TailshaftServices, document: LangiumDocument): void {
  forgetOutline(document);
  if (wanting.has(services) && services.project.summary(document).vessels.length > 0)
    kept.set(document, JSON.stringify(outlineOf(services, document)));
}

export function forgetOutline(document: LangiumDocument): void {
  kept.delete(document);
}

export function answerOutlineRequests(connection: Connection, services: TailshaftServices): void {
  connection.onRequest(
    OUTLINE,
    onDocument(services, 'the outline', document => outlineOf(services, document)),
  );
  connection.onRequest(VESSELS, async (wanted?: { readonly all?: boolean }): Promise<Outline[]> => {
    if (wanted?.all) await wholeWorkspace(services);
    wanting.add(services);
    const outlines: Outline[] = [];
    for (const document of services.shared.workspace.LangiumDocuments.all.toArray()) {
      if (services.project.summary(document).vessels.length === 0) continue;
      const had = kept.get(document);
      outlines.push(had ? JSON.parse(had) : await madeOutline(services, document));
    }
    return outlines.sort((one, other) => (one.uri < other.uri ? -1 : 1));
  });
}

/** The outline of a file that was read before anybody wanted one; whoever types gets the word between two files. */
async function madeOutline(services: TailshaftServices, document: LangiumDocument): Promise<Outline> {
  const { TextDocuments } = services.shared.workspace;
  if (TextDocuments.get(document.uri.toString())) return outlineOf(services, document);
  await delayNextTick();
  const outline = outlineOf(services, document);
  if (document.state >= DocumentState.Validated) {
    kept.set(document, JSON.stringify(outline));
    services.project.rest(document);
  }
  return outline;
}

export function outlineOf(services: TailshaftServices, document: LangiumDocument): Outline {
  return {
    uri: document.uri.toString(),
    vessels: services.project.check(document).vessels.map(one => vesselNode(services, one)),
  };
}

function vesselNode(services: TailshaftServices, judged: JudgedVessel): OutlineNode {
  const documents = services.shared.workspace.LangiumDocuments;
  const { vessel, verdicts } = judged;
  const claimed = new Set<Verdict>();
  const node = (
    kind: OutlineNode['kind'],
    named: { readonly name: string; readonly title?: string; readonly nameOrigin: object },
    path: string,
    all: readonly Verdict[],
    children: readonly OutlineNode[],
  ): OutlineNode => {
    const own = all.filter(one => !claimed.has(one));
    for (const one of own) claimed.add(one);
    const location = locationOf(placeOf(named.nameOrigin), documents);
    return {
      kind,
      name: named.name,
      ...(named.title ? { title: named.title } : {}),
      path,
      ...(location ? { location } : {}),
      counts: countsOf(all),
      ...gravity(all),
      ...(kind === 'arrangement' && all.length > 0 && all.every(one => one.asFound) ? { asFound: true } : {}),
      checks: worstFirst(own).map(one => checkOf(one, locationOf(placeOf(one.place), documents))),
      children,
    };
  };
  const lines = linesOf(judged);
  const arrangements = vessel.arrangements.map(arrangement => {
    const inside = lines
      .filter(one => one.arrangement === arrangement)
      .map(one => node('line', one.line, one.line.path, one.verdicts, []));
    const own = verdicts.filter(
      one => one.subject === arrangement.path || one.subject.startsWith(`${arrangement.path}.`),
    );
    return node('arrangement', arrangement, arrangement.path, own, inside);
  });
  return node('vessel', vessel, vessel.name, verdicts, arrangements);
}

/** Errors and warnings among what fails, and the check that should be seen to first. */
function gravity(all: readonly Verdict[]): Pick<OutlineNode, 'errors' | 'warnings' | 'worst'> {
  // As found is a record: what failed there is counted apart, and asks nobody to act.
  const fails = all.filter(one => one.outcome === 'fails' && !one.asFound);
  const of = (severity: Severity) => fails.filter(one => one.severity === severity);
  const [errors, warnings] = [of('error'), of('warning')];
  const byMargin = (one: Verdict, other: Verdict) => (one.margin ?? 0) - (other.margin ?? 0);
  const worst =
    [errors, warnings, fails].find(some => some.length > 0)?.sort(byMargin)[0] ??
    all.find(one => one.outcome === 'cannot tell');
  return { errors: errors.length, warnings: warnings.length, ...(worst ? { worst: worst.message } : {}) };
}

function checkOf(verdict: Verdict, location: Location | undefined): OutlineCheck {
  const { rule, outcome, severity, message, subject, margin } = verdict;
  return {
    rule,
    title: findRule(rule)?.title ?? rule,
    outcome,
    severity,
    message,
    subject,
    ...(margin === undefined ? {} : { margin }),
    ...(location ? { location } : {}),
  };
}
