import type { Source } from '@tailshaft/mechanics';
import { DUTY_STEPS } from '@tailshaft/vocabulary';

/** Where the order of the duty classes comes from. */
export const DUTY_CLASS_SOURCE: Source = {
  title:
    'pleasure, intermediate and continuous as a gear rating note defines them; light, medium and heavy between them',
  confidence: 'common practice',
};

const STEPS: readonly (readonly string[])[] = DUTY_STEPS;

export type DutyComparison = 'same' | 'heavier' | 'lighter' | 'not comparable';

/** How the offered duty stands to the one that is wanted. */
export function compareDuty(offered: string, wanted: string): DutyComparison {
  const [a, b] = [offered.toLowerCase(), wanted.toLowerCase()];
  if (a === b) return 'same';
  const [one, other] = [stepOf(a), stepOf(b)];
  if (one < 0 || other < 0) return 'not comparable';
  if (one === other) return 'same';
  return one > other ? 'heavier' : 'lighter';
}

/** Puts the lightest of the classes that still carries the wanted duty first. */
export function lighterFirst(one: string, other: string): number {
  return stepOf(one.toLowerCase()) - stepOf(other.toLowerCase());
}

function stepOf(word: string): number {
  return STEPS.findIndex(step => step.includes(word));
}
