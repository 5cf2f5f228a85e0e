import type { Source } from '../core/source.js';

/** Tapered end of a small-craft propeller shaft, metric series, 1:10. Lengths in metres. */
export interface MetricShaftEnd {
  readonly diameter: number;
  readonly taper: number;
  /** As sold: the vendor's sheet gives a span, not one figure. */
  readonly taperLength: { readonly min: number; readonly max: number };
  readonly thread: string;
  /** Width and height; a single figure was printed where they are equal. */
  readonly key: { readonly width: number; readonly height: number };
  readonly source: Source;
}

/** One propeller vendor's order sheet; the standard behind it, ISO 4566, was not at hand. */
const ORDER_SHEET: Source = {
  title: 'ISO 4566',
  clause: "taper 1:10, dimensions from one propeller vendor's order sheet",
  confidence: 'from memory',
};

export const metricShaftEnds: readonly MetricShaftEnd[] = [
  {
    diameter: 25e-3,
    taper: 1 / 10,
    taperLength: { min: 53e-3, max: 55e-3 },
    thread: 'M16x1.5',
    key: { width: 6e-3, height: 6e-3 },
    source: ORDER_SHEET,
  },
  {
    diameter: 30e-3,
    taper: 1 / 10,
    taperLength: { min: 70e-3, max: 75e-3 },
    thread: 'M20x1.5',
    key: { width: 8e-3, height: 7e-3 },
    source: ORDER_SHEET,
  },
];

/** The end of a shaft diameter in metres, measured to within 0.1 mm of a listed size. */
export function metricShaftEndOf(diameter: number): MetricShaftEnd | undefined {
  return metricShaftEnds.find(row => Math.abs(row.diameter - diameter) <= 0.1e-3);
}
