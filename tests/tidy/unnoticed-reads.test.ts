import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';

const PACKAGES = resolve(import.meta.dirname, '../../packages');

/** Where facts are told apart, not judged: what a check reads there would not be judged again after a key. */
const MAY =
  /^drivetrain\/src\/(model\/declared-fact|judge\/(changed-facts|choosable|needed|quantity-words)|study\/same)\.ts$/;

it('no check reads a fact so that nobody knows that it did', () => {
  const found = readdirSync(PACKAGES, { recursive: true, encoding: 'utf8' })
    .map(path => path.replaceAll('\\', '/'))
    .filter(path => /^[^/]+\/src\/.*\.ts$/.test(path) && !path.includes('node_modules'))
    .filter(path => readFileSync(join(PACKAGES, path), 'utf8').includes('valueUnnoticed'));
  expect(found.length).toBeGreaterThan(3);
  expect(found.filter(path => !MAY.test(path))).toEqual([]);
});
