import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { formatText } from '@tailshaft/language';
import { expect, it } from 'vitest';
import { checkFile, shown } from './support/check.js';

const folder = join(import.meta.dirname, '..', 'examples');
const specs = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter(path => path.endsWith('.shaft') && !path.startsWith('mistakes'))
  .sort();

it.each(specs)('%s is correct and gives no finding', async path => {
  expect(shown(await checkFile(join(folder, path)))).toEqual([]);
});

it.each(specs)('%s is laid out as the formatter lays it out', path => {
  const text = readFileSync(join(folder, path), 'utf8');
  expect(formatText(text)).toBe(text);
});
