import type { Quantity } from '../model/fact.js';

/** `1500 hours a year`, or the words that stand where the number is not known. */
export function hoursWords({ value, written }: Quantity<'number'>): string {
  return value?.figure ? `${value.figure.text} hours a year` : written;
}
