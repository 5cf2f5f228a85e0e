import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { rulesReference } from '@tailshaft/drivetrain';
import { languageReference } from '@tailshaft/language';
import { expect, it } from 'vitest';

/** Reference pages are made from the tables that the product uses: `npm run docs` writes them anew. */
const root = join(import.meta.dirname, '..', '..');
const pages: readonly [path: string, make: () => string][] = [
  ['packages/language/REFERENCE.md', languageReference],
  ['packages/drivetrain/RULES.md', rulesReference],
];

it.each(pages)('%s is current', (path, make) => {
  const file = join(root, path);
  if (process.env.UPDATE_DOCS !== undefined) writeFileSync(file, make());
  expect(readFileSync(file, 'utf8')).toBe(make());
});
