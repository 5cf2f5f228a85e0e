import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export const examplesFolder = join(import.meta.dirname, '..', '..', 'examples');

export const readExample = (path: string): string => readFileSync(join(examplesFolder, path), 'utf8');

/** Every spec that should be without a finding: `ferry/brackle.shaft`. */
export const exampleSpecs: readonly string[] = readdirSync(examplesFolder, {
  recursive: true,
  encoding: 'utf8',
})
  .filter(path => path.endsWith('.shaft') && !/^(mistakes|catalogue)\b/.test(path))
  // What holds parts alone is imported by a vessel beside it.
  .filter(path => /^vessel\b/m.test(readFileSync(join(examplesFolder, path), 'utf8')))
  .sort();

const catalogue = readdirSync(join(examplesFolder, 'catalogue')).flatMap(file =>
  entriesOf(readExample(`catalogue/${file}`)),
);

/** A spec without the line that imports its catalogue. */
export const ownText = (path: string): string => readExample(path).replace(/^import .*$/m, '');

/** A spec in one text with those entries of the catalogue that it names: the others only take time. */
export function joinedExample(path: string): string {
  const spec = ownText(path);
  const words = new Set(spec.match(/[\w-]+/g));
  const used = catalogue.filter(one => words.has(one.name));
  return [...used.map(one => one.text), spec].join('\n');
}

/** The entries of the example catalogue with their texts. */
export const catalogueEntries = (): readonly { readonly name: string; readonly text: string }[] => catalogue;

function entriesOf(text: string): { name: string; text: string }[] {
  return text
    .split(/^(?=(?:engine|motor|gear|transfer|coupling|propeller|shaft material) )/m)
    .flatMap(one => {
      const name = /^(?:shaft material|\w+) (\S+)/.exec(one)?.[1];
      return name && /^[a-z]/.test(one) ? [{ name, text: one }] : [];
    });
}
