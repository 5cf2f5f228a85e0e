import { formatText } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { freeName, relativeImport } from '../packages/vscode/src/commands/new-spec/paths.js';
import {
  catalogueSkeleton,
  specSkeleton,
  type Wanted,
} from '../packages/vscode/src/commands/new-spec/skeleton.js';
import { checkText } from './support/check.js';

const LINES = ['single', 'twin'] as const;
const JOBS = ['new', 'repower'] as const;
const CATALOGUES: readonly Wanted['catalogue'][] = [
  'here',
  { path: 'catalogue', isNew: true },
  { path: '../catalogue', isNew: false },
];
const all: Wanted[] = LINES.flatMap(lines =>
  JOBS.flatMap(job => CATALOGUES.map(catalogue => ({ lines, job, catalogue }))),
);
const named = (one: Wanted) =>
  `${one.lines}, ${one.job}, catalogue ${one.catalogue === 'here' ? 'here' : one.catalogue.isNew ? 'new, beside' : 'there'}`;

/** What stands there when nobody fills anything in. */
function left(snippet: string): string {
  const names = new Map<string, string>();
  return snippet
    .replace(/\$\{(\d+):([^}]*)\}/g, (_all, number: string, text: string) => {
      names.set(number, text);
      return text;
    })
    .replace(/\$(\d+)/g, (_all, number: string) => names.get(number)!);
}

describe.each(all.map(one => [named(one), one] as const))('a new spec: %s', (_name, wanted) => {
  const snippet = specSkeleton(wanted);
  const text = left(snippet);

  it('says nothing that its author did not', () => {
    const places = [...snippet.matchAll(/\$\{\d+:([^}]*)\}/g)].map(one => one[1]!);
    const names = /^(Name|what (the vessel|it) is|(Engine|Gear)-(found|proposed)|[AB])$/;
    expect(places.filter(one => one !== 'unknown' && !names.test(one))).toEqual([]);
    expect(text).not.toMatch(/\d/);
    expect(text).not.toMatch(/\b(retain|modify|remove|mirrors)\b(?!.*\n.*arrangement)/);
  });

  it('is laid out as the formatter lays it out', () => {
    expect(formatText(text)).toBe(text);
  });

  it('is read without a slip, fails nothing, and what is open is the list of what to find out', async () => {
    // What it imports is put below it, since this text stands alone.
    const beside = wanted.catalogue === 'here' ? '' : left(catalogueSkeleton(wanted));
    const { findings: found } = await checkText(`${text.replace(/^import .*\n/, '')}\n${beside}`);
    expect(found.filter(one => one.code.startsWith('text/'))).toEqual([]);
    const wrong = found.filter(one => one.severity === 'error' || one.severity === 'warning');
    // A repower that does not say what becomes of a part is asked.
    expect(wrong.filter(one => one.code !== 'repower/part-not-mentioned')).toEqual([]);
    expect(wrong.length > 0).toBe(wanted.job === 'repower');
    // Not even a note: whatever is unknown is asked.
    expect(found.filter(one => one.verdict?.outcome === 'fails').map(one => one.message)).toEqual([]);
    const open = found.filter(one => one.verdict?.outcome === 'cannot tell');
    expect(open.length).toBeGreaterThan(4);
  });
});

it('a new spec takes a name that is free', () => {
  expect(freeName('vessel', new Set())).toBe('vessel.shaft');
  expect(freeName('vessel', new Set(['vessel.shaft', 'vessel-2.shaft']))).toBe('vessel-3.shaft');
});

it.each([
  ['/yard', '/yard/catalogue', 'catalogue'],
  ['/yard/boats', '/yard/catalogue/gears.shaft', '../catalogue/gears'],
  ['/yard/boats', '/yard/boats/catalogue.shaft', 'catalogue'],
  ['/yard/boats', '/yard', '../../yard'],
])('from %s, %s is imported as %s', (folder, target, path) => {
  expect(relativeImport(folder, target)).toBe(path);
});
