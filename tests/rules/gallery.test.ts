import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import {
  GALLERY_FOLDER,
  galleryBases,
  galleryPath,
  gallerySpecs,
  sharedParts,
} from '@tailshaft/language/manual';
import { expect, it } from 'vitest';
import { type Checked, checkFile, checkText } from '../support/check.js';

/** `examples/mistakes` is made from the rules and the findings of the text: `npm run docs` writes it anew. */
const root = join(import.meta.dirname, '..', '..');
const folder = join(root, GALLERY_FOLDER);
const update = process.env.UPDATE_GALLERY !== undefined;
const SPECS = gallerySpecs();
const FIXED = new Map([...galleryBases(), ...sharedParts()]);
const specFile = (code: string) => join(root, galleryPath(code));
const foundFile = (code: string) => specFile(code).replace(/\.shaft$/, '.expected.txt');

/** Each finding on a line: place, weight, rule, message. */
function expected(checked: Checked): string {
  return checked.findings
    .map(one => {
      const before = checked.text.slice(0, one.place.start).split('\n');
      return `${before.length}:${before.at(-1)!.length + 1} ${one.severity} ${one.code}\n    ${one.message}\n`;
    })
    .join('');
}

/** What is found, without where. */
const found = (checked: Checked) => checked.findings.map(one => [one.severity, one.code, one.message]);

if (update) {
  for (const name of strangers()) rmSync(join(folder, name));
  for (const [file, text] of FIXED) write(join(folder, file), text);
}

function write(path: string, text: string): void {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}

it.each([...FIXED])('holds %s, which has no finding', async (file, text) => {
  expect(readFileSync(join(folder, file), 'utf8')).toBe(text);
  expect(found(await checkFile(join(folder, file)))).toEqual([]);
});

it.each(SPECS.map(one => [one.code, one] as const))(
  '%s has its mistake in the gallery',
  async (code, spec) => {
    const whole = await checkText(spec.whole);
    if (update) {
      // A spec is kept whole where it would be found otherwise with its entries in files of their own.
      write(specFile(code), spec.short);
      const short = await checkFile(specFile(code));
      if (JSON.stringify(found(short)) !== JSON.stringify(found(whole))) write(specFile(code), spec.whole);
      write(foundFile(code), expected(await checkFile(specFile(code))));
    }
    const shown = await checkFile(specFile(code));
    expect([spec.short, spec.whole]).toContain(readFileSync(specFile(code), 'utf8'));
    expect(found(shown), 'the same as in the example of the rule').toEqual(found(whole));
    expect(readFileSync(foundFile(code), 'utf8')).toBe(expected(shown));
    expect(shown.findings.map(one => one.code)).toContain(code);
  },
);

it('holds nothing else', () => {
  expect(strangers()).toEqual([]);
});

/** Files of the folder that belong to no rule, finding or base spec. */
function strangers(): string[] {
  const known = new Set([
    ...FIXED.keys(),
    ...SPECS.flatMap(({ code }) => [specFile(code), foundFile(code)]).map(path =>
      path.slice(folder.length + 1),
    ),
  ]);
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(one => one.isFile())
    .map(one => join(one.parentPath, one.name).slice(folder.length + 1))
    .filter(name => !known.has(name));
}
