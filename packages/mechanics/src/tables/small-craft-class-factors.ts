import type { Source } from '../core/source.js';

/** Factor k_s of the simplified class rule for craft of at most 25 m, by material and place. */
export interface SmallCraftClassFactor {
  readonly material: string;
  readonly place: 'application 1' | 'application 2' | 'stern tube shaft';
  readonly ks: number;
  readonly source: Source;
}

const KOREAN_FORM: Source = {
  title: 'Guidance for high speed and light craft (Korean class form)',
  clause: 'Table 5.3.1',
  confidence: 'published',
};

export const smallCraftClassFactors: readonly SmallCraftClassFactor[] = (
  [
    ['carbon steel', 126, 114, 114],
    ['austenitic stainless 316', 91, 81, 81],
    ['martensitic stainless 431', 88, 80, 80],
  ] as const
).flatMap(([material, first, second, tube]) => [
  { material, place: 'application 1', ks: first, source: KOREAN_FORM },
  { material, place: 'application 2', ks: second, source: KOREAN_FORM },
  { material, place: 'stern tube shaft', ks: tube, source: KOREAN_FORM },
]);
