import { PAPER_RULES } from './paper/index.js';
import { ROTATION_RULES } from './rotation/index.js';
import type { Rule } from './rule.js';
import { UNIT_RULES } from './units/index.js';

/** Every rule, in the order of the catalogue of mistakes. */
export const RULES: readonly Rule[] = [...ROTATION_RULES, ...UNIT_RULES, ...PAPER_RULES];

/** The rule with this id. */
export function findRule(id: string): Rule | undefined {
  return RULES.find(rule => rule.id === id);
}
