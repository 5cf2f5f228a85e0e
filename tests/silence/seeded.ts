/** Numbers that look random and are the same for the same seed. */
export function seeded(seed: number) {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    return mixed(state);
  };
  const below = (many: number): number => Math.floor(next() * many);
  return {
    below,
    one: <T>(of: readonly T[]): T => of[below(of.length)]!,
    chance: (share: number): boolean => next() < share,
  };
}

export type Seeded = ReturnType<typeof seeded>;

/** A number from 0 up to 1 that belongs to a seed and some words, whatever else is drawn. */
export function lot(seed: number, words: string): number {
  let state = seed >>> 0;
  for (let at = 0; at < words.length; at++) state = Math.imul(state ^ words.charCodeAt(at), 0x01000193) >>> 0;
  return mixed(state);
}

function mixed(state: number): number {
  let now = Math.imul(state ^ (state >>> 15), 1 | state);
  now = (now + Math.imul(now ^ (now >>> 7), 61 | now)) ^ now;
  return ((now ^ (now >>> 14)) >>> 0) / 2 ** 32;
}
