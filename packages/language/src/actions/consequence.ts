import { findRule, leftOpen, type Missing, type Outcome, type Verdict } from '@tailshaft/drivetrain';
import type { Origin } from '@tailshaft/mechanics';
import type { LangiumDocument } from 'langium';
import { applyEdits, type TextEdit } from '../edit/text-edit.js';
import type { FileCheck, Project } from '../project/project.js';
import type { TextOf } from './offer.js';

/** What an edit leads to, found by judging the text as it would be. */
export interface Consequence {
  /** The result reads: no problem of the text comes with it. */
  readonly reads: boolean;
  /**
   * What a check, by rule, subject and vessel, still waits for where its failure is put right: nothing, or what its other
   * half waited for already. Undefined where it still fails or cannot be told.
   */
  readonly settles: (verdict: Verdict, vessel?: string) => readonly Missing[] | undefined;
  /** What ends worse than it was: the verdict as it would be. */
  readonly worse: readonly Worse[];
  /** How many failures, of this check and of others, it puts right. */
  readonly mended: number;
  /** What is said already of an entry, in whichever file it is declared. */
  readonly ofEntry: (entry: Origin) => readonly Verdict[];
}

/** `deeper` where it failed before, by less. */
export type Worse = Verdict & { readonly deeper?: true };

/** Judges a document as it would be after some edits, and tells what became of its verdicts. */
export function consequenceOf(
  project: Project,
  document: LangiumDocument,
  edits: readonly TextEdit[],
  textOf: TextOf,
): Consequence {
  const texts = new Map<string, string>();
  for (const uri of new Set(edits.map(one => one.uri))) {
    const own = edits.filter(one => one.uri === uri);
    texts.set(uri, applyEdits(textOf(uri), own));
  }
  const before = project.check(document);
  const after = project.supposing(document, texts, edits);
  const old = new Map<string, number>();
  for (const one of before.problems) old.set(one.code, (old.get(one.code) ?? 0) + 1);
  const reads = after.problems.every(one => {
    const left = old.get(one.code) ?? 0;
    old.set(one.code, left - 1);
    return left > 0;
  });
  let judged: Map<string, Verdict> | undefined;
  let lost: readonly Worse[] | undefined;
  const all = () => {
    judged ??= worstByCheck(after.check());
    return judged;
  };
  return {
    reads,
    settles: (verdict, vessel = '') => {
      // One rule is soon asked, and most of what is tried does not satisfy it.
      const rule = findRule(verdict.rule);
      const said = rule?.scope === 'line' ? after.said(rule, vessel) : [];
      const same = said.filter(one => one.rule === verdict.rule && one.subject === verdict.subject);
      if (same.some(one => isOpen(one) && !leftOpen(verdict, one))) return undefined;
      const now = all().get(keyOf(verdict, vessel));
      return now ? leftOpen(verdict, now) : [];
    },
    get mended() {
      const now = all();
      return [...standing(before)].filter(([key, one]) => {
        const then = now.get(key)?.outcome;
        return one.outcome === 'fails' && !one.asFound && then !== 'fails' && then !== 'cannot tell';
      }).length;
    },
    ofEntry: entry => project.ofEntry(document, entry),
    get worse() {
      lost ??= becameWorse(standing(before), all());
      return lost;
    },
  };
}

const STANDING = new WeakMap<FileCheck, Map<string, Verdict>>();

/** How a text stands is the same for everything that is tried on it. */
function standing(check: FileCheck): Map<string, Verdict> {
  const had = STANDING.get(check) ?? worstByCheck(check);
  STANDING.set(check, had);
  return had;
}

function isOpen(verdict: Verdict | undefined): boolean {
  return verdict?.outcome === 'fails' || verdict?.outcome === 'cannot tell';
}

function becameWorse(was: ReadonlyMap<string, Verdict>, is: ReadonlyMap<string, Verdict>): Worse[] {
  return [...is].flatMap(([key, verdict]) => {
    const had = was.get(key);
    const rank = had ? GRAVITY.indexOf(had.outcome) : 0;
    // A check that could say nothing and now asks is the author's next step, and no loss.
    const lost = had ? GRAVITY.indexOf(verdict.outcome) > rank : verdict.outcome === 'fails';
    const deeper = had?.outcome === 'fails' && verdict.outcome === 'fails' && isDeeper(verdict, had);
    if (deeper) return [{ ...verdict, deeper }];
    return lost ? [verdict] : [];
  });
}

/** From best to worst. */
const GRAVITY: readonly Outcome[] = ['does not apply', 'holds', 'accepted', 'cannot tell', 'fails'];

/** Less than a hundredth is the rounding of a stock size. */
function isDeeper(now: Verdict, then: Verdict): boolean {
  if (now.over !== undefined && then.over !== undefined) return now.over > then.over * 1.01;
  return (now.margin ?? 0) < (then.margin ?? 0) - 0.01;
}

/** The worst verdict of each rule on each subject of each vessel: two vessels of a file may have lines of one name. */
function worstByCheck(check: FileCheck): Map<string, Verdict> {
  const worst = new Map<string, Verdict>();
  const take = (verdict: Verdict, vessel: string) => {
    for (const one of [verdict, ...(verdict.folds ?? [])]) {
      const key = keyOf(one, vessel);
      const had = worst.get(key);
      if (!had || GRAVITY.indexOf(one.outcome) > GRAVITY.indexOf(had.outcome)) worst.set(key, one);
    }
  };
  for (const { vessel, verdicts } of check.vessels) for (const one of verdicts) take(one, vessel.name);
  for (const { verdicts } of check.entries) for (const one of verdicts) take(one, '');
  return worst;
}

function keyOf({ rule, subject }: Verdict, vessel: string): string {
  return `${vessel} ${rule} ${subject}`;
}
