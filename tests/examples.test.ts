import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { formatText } from '@tailshaft/language';
import { expect, it } from 'vitest';
import { checkFile, shown } from './support/check.js';

const folder = join(import.meta.dirname, '..', 'examples');
const specs = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter(path => path.endsWith('.shaft') && !path.startsWith('mistakes'))
  .sort();

// A person opens the examples on whatever day it is: nothing in them may run out or grow stale meanwhile.
const DAYS = ['2026-03-01', '2033-12-31'];
it.each(specs.flatMap(path => DAYS.map(day => [path, day] as const)))(
  '%s gives no finding on %s but notes of what was found aboard',
  async (path, day) => {
    const checked = await checkFile(join(folder, path), day);
    const findings = checked.findings.filter(one => !(one.verdict?.asFound && one.severity === 'hint'));
    expect(shown({ ...checked, findings })).toEqual([]);
  },
);

it.each(specs)('%s is laid out as the formatter lays it out', path => {
  const text = readFileSync(join(folder, path), 'utf8');
  expect(formatText(text)).toBe(text);
});
