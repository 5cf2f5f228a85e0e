import {
  type Judged,
  type KnownEntry,
  LineAnalysis,
  type ShaftLine,
  type SpecSet,
} from '@tailshaft/drivetrain';
import type { JudgedVessel } from '@tailshaft/language';
import { count } from '@tailshaft/mechanics';
import { severityOf } from '../report/severity.js';
import type { CheckedSpec, SeenSpec } from './specs.js';

/** One of the two things that are compared, with what to call it. */
export interface NamedSet {
  readonly label: string;
  readonly specs: readonly CheckedSpec[];
  /** The path of a spec below the folder or file that was named: specs go by it. */
  readonly below: (path: string) => string;
  /** Specs that could not be opened at all, in a sentence each. */
  readonly refused: readonly string[];
  /** What reads the same on both sides, with all that it sees: read, and not judged. */
  readonly untouched?: readonly SeenSpec[];
}

/** Two sets ready to be compared. A name that two vessels of a set share is told apart by their files. */
export function comparable(before: NamedSet, after: NamedSet): { before: SpecSet; after: SpecSet } {
  const shared = new Set([...doubled(before), ...doubled(after)]);
  return { before: setOf(before, shared), after: setOf(after, shared) };
}

/** Texts that cannot be read whole, in a sentence each: what they hide cannot be compared either. */
export function unread({ label, specs, refused, untouched = [] }: NamedSet): string[] {
  const broken = [...specs, ...untouched.map(one => one.spec)].flatMap(one => brokenIn(label, one));
  return [...refused, ...broken];
}

/** What of one spec cannot be read, in a sentence. */
export function brokenIn(label: string, { shown, findings }: CheckedSpec): string[] {
  const errors = findings.filter(one => one.problem && severityOf(one) === 'error');
  if (errors.length === 0) return [];
  const at = label === shown || label === '.' ? shown : `${shown} at ${label}`;
  const first = errors.length > 1 ? 'the first: ' : '';
  return [
    `${at} has ${count(errors.length, 'error')} in its text, and what cannot be read is not compared; ${first}${errors[0]!.message}`,
  ];
}

/** A vessel with its analyses, each made once. */
export function judgedOf(
  judged: JudgedVessel,
  key?: string,
  file?: string,
): Judged & { analysisOf: (line: ShaftLine) => LineAnalysis } {
  const made = new Map<ShaftLine, LineAnalysis>();
  const analysisOf = (line: ShaftLine) => {
    const had = made.get(line) ?? new LineAnalysis(line, judged.vessel);
    made.set(line, had);
    return had;
  };
  return {
    vessel: judged.vessel,
    verdicts: judged.verdicts,
    analysisOf,
    ...(key ? { key } : {}),
    ...(file === undefined ? {} : { file }),
  };
}

function doubled({ specs, untouched = [] }: NamedSet): string[] {
  const judged = specs.flatMap(one => one.check.vessels.map(({ vessel }) => vessel.name));
  const names = [...judged, ...untouched.flatMap(one => one.vessels)];
  return names.filter((one, index) => names.indexOf(one) !== index);
}

function setOf(set: NamedSet, shared: ReadonlySet<string>): SpecSet {
  const { specs, below } = set;
  const vessels = specs.flatMap(spec =>
    spec.check.vessels.map(one => {
      const { name } = one.vessel;
      const file = below(spec.path);
      return judgedOf(one, shared.has(name) ? `${name} (${file || spec.shown})` : undefined, file);
    }),
  );
  return { vessels, entries: entriesIn(set), unread: unread(set) };
}

export function entriesIn({ specs }: NamedSet): KnownEntry[] {
  return specs.flatMap(spec =>
    spec.check.entries.map(
      ({ reading }): KnownEntry => ({ kind: reading.kind, name: reading.name, facts: reading.facts.fields }),
    ),
  );
}
