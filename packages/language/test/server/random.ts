/** Whole numbers from 0 up to below a limit, the same ones on every run (the 32-bit generator of Park and Miller). */
export function randomFrom(seed: number): (limit: number) => number {
  let state = seed;
  return limit => {
    state = (state * 48271) % 2147483647;
    return Math.floor((state / 2147483647) * limit);
  };
}
