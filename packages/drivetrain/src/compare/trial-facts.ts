import type { Origin } from '@tailshaft/mechanics';
import { blockOf, VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import type { Trial, TrialRun } from '../model/trial.js';
import type { Vessel } from '../model/vessel.js';
import { marksOf } from './evidence.js';
import { type FlatFact, flatFacts } from './facts.js';

const TRIAL = VESSEL_VOCABULARY.trial;

/** Conditions and readings of all trials of a vessel by their words: `builder's trial: Centre at full throttle: speed`. */
export function trialFacts(vessel: Vessel): Map<string, FlatFact> {
  const found = new Map<string, FlatFact>();
  for (const [trial, name] of numbered(vessel.trials ?? [], one => `"${one.name}"`)) {
    add(found, `${name}: `, flatFacts({ ...trial, runs: undefined }, TRIAL));
    found.set(`${name}: dated`, date(trial));
    if (trial.of !== undefined) found.set(`${name}: of`, headed('of', trial.of, trial.origin));
    for (const [run, at] of numbered(
      trial.runs,
      one => `${one.line}${one.at ? ` at ${one.at.written}` : ''}`,
    ))
      addRun(found, `${name}: ${at}: `, run);
  }
  return found;
}

/** A run without readings counts too: that it was run at all is a statement. */
function addRun(found: Map<string, FlatFact>, head: string, run: TrialRun): void {
  const readings = flatFacts({ ...run, at: undefined }, blockOf(TRIAL, 'runs')?.block);
  add(found, head, readings);
  if (readings.size === 0) found.set(`${head}readings`, { ...NONE, what: 'readings', origin: run.origin });
}

const NONE = { meaning: 'none', written: 'none', value: undefined, marks: marksOf([undefined]) };

const headed = (what: string, written: string, origin: Origin): FlatFact => ({
  ...NONE,
  what,
  meaning: written,
  written,
  origin,
});

function date({ dated, origin }: Trial): FlatFact {
  return headed('dated', dated ?? 'without a date', origin);
}

function add(found: Map<string, FlatFact>, head: string, facts: ReadonlyMap<string, FlatFact>): void {
  for (const [what, fact] of facts) found.set(head + what, fact);
}

/** Two of one name get a number, so that none is lost. */
function numbered<T>(list: readonly T[], nameOf: (one: T) => string): [T, string][] {
  const taken = new Map<string, number>();
  return list.map(one => {
    const name = nameOf(one);
    const count = (taken.get(name) ?? 0) + 1;
    taken.set(name, count);
    return [one, count > 1 ? `${name} (${count})` : name];
  });
}
