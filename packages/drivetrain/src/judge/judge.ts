import { LineAnalysis } from '../analysis/line.js';
import { asRunningBefore } from '../analysis/mode-before.js';
import { isAsFound, proposalsOf } from '../model/as-found.js';
import type { Catalogue } from '../model/catalogue.js';
import { Kept } from '../model/reads.js';
import { drivenByAlone, runningLines } from '../model/running.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { RULES } from '../rules/index.js';
import type { Rule, Verdicts } from '../rules/rule.js';
import { REQUIREMENT_MET } from '../rules/trace/requirement-met.js';
import { applyAcceptances } from './acceptance.js';
import type { AcceptancePolicy } from './acceptance-policy.js';
import { answerWords } from './answer-words.js';
import { withAnswers } from './answers.js';
import { choosableOf } from './choosable.js';
import type { Context, EntryContext, LineContext } from './context.js';
import { disputedBy, standingOf, underTheirDispute } from './disputes.js';
import type { Judged } from './isolate.js';
import { worstOfModes } from './modes.js';
import { asGraveAs, practicePolicy } from './practice.js';
import { withOutline } from './put-off.js';
import { type Resting, settled } from './settle.js';
import { whileUncovered } from './uncovered.js';
import type { Missing, Verdict } from './verdict.js';

/**
 * Every verdict on a vessel: each rule on each line, arrangement and on the vessel itself, in the order of the
 * catalogue. A finding that another one explains is left out. `today` is an ISO date.
 */
export function judgeVessel(
  vessel: Vessel,
  catalogue: Catalogue,
  today: string,
  rules: readonly Rule[] = RULES,
  policy?: AcceptancePolicy,
): Verdict[] {
  const all = checksOf(vessel, catalogue, today, rules).flatMap(saidBy);
  return concluded(all, vessel, today, rules, policy);
}

/** What one check says, with the mode that it was said of. */
export function saidBy({ rule, at, run, running }: Check): readonly Resting[] {
  const said = settled(rule, at, run);
  return running ? said.map(one => ({ ...one, running })) : said;
}

/** One rule on one of its subjects. */
export interface Check {
  readonly rule: Rule;
  readonly at: Judged;
  readonly run: () => Verdicts;
  /** The line in the one mode that this check looks at, of a line that has several. */
  readonly running?: ShaftLine;
}

/** Every rule on each of its subjects. Vessels with the same arrangements and lines have the same checks, in the same order. */
export function checksOf(
  vessel: Vessel,
  catalogue: Catalogue,
  today: string,
  rules: readonly Rule[],
  analysisOf: Context['analysisOf'] = analysesOf(vessel),
): Check[] {
  const context: Context = { vessel, catalogue, today, analysisOf };
  const arrangements = vessel.arrangements.map(arrangement => ({
    at: {
      subject: arrangement.name,
      place: arrangement.nameOrigin,
      choosable: () => choosableOf(arrangement.lines),
    },
    about: { ...context, arrangement },
    lines: arrangement.lines.flatMap((line): readonly LineCheck[] => {
      const at = { subject: line.path, place: line.nameOrigin, choosable: () => choosableOf([line]) };
      const about = (one: ShaftLine) => {
        const judged = besideItsMode(one, vessel);
        return { ...context, arrangement, line: judged, analysis: analysisOf(judged) };
      };
      const modes = runningLines(line);
      if (!modes || 'unclear' in modes) return [{ at, about: about(line), running: undefined }];
      return modes.lines.flatMap(running => [
        { at, about: about(running), running },
        ...besides(running).map(one => ({ at, about: about(one), running: one, beside: true })),
      ]);
    }),
  }));
  const whole = {
    subject: vessel.name,
    place: vessel.nameOrigin,
    choosable: () => choosableOf(proposalsOf(vessel).flatMap(one => one.lines)),
  };
  const units = () => ({
    subject: vessel.name,
    concerns: vessel.unitConcerns,
    quantities: vessel.quantities,
  });
  const all: Check[] = [];
  for (const rule of rules) {
    if (rule.scope === 'vessel') all.push({ rule, at: whole, run: () => rule.check(context) });
    if (rule.scope === 'units') all.push({ rule, at: whole, run: () => rule.check(units()) });
    if (rule.scope === 'arrangement')
      for (const { about, at } of arrangements) all.push({ rule, at, run: () => rule.check(about) });
    if (rule.scope === 'line')
      for (const { lines } of arrangements)
        for (const { about, at, running, beside } of lines)
          if (!beside || rule.severalMovers === 'each')
            all.push({ rule, at, run: () => rule.check(about), ...(running ? { running } : {}) });
  }
  return all;
}

