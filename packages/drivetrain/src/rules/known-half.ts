import type { Value } from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Said, sayFor } from '../judge/say.js';
import { marginOf, type Verdict } from '../judge/verdict.js';
import { waits } from './waiting.js';

/** A comparison of which one side may be known in part: the capacity at most, the demand at least. */
export interface KnownHalf extends Omit<Said, 'message'> {
  readonly capacity: Value;
  readonly demand: Value;
  readonly wanted?: number;
  /** `Port: whether the coupling may carry the torque at its place`. */
  readonly what: string;
  /** The numbers that are known, said in every case. */
  readonly numbers: string;
  /** Behind the numbers, when they do not suffice. */
  readonly remedy: string;
}

/**
 * Judges by what is known: when that fails already, it fails whatever the missing facts are; when it does not, the
 * verdict waits for them, and prints what is known.
 */
export function judgeKnown(say: ReturnType<typeof sayFor>, needs: Needs, said: KnownHalf): Verdict {
  const { what, numbers, remedy, wanted = 0, ...rest } = said;
  const margin = marginOf(said.capacity, said.demand);
  if (needs.any && (margin === undefined || margin >= wanted)) {
    const { capacity, demand, routes: _, place: __, severity: ___, ...told } = rest;
    return waits(say, needs, said.place, what, {
      ...told,
      known: numbers,
      workings: [demand, capacity, ...(said.workings ?? [])],
    });
  }
  const line = leadOf(what);
  return say.compare({
    ...rest,
    wanted,
    message: `${line}${numbers}.`,
    failMessage: `${line}${numbers}${remedy}`,
  });
}

/** `Port: ` of `Port: whether ...`. */
function leadOf(what: string): string {
  return /^[^:]{1,60}: /.exec(what)?.[0] ?? '';
}
