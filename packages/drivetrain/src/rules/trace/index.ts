import type { Rule } from '../rule.js';
import { requirementMet } from './requirement-met.js';
import { requirementUnverified } from './requirement-unverified.js';

export {
  NAMED_QUANTITIES,
  type NamedQuantity,
  type Verification,
  verificationOf,
} from './quantities/index.js';

/** Rules on requirements: that they are met, and that something verifies them. */
export const TRACE_RULES: readonly Rule[] = [requirementMet, requirementUnverified];
