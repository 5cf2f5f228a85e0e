import {
  type Judged,
  type KnownEntry,
  LineAnalysis,
  type ShaftLine,
  type SpecSet,
} from '@tailshaft/drivetrain';
import type { JudgedVessel } from '@tailshaft/language';
import { severityOf } from '../report/severity.js';
import type { CheckedSpec } from './specs.js';

/** One of the two things that are compared, with what to call it. */
export interface NamedSet {
  readonly label: string;
  readonly specs: readonly CheckedSpec[];
}

/** Two sets ready to be compared. A name that two vessels of a set share is told apart by their files. */
export function comparable(before: NamedSet, after: NamedSet): { before: SpecSet; after: SpecSet } {
  const shared = new Set([...doubled(before), ...doubled(after)]);
  return { before: setOf(before, shared), after: setOf(after, shared) };
}

/** Findings of the text itself: what could not be read cannot be compared either. */
export function unreadable({ specs }: NamedSet): number {
  return specs.flatMap(one => one.findings).filter(one => one.problem && severityOf(one) === 'error').length;
}

/** A vessel with its analyses, each made once. */
export function judgedOf(
  judged: JudgedVessel,
  key?: string,
): Judged & { analysisOf: (line: ShaftLine) => LineAnalysis } {
  const made = new Map<ShaftLine, LineAnalysis>();
  const analysisOf = (line: ShaftLine) => {
    const had = made.get(line) ?? new LineAnalysis(line, judged.vessel);
    made.set(line, had);
    return had;
  };
  return { vessel: judged.vessel, verdicts: judged.verdicts, analysisOf, ...(key ? { key } : {}) };
}

function doubled({ specs }: NamedSet): string[] {
  const names = specs.flatMap(one => one.check.vessels.map(({ vessel }) => vessel.name));
  return names.filter((one, index) => names.indexOf(one) !== index);
}

function setOf({ specs }: NamedSet, shared: ReadonlySet<string>): SpecSet {
  const vessels = specs.flatMap(spec =>
    spec.check.vessels.map(one => {
      const { name } = one.vessel;
      return judgedOf(one, shared.has(name) ? `${name} (${spec.shown})` : undefined);
    }),
  );
  const entries = specs.flatMap(spec =>
    spec.check.entries.map(
      ({ reading }): KnownEntry => ({ kind: reading.kind, name: reading.name, facts: reading.facts.fields }),
    ),
  );
  return { vessels, entries };
}
