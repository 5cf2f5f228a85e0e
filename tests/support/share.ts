/**
 * Generated suites are long: `npm test` takes a share of each, the long project (`.ci/run`) the whole. A suite that
 * imports this file runs in both. SEED=7 takes another share.
 */
const whole = process.env.TAILSHAFT_WHOLE !== undefined;
const seed = Number(process.env.SEED ?? 1);

/** In the long project all of them, else about so many, spread over the whole and in their order. */
export function share<T>(all: readonly T[], about: number): readonly T[] {
  if (whole || all.length <= about) return all;
  const step = all.length / about;
  return Array.from({ length: about }, (_, index) => {
    const within = ((index + 1) * 0.618_034 * seed) % 1;
    return all[Math.floor((index + within) * step)]!;
  });
}

/** How often something random is tried: the first number in `npm test`, the second in the long project. */
export const times = (few: number, many: number): number => (whole ? many : few);
