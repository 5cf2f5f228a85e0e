import type { Vessel } from '@tailshaft/drivetrain';
import { listed } from '@tailshaft/mechanics';
import { plainText, type Text } from '../document/text.js';

/** One line of a list, with the lines of the vessel that it is said of. */
export interface OfSides<T> {
  readonly subjects: readonly string[];
  readonly first: T;
}

/**
 * Things said of several lines in the same words are said once, of all of them. The words are compared without the name
 * of the line that they speak of.
 */
export function foldSides<T>(
  all: readonly T[],
  vessel: Vessel,
  of: (one: T) => { readonly subject: string; readonly words: string },
): OfSides<T>[] {
  const names = lineNames(vessel);
  const found = new Map<string, { subjects: string[]; first: T }>();
  for (const one of all) {
    const { subject, words } = of(one);
    const key = `${withoutNames(subject, names)}\n${withoutNames(words, names)}`;
    const had = found.get(key);
    if (!had) found.set(key, { subjects: [subject], first: one });
    else if (!had.subjects.includes(subject)) had.subjects.push(subject);
  }
  return [...found.values()];
}

export function lineNames(vessel: Vessel): string[] {
  return [...new Set(vessel.arrangements.flatMap(one => one.lines.map(line => line.name)))];
}

/** Words in which every line goes by one sign, so that what is said alike of two lines reads alike. */
export function withoutNames(words: string, names: readonly string[]): string {
  return names.reduce(
    (text, name) =>
      text.replaceAll(new RegExp(`(?<![\\p{L}\\p{N}_-])${escaped(name)}(?![\\p{L}\\p{N}_-])`, 'gu'), '§'),
    words,
  );
}

const escaped = (name: string) => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** `Port and Starboard`, of arrangement, line and part as they are told: `proposed: Port and Starboard, shaft`. */
export function subjectWords(subjects: readonly string[]): string {
  const [first = ''] = subjects;
  const parts = subjects.map(one => one.split('.'));
  const differs = parts[0]!.findIndex((part, index) => parts.some(other => other[index] !== part));
  if (subjects.length === 1 || differs < 0) return first;
  const together = parts[0]!.map((part, index) =>
    index === differs ? listed([...new Set(parts.map(one => one[index] ?? ''))]) : part,
  );
  return together.join('.');
}

/** The words of a row alone, without references and places, which differ where nothing else does. */
export function wordsAlone(text: Text): string {
  if (typeof text === 'string') return text;
  if (!('as' in text)) return text.map(wordsAlone).join('');
  if (text.as === 'reference' || text.as === 'place') return '';
  return 'text' in text && typeof text.text !== 'string' ? wordsAlone(text.text) : plainText(text);
}
