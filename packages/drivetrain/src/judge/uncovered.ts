import type { Origin } from '@tailshaft/mechanics';
import { uncapital } from '@tailshaft/mechanics';
import { severalMovers, type Uncovered, uncoveredIn } from '../analysis/uncovered.js';
import { isThroughInput } from '../model/gear-in-mode.js';
import { type AbsentRead, likewise } from '../model/reads.js';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import type { RuleInfo } from '../rules/rule.js';
import { cannotTell } from './cannot-tell-words.js';
import type { Resting } from './settle.js';
import type { Missing, Verdict } from './verdict.js';

/**
 * Withholds every verdict that rests on parts which the checks do not cover together: two movers of one line, a second gear.
 * Judged by the first of them, a check would hold or fail on a line that is not there. It cannot be told, and says why.
 */
export function whileUncovered(all: readonly Resting[], vessel: Vessel): readonly Resting[] {
  const lines = vessel.arrangements.flatMap(one => one.lines);
  const uncovered = lines.flatMap(line => uncoveredIn(line).map(one => ({ ...one, line })));
  const modes = lines.filter(line => line.modes);
  if (uncovered.length === 0 && modes.length === 0) return all;
  const several = modes.flatMap(line => {
    const one = severalMovers(line);
    return one ? [{ ...one, line }] : [];
  });
  return all.map(one => {
    const { verdict, reads, rule, running } = one;
    if (rule.judgesCover || verdict.outcome === 'cannot tell') return one;
    const together = running && severalMovers(running);
    const why = [
      ...uncovered,
      ...(running
        ? together && !counts(rule, running)
          ? [{ ...together, line: running }]
          : []
        : holdsOverModes(rule, verdict)
          ? []
          : several),
    ].filter(
      ({ facts, hosts, line }) =>
        isAbout(verdict, line) &&
        ([...reads.facts].some(fact => facts.has(fact)) || [...reads.absent].some(one => onPath(one, hosts))),
    );
    if (why.length === 0) return { ...one, verdict: withOpenPath(verdict, [...uncovered, ...several]) };
    const title = uncapital(rule.title);
    return {
      ...one,
      verdict: {
        ...verdict,
        outcome: 'cannot tell' as const,
        message: `${cannotTell(`${verdict.subject}: whether ${title}`)}: ${why.map(reason).join('; ')}.`,
        missing: why.map(gapOf),
        explains: [],
        // What the load path tells is told once; that a check does not count several movers is told by the check.
        ...(why.some(each => uncovered.includes(each)) ? { withheld: true as const } : {}),
      },
    };
  });
}

/** What fails whatever the load path is waits for it once it is put right. */
function withOpenPath(
  verdict: Verdict,
  open: readonly (Uncovered & { readonly line: ShaftLine })[],
): Verdict {
  const waits = open.filter(({ line }) => isAbout(verdict, line)).map(gapOf);
  if (verdict.outcome !== 'fails' || waits.length === 0) return verdict;
  return likewise({ ...verdict, open: [...(verdict.open ?? []), ...waits] }, verdict);
}

function counts({ severalMovers, oneInput }: RuleInfo, { joined, gear }: ShaftLine): boolean {
  const twoInputs = joined?.some(one => one.role === 'engine') && !isThroughInput(gear);
  return severalMovers !== undefined && !(twoInputs && oneInput);
}

function holdsOverModes({ overModes }: RuleInfo, { outcome }: Verdict): boolean {
  return overModes === 'asks every mover' || (overModes === 'fails in any' && outcome === 'fails');
}

/** What is left out has a meaning or is an open question: only the second is something of the load path that nobody knows. */
function onPath({ host, takenAs }: AbsentRead, hosts: ReadonlySet<Origin>): boolean {
  return takenAs === undefined && hosts.has(host);
}

function isAbout({ subject }: Verdict, { path, arrangement }: ShaftLine): boolean {
  return subject === path || subject.startsWith(`${path}.`) || subject === arrangement;
}

/** The open question that all of them wait for. */
export function gapOf({ what, host, property, at }: Uncovered): Missing {
  return { what, host, property, example: 'unknown', at };
}

function reason({ what, property }: Uncovered): string {
  return `the checks cover a line with one of each part${property === 'driven by' ? ' that drives' : ''}, and the spec does not say ${what}`;
}
