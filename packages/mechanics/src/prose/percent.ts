import { minusSign } from './minus.js';

/** `12 %`, `0.4 %`, `−49 %`: shares are read to a tenth only while they are small. */
export function percent(share: number): string {
  const size = Math.abs(share * 100);
  const digits = size.toFixed(size < 9.95 ? 1 : 0).replace(/\.0$/, '');
  return minusSign(`${share < 0 && digits !== '0' ? '-' : ''}${digits} %`);
}

/** `+12 %`, `−4 %`, and no sign to what rounds to nothing: a margin or a change. */
export function signedPercent(share: number): string {
  const words = percent(share);
  return share > 0 && words !== '0 %' ? `+${words}` : words;
}
