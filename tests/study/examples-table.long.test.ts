import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { searched } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { catalogueEntries, joinedExample } from '../support/examples.js';
import { studied } from '../support/study.js';

const EXAMPLES = join(import.meta.dirname, '../../examples');
const README = readFileSync(join(EXAMPLES, 'README.md'), 'utf8');
/** Rows of the table: example, study, candidates, hold, cannot tell, check and how many it rules out. */
const ROWS = [
  ...README.matchAll(
    /^\| \[[\w-]+\]\(([^)]+)\) \| (\w+) \| ([\d,]+) \| ([\d,]+) \| ([\d,]+) \| `([^`]+)`, ([\d,]+) \|/gm,
  ),
].map(([, path, study, ...rest]) => [path!, study!, rest.map(one => one.replaceAll(',', ''))] as const);

it('the table of the examples has a row for each study', () => expect(ROWS.length).toBeGreaterThan(7));

it.each(ROWS)('%s, study %s comes to what the table of the examples says', async (path, name, figures) => {
  const spec = joinedExample(path);
  // What varies over "any" takes everything that the spec imports.
  const imports = readFileSync(join(EXAMPLES, path), 'utf8').includes('"../catalogue"');
  const others = imports ? catalogueEntries().filter(one => !spec.includes(one.text)) : [];
  const { studies } = await studied([...others.map(one => one.text), spec].join('\n'));
  const { judged, holds, unknown, binding } = searched(studies.find(one => one.study.name === name)!);
  const [most] = binding;
  expect([judged, holds.length, unknown.length, most!.rule, most!.failed].map(String)).toEqual(figures);
});
