import type { Rule } from '../rule.js';

/** Rules on how engine, gear, shaft and hull fit each other, in the order of the catalogue of mistakes. */
export const INTERFACE_RULES: readonly Rule[] = [];
