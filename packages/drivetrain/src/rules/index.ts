import { ROTATION_RULES } from './rotation/index.js';
import type { Rule } from './rule.js';

/** Every rule, in the order of the catalogue of mistakes. */
export const RULES: readonly Rule[] = [...ROTATION_RULES];

/** The rule with this id. */
export function findRule(id: string): Rule | undefined {
  return RULES.find(rule => rule.id === id);
}
