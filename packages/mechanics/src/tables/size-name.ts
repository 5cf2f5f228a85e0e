/**
 * One key for the many ways a standard size is written: `SAE 3`, `No. 3`, `SAE-3M`; `11 1/2 in`, `11.5"`, `11-1/2`.
 * `00` stays apart from `0`: they are two housings. Gives undefined when the text is no size.
 */
export function sizeKey(name: string): string | undefined {
  const bare = name
    .replace(/\b(sae|no|inch|in)\b\.?/gi, ' ')
    .replace(/["”″#]/g, ' ')
    .trim()
    .replace(/^-+/, '')
    .replace(/m$/i, '')
    .trim();
  if (bare === '00') return '00';
  const size = mixedNumber(bare);
  return size === undefined ? undefined : String(size);
}

/** `1 1/2`, `1-1/2`, `3/4`, `11.5`. */
function mixedNumber(text: string): number | undefined {
  const match = /^(?:(\d+(?:\.\d+)?)|(?:(\d+)[ -]+)?(\d+)\/(\d+))$/.exec(text);
  if (!match) return undefined;
  const [, plain, whole, over, under] = match;
  if (plain !== undefined) return Number(plain);
  return Number(under) === 0 ? undefined : Number(whole ?? 0) + Number(over) / Number(under);
}
