import type { SpecChange } from './change.js';
import type { VesselComparison } from './compare.js';

/** One change for a reader, with everything that it concerns in the same words. */
export interface Line {
  readonly subjects: readonly string[];
  readonly change: SpecChange;
}

export interface Section {
  readonly title: string;
  readonly kind: SpecChange['kind'];
  readonly lines: readonly Line[];
}

/** What changed, in the order that a reviewer reads it; inside a section the gravest first. */
export function sectionsOf(comparison: VesselComparison): Section[] {
  return TITLES.flatMap(([kind, title]) => {
    const lines = merged(comparison.changes.filter(one => one.kind === kind));
    return lines.length > 0 ? [{ kind, title, lines }] : [];
  });
}

const TITLES: readonly (readonly [SpecChange['kind'], string])[] = [
  ['verdict', 'Verdicts that moved'],
  ['open', 'Not assessed before or now'],
  ['silent', 'Easily missed'],
  ['one-sided', 'On one side only'],
  ['derived', 'What follows for the lines'],
  ['part', 'Parts'],
  ['statement', 'Requirements, criteria, acceptances, assumptions, trials, modes, studies'],
  ['rename', 'Renamed'],
  ['paper', 'Papers to look at again'],
];

/** Changes in the same words are one line. Changes of entries and vessels come before those of single lines. */
function merged(changes: readonly SpecChange[]): Line[] {
  const lines = new Map<string, { subjects: string[]; change: SpecChange }>();
  for (const change of changes) {
    const key = change.kind === 'verdict' ? `${change.rule} ${change.words} ${change.subject}` : change.words;
    const line = lines.get(key);
    if (!line) lines.set(key, { subjects: [change.subject], change });
    else if (!line.subjects.includes(change.subject)) line.subjects.push(change.subject);
  }
  return [...lines.values()];
}

/** `2 newly fail, 1 can no longer be told; 1 easily missed`: the sentence at the top. */
export function headline(comparison: VesselComparison): string {
  const { changes, addedLines, removedLines } = comparison;
  if (changes.length + addedLines.length + removedLines.length === 0) return 'No change in meaning.';
  const moved = (of: 'check' | 'note' | 'either', ...movements: string[]) =>
    changes.filter(
      one =>
        one.kind === 'verdict' &&
        movements.includes(one.movement) &&
        (of === 'either' || (one.severity === 'note') === (of === 'note')),
    ).length;
  // A note is no failure of a check: the two are not added up.
  const counts: [number, string][] = [
    [moved('check', 'newly fails', 'no longer accepted'), 'newly failing'],
    [moved('check', 'fails by more', 'still fails, differently'), 'failing by more or otherwise'],
    [moved('check', 'newly cannot tell'), 'that can no longer be told'],
    [
      moved('note', 'newly fails', 'no longer accepted', 'fails by more', 'still fails, differently'),
      'with a new note',
    ],
    [moved('note', 'newly cannot tell'), 'with a note that can no longer be told'],
    [moved('either', 'accepted on other figures', 'newly accepted'), 'accepted anew or on other figures'],
    [moved('either', 'margin smaller'), 'with a smaller margin'],
    [moved('either', 'newly holds', 'margin larger', 'fails by less'), 'better than before'],
  ];
  const told = counts.filter(([count]) => count > 0).map(([count, words]) => `${count} ${words}`);
  const acceptances = changes.filter(
    one => one.kind === 'statement' && one.about === 'acceptance' && one.tendency === 'relaxed',
  ).length;
  const open = changes.filter(one => one.kind === 'open').length;
  const renames = changes.filter(one => one.kind === 'rename').length;
  const more = [
    acceptances > 0 ? `Acceptances added or weakened: ${acceptances}.` : '',
    open > 0 ? `Changed, but not assessed before or now: ${open}.` : '',
    renames > 0 ? `Renamed: ${renames}.` : '',
  ];
  const silent = new Set(changes.filter(one => one.kind === 'silent').map(one => one.words)).size;
  const checks = told.length > 0 ? `Checks: ${told.join(', ')}.` : 'No check changed its verdict.';
  if (silent > 0) more.push(`Easily missed: ${silent}.`);
  return [checks, ...more.filter(Boolean)].join(' ');
}

/** The parts that stay, line by line: `all of existing.Port; proposed.Port: engine, shaft`. */
export function keptWords(comparison: VesselComparison): string | undefined {
  const byLine = new Map<string, string[]>();
  for (const one of comparison.kept) {
    const parts = byLine.get(one.subject) ?? [];
    byLine.set(one.subject, parts);
    parts.push(one.words.replace(/ kept: .*/, ''));
  }
  const touched = new Set(comparison.changes.filter(one => one.kind === 'part').map(one => one.subject));
  const told = [...byLine].map(([line, parts]) =>
    touched.has(line) ? `${line}: ${parts.join(', ')}` : `all of ${line}`,
  );
  return told.length > 0 ? told.join('; ') : undefined;
}