/** The line beside the one before it in the mode with which it is compared, which is chosen when a check asks for it. */
function besideItsMode(line: ShaftLine, vessel: Vessel): ShaftLine {
  const found = line.before;
  if (!found || !(line.mode || found.modes)) return line;
  const chosen = new Kept();
  return {
    ...line,
    get before() {
      return chosen.once('before', () => asRunningBefore(line, found, vessel));
    },
  };
}

interface LineCheck {
  readonly at: Judged;
  readonly about: LineContext;
  readonly running: ShaftLine | undefined;
  /** It is the line of an engine that drives beside the first one, for what each of them is asked by itself. */
  readonly beside?: boolean;
}

/** The line as each engine that drives beside the first one sees it by itself. */
function besides(line: ShaftLine): readonly ShaftLine[] {
  return (line.joined ?? []).filter(one => one.role === 'engine').map(one => drivenByAlone(line, one));
}

/** One analysis for each line, made when somebody asks. */
export function analysesOf(vessel: Vessel): Context['analysisOf'] {
  const analyses = new WeakMap<ShaftLine, LineAnalysis>();
  return line => {
    const had = analyses.get(line);
    if (had) return had;
    const made = new LineAnalysis(line, vessel);
    analyses.set(line, made);
    return made;
  };
}

/** The verdicts that are told, from what each check said by itself. */
export function concluded(
  all: readonly Resting[],
  vessel: Vessel,
  today: string,
  rules: readonly Rule[] = RULES,
  policy?: AcceptancePolicy,
): Verdict[] {
  const weighed = all.map(one => ({ ...one, verdict: asGraveAs(vessel.practice, one.verdict) }));
  const uncovered = whileUncovered(weighed, vessel);
  const covered = worstOfModes(uncovered, standingOf(uncovered));
  const disputed = disputedBy(covered);
  const verdicts = underTheirDispute(covered, disputed);
  const accepted = applyAcceptances(
    withoutExplained(toldApart(verdicts, vessel)),
    vessel,
    today,
    policy,
    practicePolicy(vessel),
  );
  return rules.some(one => one.id === REQUIREMENT_MET.id) ? withAnswers(accepted, vessel) : accepted;
}

/** What is said of an arrangement as found is a fact of the vessel: it is marked, and weighs no more than a note. */
function toldApart(verdicts: readonly Verdict[], vessel: Vessel): Verdict[] {
  const found = vessel.arrangements.filter(one => isAsFound(one, vessel)).map(one => one.path);
  const isOf = (subject: string, path: string) => subject === path || subject.startsWith(`${path}.`);
  return verdicts.map(one =>
    one.subject !== vessel.name && found.some(path => isOf(one.subject, path))
      ? withOutline(one, { severity: 'note', asFound: true })
      : one,
  );
}

