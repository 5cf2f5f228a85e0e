import type { Origin } from '@tailshaft/mechanics';
import type { Fact, Quantity } from './fact.js';
import type { Criteria } from './vessel.js';

/** Who may accept failures of the rules whose ids begin so. */
export interface AcceptanceRight {
  readonly origin: Origin;
  readonly rules: string;
  /** Roles, with commas between them. */
  readonly by?: Fact<string>;
}

/** How much failures of the rules whose ids begin so weigh in this practice. */
export interface Gravity {
  readonly origin: Origin;
  readonly rules: string;
  readonly weight?: Fact<'error' | 'warning'>;
}

/** What an office asks of all its vessels: every vessel that sees it is judged by it. */
export interface PracticeFacts extends Omit<Criteria, 'origin'> {
  readonly titleBlock?: Fact<string>;
  readonly longestAcceptance?: Quantity<'time'>;
  readonly acceptances?: readonly AcceptanceRight[];
  readonly gravities?: readonly Gravity[];
}
