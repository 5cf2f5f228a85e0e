import type { Rule } from '../rule.js';
import { diameter } from './diameter.js';
import { materialNamed } from './material-named.js';
import { serviceFactorChosen } from './service-factor.js';

/** Rules on the shaft line, in the order of the catalogue of mistakes. */
export const SHAFTING_RULES: readonly Rule[] = [diameter, serviceFactorChosen, materialNamed];