/** Verdicts on a catalogue entry by itself. */
export function judgeEntry(context: EntryContext, rules: readonly Rule[] = RULES): Verdict[] {
  const { entry } = context.entry;
  const at = { subject: entry.name, place: entry.nameOrigin };
  const all: Resting[] = [];
  const units = {
    subject: entry.name,
    concerns: context.unitConcerns,
    quantities: context.quantities,
  };
  for (const rule of rules) {
    if (rule.scope === 'entry') all.push(...settled(rule, at, () => rule.check(context)));
    else if (rule.scope === 'units') all.push(...settled(rule, at, () => rule.check(units)));
  }
  const disputed = disputedBy(all);
  return underTheirDispute(all, disputed);
}

/** Findings and open questions: what a person must look at. */
export function isFinding(verdict: Verdict): boolean {
  return verdict.outcome === 'fails' || verdict.outcome === 'cannot tell';
}

/**
 * Leaves out findings that another one is the cause of. An open question is left out only when those that explain it
 * ask for everything that it asks for, or fail without asking for anything.
 */
function withoutExplained(verdicts: Verdict[]): Verdict[] {
  const explainers = new Map<string, Verdict[]>();
  for (const verdict of verdicts) {
    if (!isFinding(verdict)) continue;
    for (const { rule, subject } of verdict.explains) {
      const key = `${rule} ${subject}`;
      explainers.set(key, [...(explainers.get(key) ?? []), verdict]);
    }
  }
  const folded = new Map<Verdict, Verdict[]>();
  const above = new Map<Verdict, Verdict>();
  // Two findings that name each other as the cause never both go: one of them stays.
  const standsUnder = (one: Verdict | undefined, verdict: Verdict): boolean =>
    one !== undefined && (one === verdict || standsUnder(above.get(one), verdict));
  const left = verdicts.filter(verdict => {
    const by = explainers
      .get(`${verdict.rule} ${verdict.subject}`)
      ?.filter(one => !standsUnder(one, verdict));
    const under = by?.length && isFinding(verdict) ? foldedUnder(verdict, by) : undefined;
    if (!under) return true;
    above.set(verdict, under);
    folded.set(under, [...(folded.get(under) ?? []), verdict]);
    return false;
  });
  return left.map(verdict => (folded.has(verdict) ? withFolds(verdict, foldsOf(verdict, folded)) : verdict));
}

/** What an answer would mean is told with the question, whichever check asks it. */
function withFolds(verdict: Verdict, folds: readonly Verdict[]): Verdict {
  const table =
    verdict.outcome === 'cannot tell' && !verdict.byAnswer
      ? folds.find(one => one.outcome === 'cannot tell' && one.byAnswer)?.byAnswer
      : undefined;
  if (!table) return { ...verdict, folds };
  return { ...verdict, folds, byAnswer: table, message: `${verdict.message}${answerWords(table)}` };
}

/** The finding under which another is left out, if it is. */
function foldedUnder(verdict: Verdict, by: readonly Verdict[]): Verdict | undefined {
  const failing = by.filter(one => one.outcome === 'fails');
  if (verdict.outcome === 'fails') return failing.find(one => weightOf(one) >= weightOf(verdict));
  const alone = failing.find(one => one.missing.length === 0);
  if (alone) return alone;
  const asked = by.flatMap(one => one.missing);
  const all = verdict.missing.every(gap => asked.some(one => isSameGap(one, gap)));
  return all ? by[0] : undefined;
}

/** A failure is never left out for a lesser one. */
function weightOf({ severity }: Verdict): number {
  return ['note', 'warning', 'error'].indexOf(severity);
}

/** With what is folded under those that are themselves folded. */
function foldsOf(
  verdict: Verdict,
  folded: ReadonlyMap<Verdict, readonly Verdict[]>,
  seen = new Set([verdict]),
): Verdict[] {
  return (folded.get(verdict) ?? []).flatMap(one => {
    if (seen.has(one)) return [];
    seen.add(one);
    return [one, ...foldsOf(one, folded, seen)];
  });
}

function isSameGap(one: Missing, other: Missing): boolean {
  if (one.at !== undefined && one.at === other.at) return true;
  return one.host === other.host && one.property === other.property;
}
