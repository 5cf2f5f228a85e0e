import type { BLADE_AREA_METHODS } from '../words.js';
import type { Held } from './fact.js';
import type { PropellerFacts } from './shafting.js';

export type PropellerMetal = Held<PropellerFacts['material']>;
export type BladeAreaMethod = (typeof BLADE_AREA_METHODS)[number];
