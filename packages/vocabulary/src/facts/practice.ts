import type { Origin } from '@tailshaft/mechanics';
import type { FactsOf } from '../kinds.js';
import type { ACCEPTANCE_RIGHT, GRAVITY, PRACTICE } from '../practice.js';

/** Who may accept failures of the rules whose ids begin so. */
export interface AcceptanceRight extends FactsOf<typeof ACCEPTANCE_RIGHT> {
  readonly origin: Origin;
  readonly rules: string;
}

/** How much failures of the rules whose ids begin so weigh in this practice. */
export interface Gravity extends FactsOf<typeof GRAVITY> {
  readonly origin: Origin;
  readonly rules: string;
}

/** What an office asks of all its vessels: every vessel that sees it is judged by it. */
export interface PracticeFacts extends FactsOf<typeof PRACTICE> {
  readonly acceptances?: readonly AcceptanceRight[];
  readonly gravities?: readonly Gravity[];
}
