import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export const examplesFolder = join(import.meta.dirname, '..', '..', 'examples');

export const readExample = (path: string): string => readFileSync(join(examplesFolder, path), 'utf8');

const everyFile = readdirSync(examplesFolder, { recursive: true, encoding: 'utf8' })
  .filter(path => path.endsWith('.shaft') && !/^(mistakes|catalogue)\b/.test(path))
  .sort();

/** Every spec that should be without a finding: `ferry/brackle.shaft`. What holds parts alone is imported by a vessel beside it. */
export const exampleSpecs: readonly string[] = everyFile.filter(path => /^vessel\b/m.test(readExample(path)));

const catalogue = readdirSync(join(examplesFolder, 'catalogue')).flatMap(file =>
  entriesOf(readExample(`catalogue/${file}`)),
);
/** What lies beside a vessel that has parts of its own. */
const parts = everyFile
  .filter(path => !exampleSpecs.includes(path))
  .flatMap(path => entriesOf(readExample(path)));

/** A spec without the lines that import its catalogue. */
export const ownText = (path: string): string => readExample(path).replace(/^import .*$/gm, '');

/** A spec in one text with those entries of the catalogue that it names: the others only take time. */
export function joinedExample(path: string): string {
  const spec = ownText(path);
  const words = new Set(spec.match(/[\w-]+/g));
  const used = [...catalogue, ...parts].filter(one => words.has(one.name));
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
