import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Conviction } from './run.js';

const PATH = join(import.meta.dirname, 'known.json');

/**
 * What is known to get better or to be lost and should not: one case of each kind. The list must shrink: an entry that is
 * no longer convicted fails the suite until it is taken out.
 */
export const KNOWN: readonly Conviction[] = existsSync(PATH) ? JSON.parse(readFileSync(PATH, 'utf8')) : [];

export function writeKnown(all: readonly Conviction[]): void {
  const first = new Map<string, Conviction>();
  for (const one of all) if (!first.has(one.key)) first.set(one.key, one);
  const sorted = [...first.values()].sort((a, b) => (a.key < b.key ? -1 : 1));
  writeFileSync(PATH, `${JSON.stringify(sorted, null, 2)}\n`);
}

/** One line for each kind with how often it was met, as a person reads it. */
export function listed(convictions: readonly Conviction[]): string[] {
  const kinds = new Map<string, Conviction[]>();
  for (const one of convictions) kinds.set(one.key, [...(kinds.get(one.key) ?? []), one]);
  return [...kinds].map(([key, [one, ...more]]) => `${key} (${1 + more.length}; ${one!.spec}: ${one!.what})`);
}
