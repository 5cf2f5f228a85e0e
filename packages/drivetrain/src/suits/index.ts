import type { LineContext } from '../judge/context.js';
import type { Part } from '../model/part.js';
import type { Shaft } from '../model/shafting.js';
import { suitingPropellers } from './propeller.js';
import { suitingRatio } from './ratio.js';
import { suitingShaft } from './shaft.js';
import { NOTHING_SUITS, type Suiting } from './suiting.js';

export type { SuitingRatio } from './ratio.js';
export type { Suiting } from './suiting.js';

/** What would suit a part of a line that is sized: a propeller, a shaft, or a gear by its ratio. */
export function suiting(part: Part, context: LineContext): Suiting {
  const { line, vessel, analysis } = context;
  if (part.role === 'propeller') return suitingPropellers(line, vessel);
  if (part.role === 'shaft') return suitingShaft(analysis, part as Shaft);
  return part.role === 'gear' ? suitingRatio(context) : NOTHING_SUITS;
}
