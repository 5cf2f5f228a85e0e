/** How the shaft is held at the forward bearing of the aftmost span. The truth lies between the two. */
export type ForwardEnd = 'pinned' | 'fixed';

export interface OverhungShaft {
  /** Span between the two aftmost supports, m. */
  readonly L: number;
  /** From the aft support to the propeller's centre of mass, m. */
  readonly b: number;
  /** Young's modulus, Pa. */
  readonly E: number;
  /** Second moment of area, m⁴. */
  readonly I: number;
}

/**
 * Influence numbers at the end of an overhang (Woytowich 1979): a11 deflection per force (m/N), a12 slope per
 * force, which is also deflection per moment (1/N), a22 slope per moment (1/(N·m)).
 * A fixed forward end stiffens the span's share from L/3 to L/4.
 */
export function overhungInfluence({ L, b, E, I }: OverhungShaft, forward: ForwardEnd) {
  const span = L / (forward === 'pinned' ? 3 : 4);
  const EI = E * I;
  return {
    a11: (b ** 3 / 3 + b ** 2 * span) / EI,
    a12: (b ** 2 / 2 + b * span) / EI,
    a22: (b + span) / EI,
  };
}
