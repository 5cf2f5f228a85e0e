/**
 * Generated suites are long: `npm test` takes a share of each, the long project (`.ci/run`) the whole. A suite that
 * imports this file runs in both. SEED=7 takes another share.
 */
const whole = process.env.TAILSHAFT_WHOLE !== undefined;
const seed = Number(process.env.SEED ?? 1);

/**
 * About so many, spread over the whole and in their order; in the long project all of them, or about `most` where all take
 * too long for one run.
 */
export function share<T>(all: readonly T[], about: number, most = all.length): readonly T[] {
  const many = whole ? most : about;
  if (all.length <= many) return all;
  const step = all.length / many;
  return Array.from({ length: many }, (_, index) => {
    const within = ((index + 1) * 0.618_034 * seed) % 1;
    return all[Math.floor((index + within) * step)]!;
  });
}

/** How often something random is tried: the first number in `npm test`, the second in the long project. */
export const times = (few: number, many: number): number => (whole ? many : few);
