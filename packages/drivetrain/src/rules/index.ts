import { CAPACITY_RULES } from './capacity/index.js';
import { INTERFACE_RULES } from './interface/index.js';
import type { Mistake } from './mistakes.js';
import { PAPER_RULES } from './paper/index.js';
import { PROPELLER_RULES } from './propeller/index.js';
import { RATIO_RULES } from './ratio/index.js';
import { ROTATION_RULES } from './rotation/index.js';
import type { Rule } from './rule.js';
import { SHAFTING_RULES } from './shafting/index.js';
import { SPEED_RULES } from './speed/index.js';
import { TRACE_RULES } from './trace/index.js';
import { TRIAL_RULES } from './trial/index.js';
import { UNIT_RULES } from './units/index.js';

/** Every rule, in the order of the catalogue of mistakes. */
export const RULES: readonly Rule[] = [
  ...ROTATION_RULES,
  ...RATIO_RULES,
  ...CAPACITY_RULES,
  ...SPEED_RULES,
  ...PROPELLER_RULES,
  ...SHAFTING_RULES,
  ...INTERFACE_RULES,
  ...UNIT_RULES,
  ...PAPER_RULES,
  ...TRACE_RULES,
  ...TRIAL_RULES,
];

/** Rules that hold a mistake. */
export function rulesAgainst({ number }: Mistake): Rule[] {
  return RULES.filter(rule => rule.mistakes.includes(number));
}

/** The rule with this id. */
export function findRule(id: string): Rule | undefined {
  return RULES.find(rule => rule.id === id);
}
