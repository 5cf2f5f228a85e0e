import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as mechanics from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';

const folder = join(import.meta.dirname, '..', '..', 'packages', 'mechanics', 'test');
const tests = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter(path => path.endsWith('.test.ts'))
  .map(path => readFileSync(join(folder, path), 'utf8'))
  .join('\n')
  .replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');

/** What stands first in every `published(...)`: a formula by its path, or a group of formulas with a key of a loop. */
const tabled = new Set(
  [...tests.matchAll(/\bpublished\(\s*([\w.]+)(\[)?/g)].map(([, path, bracket]) => `${path}${bracket ?? ''}`),
);

/** Exported formulas by the path that reaches them: `dunkerley`, `overhungFrequency.pinned.lower`. */
const formulas: [path: string, formula: mechanics.Formula][] = [];
collect('', mechanics);

function collect(path: string, value: unknown): void {
  if (typeof value === 'function' && 'spec' in value)
    formulas.push([path, value as unknown as mechanics.Formula]);
  else if (
    typeof value === 'object' &&
    value !== null &&
    path.split('.').length < 4 &&
    !Array.isArray(value) &&
    !(value instanceof Map)
  ) {
    for (const [name, inner] of Object.entries(value)) collect(path ? `${path}.${name}` : name, inner);
  }
}

it('reaches every declared formula from outside', () => {
  const reached = new Set(formulas.map(([, formula]) => formula.spec.name));
  expect([...mechanics.allFormulas().keys()].filter(name => !reached.has(name))).toEqual([]);
});

describe.each(formulas)('%s', (path, { spec }) => {
  it('names a source', () => {
    expect(spec.source.title.length).toBeGreaterThan(5);
    expect(['published', 'common practice', 'from memory', 'derived']).toContain(spec.source.confidence);
  });

  it('says where it holds', () => {
    if (typeof spec.range === 'string') expect(spec.range.length).toBeGreaterThan(10);
    else expect(spec.range.length).toBeGreaterThan(0);
  });

  it('has a table of figures from outside, or worked by hand', () => {
    const looped = path.includes('.') && tabled.has(`${path.split('.')[0]}[`);
    expect(looped || tabled.has(path), `published(${path}, ...) in packages/mechanics/test`).toBe(true);
  });
});
