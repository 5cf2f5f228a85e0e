import type { HULL_FORM_ROWS } from '../hull-form.js';
import type { FactsOf } from '../kinds.js';
import type { SPEED_METHODS } from '../words.js';
import type { Held } from './fact.js';

export type SpeedMethod = (typeof SPEED_METHODS)[number];

/** What a hull says that its resistance, and the flow to its propellers, can be worked out from. */
export interface HullForm extends FactsOf<typeof HULL_FORM_ROWS> {}

export type HullMaterial = Held<HullForm['material']>;
