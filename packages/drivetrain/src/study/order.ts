import type { Judge } from './judging.js';
import { type Choice, choiceAt, combinationsOf, type StudyCase } from './result.js';

/** The checks in the order in which candidates are judged by them. */
export interface Order {
  /** Checks that few candidates need to be judged by: the others have the same in all that these look at. */
  readonly shared: readonly number[];
  /** Checks that look at nearly everything that varies: a candidate that has failed already is spared them. */
  readonly own: readonly number[];
}

/**
 * Finds out which dimensions each check depends on, by a candidate for each option, and puts those first that depend on least.
 * What comes out does not depend on how fast the machine is, nor on where a search begins. It rests before each candidate.
 */
export function* orderOf(judge: Judge, of: StudyCase, first: number): Generator<void, Order> {
  const { dimensions } = of;
  const base = choiceAt(dimensions, first);
  // Seen once to find all varied places, and once more with all of them known.
  const shape = judge.judging(of.vesselWith(base)!).shape;
  const leaves = (choice: Choice) => {
    const vessel = of.vesselWith(choice);
    const judging = vessel && judge.judging(vessel);
    return judging?.shape === shape ? judging.leaves : undefined;
  };
  function* look(): Generator<void, Set<number>[]> {
    const own = leaves(base)!;
    const found: Set<number>[] = [];
    for (const [at, { options }] of dimensions.entries()) {
      const slots = new Set<number>();
      for (const option of options.keys()) {
        yield;
        const other = leaves(base.map((one, index) => (index === at ? option : one)));
        for (const [slot, leaf] of (other ?? []).entries()) if (leaf !== own[slot]) slots.add(slot);
      }
      found.push(slots);
    }
    return found;
  }
  yield* look();
  const slotsOfDimension = yield* look();
  const judging = judge.judging(of.vesselWith(base)!);
  judging.verdicts();
  const total = combinationsOf(dimensions);
  const checks = Array.from({ length: judging.checks }, (_, check) => {
    const looked = judging.slotsOf(check);
    const distinct = dimensions.reduce(
      (product, { options }, at) =>
        looked.some(slot => slotsOfDimension[at]!.has(slot)) ? product * options.length : product,
      1,
    );
    return { check, distinct };
  }).sort((a, b) => a.distinct - b.distinct || a.check - b.check);
  const isShared = ({ distinct }: { distinct: number }) => distinct <= Math.max(64, total / 16);
  return {
    shared: checks.filter(isShared).map(one => one.check),
    own: checks.filter(one => !isShared(one)).map(one => one.check),
  };
}
