import type { Value } from '@tailshaft/mechanics';
import type { Route } from '../judge/route.js';
import type { Missing } from '../judge/verdict.js';

/** What would suit a place in a line: each a route with its working, or what has to be known first. */
export interface Suiting {
  readonly routes: readonly (Route & { readonly workings: readonly Value[] })[];
  readonly missing: readonly Missing[];
  /** Why nothing can be worked out though everything is known. */
  readonly refusal?: string;
}

export const NOTHING_SUITS: Suiting = { routes: [], missing: [] };
