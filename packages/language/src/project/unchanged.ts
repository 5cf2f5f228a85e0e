import type { DocumentReading } from '../reading/document.js';
import type { VesselReading } from '../reading/vessel.js';
import type { FileCheck, JudgedVessel } from './judged.js';

interface Read {
  readonly reading: DocumentReading;
  readonly text: string;
}

/** What was judged already of the vessels of a text that another text leaves as they were. */
export function keptVessels(
  { vessels }: FileCheck,
  before: Read,
  after: Read,
): (reading: VesselReading) => JudgedVessel | undefined {
  const entries = new Set(after.reading.entries);
  const same = new Set(before.reading.vessels);
  if (after.reading.vessels.some(one => same.has(one)))
    return reading =>
      before.reading.entries.every(one => entries.has(one))
        ? vessels.find(one => one.reading === reading)
        : undefined;
  const names = unchangedVessels(before.reading, before.text, after.reading, after.text);
  return ({ name }) => (names.has(name) ? vessels.find(one => one.vessel.name === name) : undefined);
}

/**
 * Names of the vessels of a file that a change of its text leaves as they were: their own words and those of every entry of
 * the file stay. What such a vessel was judged as still holds, wherever it now stands.
 */
function unchangedVessels(
  before: DocumentReading,
  oldText: string,
  after: DocumentReading,
  newText: string,
): ReadonlySet<string> {
  const slices = (reading: DocumentReading, text: string) => ({
    entries: wordsBy(reading.entries, text),
    vessels: wordsBy(reading.vessels, text),
  });
  const [old, now] = [slices(before, oldText), slices(after, newText)];
  for (const [name, words] of old.entries) if (now.entries.get(name) !== words) return new Set();
  return new Set(
    [...old.vessels].flatMap(([name, words]) => (now.vessels.get(name) === words ? [name] : [])),
  );
}

/** Two of one name are none: neither is told from the other. */
function wordsBy(
  readings: readonly {
    readonly name: string;
    readonly whole: { readonly start: number; readonly end: number };
  }[],
  text: string,
): Map<string, string | undefined> {
  const words = new Map<string, string | undefined>();
  for (const { name, whole } of readings)
    words.set(name, words.has(name) ? undefined : text.slice(whole.start, whole.end));
  return words;
}
