import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { type Checked, checkText } from './check.js';

const EXAMPLES = join(import.meta.dirname, '..', '..', 'examples');
const CATALOGUE = ['couplings', 'engines', 'gears', 'materials', 'motors'].map(name =>
  readFileSync(join(EXAMPLES, 'catalogue', `${name}.shaft`), 'utf8'),
);

/** Checks another text of an example: the catalogue that it imports stands in front of it. */
export function applied(path: string, text: string): Promise<Checked> {
  const imported = /^import "\.\.\/catalogue"\n/m;
  if (!imported.test(text)) throw new Error(`${dirname(path)} does not import the catalogue alone`);
  return checkText(`${CATALOGUE.join('\n')}\n${text.replace(imported, '')}`);
}
