import type { Base } from './base-specs.js';
import { type Change, type Letter, type Lost, lostBy } from './change.js';
import { add } from './changes/add.js';
import { inOneMode, insertUnchanged, splitRevision } from './changes/arrangements.js';
import { doubt } from './changes/doubt.js';
import { modify } from './changes/modify.js';
import { move } from './changes/move.js';
import { push } from './changes/push.js';
import { remove, removePairs, unknown } from './changes/remove.js';
import { rename } from './changes/rename.js';
import { restate } from './changes/restate.js';
import { exceptionFor } from './exceptions.js';
import { Bench, type Judged } from './rejudge.js';
import { lot } from './seeded.js';

/** One verdict that a change of a spec made better, or lost. */
export interface Conviction {
  /** Rule, change and property: all cases of one such are one entry of the known list. */
  readonly key: string;
  readonly spec: string;
  readonly what: string;
}

/** Which changes of which specs are judged. */
export interface Plan {
  readonly seed: number;
  /** Share of the changes that are judged; those by whole arrangements, parts or names are few, and ten times as much of them. */
  readonly share: number;
  /** No further spec is begun after so many seconds. */
  readonly seconds: number;
  /** Only changes of these letters. */
  readonly letters?: readonly Letter[];
}

export interface Outcome {
  readonly convictions: readonly Conviction[];
  readonly judged: Readonly<Partial<Record<Letter, number>>>;
  /** Specs that were not reached in time. */
  readonly left: number;
}

const FEW: readonly Letter[] = ['b', 'c', 'd', 'h'];

/** Every change of a spec; the second facts of pairs are drawn by the seed. */
export function* changesOf(base: Judged, seed: number): Generator<Change> {
  yield* remove(base);
  yield* unknown(base);
  yield* removePairs(base, words => lot(seed, words));
  yield* insertUnchanged(base);
  yield* inOneMode(base);
  yield* splitRevision(base);
  yield* modify(base);
  yield* doubt(base);
  yield* restate(base);
  yield* move(base);
  yield* rename(base);
  yield* add(base);
  yield* push(base);
}

/** Says specs in other ways, in the order of a lot, and tells what got better by it or was lost. */
export async function runOver(
  specs: readonly Base[],
  { seed, share, seconds, letters }: Plan,
): Promise<Outcome> {
  const end = performance.now() + seconds * 1000;
  const convictions: Conviction[] = [];
  const judged: Partial<Record<Letter, number>> = {};
  const order = [...specs].sort((a, b) => lot(seed, a.name) - lot(seed, b.name));
  let left = order.length;
  for (const spec of order) {
    if (performance.now() > end) break;
    left -= 1;
    const chosen = (change: Change) =>
      (letters?.includes(change.letter) ?? true) &&
      lot(seed, `${spec.name} ${change.what}`) < share * (FEW.includes(change.letter) ? 10 : 1);
    // Benches of their own: judging the next text of a bench moves the places of the one before.
    const base = await new Bench().judge(spec.text);
    const bench = new Bench();
    for (const change of [...changesOf(base, seed)].filter(chosen)) {
      judged[change.letter] = (judged[change.letter] ?? 0) + 1;
      convictions.push(...(await convict(spec, base, change, bench)));
    }
  }
  return { convictions, judged, left };
}

async function convict(spec: Base, base: Judged, change: Change, bench: Bench): Promise<Conviction[]> {
  const words = ({ rule, subject, how }: Lost) => `${rule} ${subject} ${how}`;
  const after = await bench.judge(change.text);
  const all = lostBy(change, base, after) ?? [];
  const ofHalves = new Set<string>();
  for (const half of all.length > 0 ? (change.halves ?? []) : [])
    for (const one of lostBy(change, base, await bench.judge(half)) ?? []) ofHalves.add(words(one));
  return all
    .filter(one => !ofHalves.has(words(one)) && !exceptionFor(change, one, after))
    .map(({ rule, how }) => ({
      key: `${change.letter} ${rule} | ${change.about} | ${how}`,
      spec: spec.name,
      what: change.what,
    }));
}

/** What one change of one spec is convicted of. */
export async function runOne(spec: Base, what: string, seed: number): Promise<readonly Conviction[]> {
  const base = await new Bench().judge(spec.text);
  for (const change of changesOf(base, seed))
    if (change.what === what) return convict(spec, base, change, new Bench());
  return [];
}
