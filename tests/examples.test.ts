import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { checkFile, shown } from './support/check.js';

const folder = join(import.meta.dirname, '..', 'examples');
const specs = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter(path => path.endsWith('.shaft') && !path.startsWith('mistakes'))
  .sort();

it.each(specs)('%s is correct and gives no finding', async path => {
  expect(shown(await checkFile(join(folder, path)))).toEqual([]);
});
