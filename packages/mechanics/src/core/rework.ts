import { allFormulas } from './formula.js';
import type { Value } from './value.js';

/**
 * What a value would be with another figure in the place of one that it rests on: everything between the two is worked out
 * again. Undefined where a working on the way cannot be.
 */
export function reworked(value: Value, origin: object, si: number): number | undefined {
  return worked(value, origin, si, new Map());
}

/** The greatest of some values, which knows the others: with other figures another one may be the greatest. */
export function greatestOf<V extends Value>(values: readonly V[]): V | undefined {
  return picked(values, 'greatest');
}

/** The least of them. */
export function leastOf<V extends Value>(values: readonly V[]): V | undefined {
  return picked(values, 'least');
}

function picked<V extends Value>(values: readonly V[], pick: 'greatest' | 'least'): V | undefined {
  const way = pick === 'greatest' ? 1 : -1;
  const [first, ...rest] = values;
  if (first === undefined || rest.length === 0) return first;
  const chosen = rest.reduce((best, one) => (way * one.si > way * best.si ? one : best), first);
  return { ...chosen, among: { pick, values } };
}

type Done = Map<Value, number | undefined>;

function worked(value: Value, origin: object, si: number, done: Done): number | undefined {
  if (value.origin === origin && !value.among) return si;
  if (!value.working && !value.among) return value.si;
  if (!done.has(value))
    done.set(value, value.among ? amongAgain(value, origin, si, done) : again(value, origin, si, done));
  return done.get(value);
}

function amongAgain({ among }: Value, origin: object, si: number, done: Done): number | undefined {
  const all = among!.values.map(one => worked(one, origin, si, done));
  if (all.some(one => one === undefined)) return undefined;
  return among!.pick === 'greatest' ? Math.max(...(all as number[])) : Math.min(...(all as number[]));
}

function again({ si: as, working }: Value, origin: object, si: number, done: Done): number | undefined {
  const { inputs, names, again, name } = working!;
  const now = inputs.map(one => worked(one, origin, si, done));
  if (now.some(one => one === undefined)) return undefined;
  // Nothing of it changed: the result stands, whether or not it could be worked out.
  if (now.every((one, index) => one === inputs[index]!.si)) return as;
  if (again) return again(now as number[]);
  const made = names && allFormulas().get(name);
  if (!made) return undefined;
  return made.spec.compute(Object.fromEntries(names.map((key, index) => [key, now[index]!])));
}
