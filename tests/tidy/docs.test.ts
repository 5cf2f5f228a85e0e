import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { RULES } from '@tailshaft/drivetrain';
import { languageReference } from '@tailshaft/language';
import {
  GALLERY_FOLDER,
  galleryBases,
  galleryPath,
  gallerySpecs,
  INDEX_PATH,
  METHODS_PATH,
  methodsPage,
  PAGES_FOLDER,
  pagePath,
  REFERENCE_PATH,
  rulePage,
  rulesIndex,
  TEXT_FINDINGS,
  textPage,
} from '@tailshaft/language/manual';
import { allFormulas } from '@tailshaft/mechanics';
import { methodSubjects } from '@tailshaft/mechanics/methods';
import { beforeAll, expect, it } from 'vitest';
import { formulasUsed } from '../support/formulas-used.js';

/** Reference pages are made from the tables that the product uses: `npm run docs` writes them anew. */
const root = join(import.meta.dirname, '..', '..');
const update = process.env.UPDATE_DOCS !== undefined;
let pages: ReadonlyMap<string, string>;

beforeAll(async () => {
  pages = await makePages();
  if (!update) return;
  rmSync(join(root, PAGES_FOLDER), { recursive: true, force: true });
  for (const [path, text] of pages) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
}, 120_000);

async function makePages(): Promise<ReadonlyMap<string, string>> {
  const made = new Map([
    [REFERENCE_PATH, languageReference()],
    [INDEX_PATH, rulesIndex()],
  ]);
  const usedBy = new Map<string, string[]>();
  for (const rule of RULES) {
    const formulas = await formulasUsed(rule);
    for (const { spec } of formulas) usedBy.set(spec.name, [...(usedBy.get(spec.name) ?? []), rule.id]);
    made.set(
      pagePath(rule.id),
      rulePage(
        rule,
        formulas.map(one => one.spec),
      ),
    );
  }
  for (const finding of TEXT_FINDINGS) made.set(pagePath(finding.code), textPage(finding));
  made.set(METHODS_PATH, methodsPage(methodSubjects(), usedBy));
  return made;
}

const filesIn = (path: string) =>
  readdirSync(join(root, path), { recursive: true, withFileTypes: true })
    .filter(one => one.isFile())
    .map(one => join(one.parentPath, one.name).slice(root.length + 1));

it('has every page as it is made now, and no other', () => {
  const stale = [...pages].filter(([path, text]) => read(path) !== text).map(([path]) => path);
  expect(stale, 'run npm run docs').toEqual([]);
  expect(filesIn(PAGES_FOLDER).filter(path => !pages.has(path))).toEqual([]);
});

it('keeps the pages of the rules under 6,000 lines in all', () => {
  const lines = [...pages]
    .filter(([path]) => path === INDEX_PATH || path.startsWith(PAGES_FOLDER))
    .reduce((sum, [, text]) => sum + text.split('\n').length - 1, 0);
  expect(lines).toBeLessThan(6000);
});

it('leads every link of a page to something that is there', () => {
  const dead: string[] = [];
  const gallery = new Set([
    ...[...galleryBases().keys()].map(file => `${GALLERY_FOLDER}/${file}`),
    ...gallerySpecs().map(one => galleryPath(one.code)),
  ]);
  for (const [path, text] of pages) {
    for (const [, to] of text.matchAll(/\]\(([^)\s]+)\)/g)) {
      const [file, anchor] = to!.split('#');
      const target = file ? join(dirname(path), file) : path;
      if (gallery.has(target)) continue;
      const there = read(target);
      if (there === undefined || (anchor && !anchorsIn(there).has(anchor))) dead.push(`${path}: ${to}`);
    }
  }
  expect(dead).toEqual([]);
});

it('has a page for every finding of the text that the source can give', () => {
  const source = filesIn('packages/language/src')
    .filter(path => path.endsWith('.ts') && !path.includes('/manual/'))
    .map(path => read(path))
    .join('\n');
  const given = new Set(
    [...source.matchAll(/'((?:text|repower|internal)\/[a-z-]+)'/g)].map(([, code]) => code!),
  );
  expect([...given].sort()).toEqual(TEXT_FINDINGS.map(one => one.code).sort());
});

it('has a method for every formula', () => {
  const listed = new Set(methodSubjects().flatMap(one => one.formulas.map(({ spec }) => spec.name)));
  expect([...allFormulas().keys()].filter(name => !listed.has(name))).toEqual([]);
});

function read(path: string): string | undefined {
  try {
    return readFileSync(join(root, path), 'utf8');
  } catch {
    return undefined;
  }
}

function anchorsIn(text: string): Set<string> {
  const headings = [...text.matchAll(/^#+ (.*)$/gm)].map(([, heading]) =>
    heading!
      .toLowerCase()
      .replace(/[^\p{L}\p{N} _-]/gu, '')
      .replace(/ /g, '-'),
  );
  return new Set([...headings, ...[...text.matchAll(/<a id="([^"]+)"/g)].map(([, id]) => id!)]);
}
