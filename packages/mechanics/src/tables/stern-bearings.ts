import type { Source } from '../core/source.js';

/** Least length of the aftmost bearing over shaft diameter, by lubrication, with the way to a shorter one. */
export interface SternBearingRule {
  readonly kind: 'oil, white metal' | 'oil, synthetic' | 'water' | 'grease';
  readonly lengthOverDiameter: number;
  readonly shorter?: {
    readonly lengthOverDiameter: number;
    /** Nominal pressure, Pa, with the standard's own comparison; absent where tests decide. */
    readonly pressure?: { readonly limit: number; readonly strictly: boolean };
    readonly condition: string;
  };
  readonly source: Source;
}

const M52: Source = {
  title: 'IACS UR M52',
  clause: 'length of the aft stern bearing',
  year: 2026,
  confidence: 'published',
};
const M85: Source = { ...M52, title: 'IACS UR M52 and M85' };

export const sternBearingRules: readonly SternBearingRule[] = [
  {
    kind: 'oil, white metal',
    lengthOverDiameter: 2,
    shorter: {
      lengthOverDiameter: 1.5,
      pressure: { limit: 0.8e6, strictly: true },
      condition: 'nominal pressure below 8 bar',
    },
    source: M52,
  },
  {
    kind: 'oil, synthetic',
    lengthOverDiameter: 2,
    shorter: {
      lengthOverDiameter: 1.5,
      pressure: { limit: 0.6e6, strictly: false },
      condition: 'type-approved material, nominal pressure at most 6 bar',
    },
    source: M52,
  },
  {
    kind: 'water',
    lengthOverDiameter: 4,
    shorter: { lengthOverDiameter: 2, condition: 'approved synthetic with satisfactory tests' },
    source: M85,
  },
  { kind: 'grease', lengthOverDiameter: 4, source: M52 },
];
