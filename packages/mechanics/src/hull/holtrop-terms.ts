import { frictionCoefficient } from './friction-line.js';
import type { HullNumbers } from './hull-form.js';

/** Acceleration of free fall as the method's worked example takes it. */
export const HOLTROP_GRAVITY = 9.81;

export type Edition = '1982' | '1984';

/** Coefficients of the hull that do not depend on speed, under the names the papers give them. */
export interface HoltropHull {
  readonly T: number;
  readonly CB: number;
  readonly CP: number;
  readonly LR: number;
  readonly S: number;
  /** 1 + k1. */
  readonly formFactor: number;
  /** Half angle of entrance, degrees. */
  readonly iE: number;
  readonly c1: number;
  readonly c2: number;
  readonly c3: number;
  readonly c4: number;
  readonly c5: number;
  readonly c7: number;
  readonly c15: number;
  readonly c16: number;
  readonly m1: number;
  readonly lambda: number;
  readonly CA: number;
}

/**
 * Speed-independent part of the method. Two things in it are often copied wrongly: lcb counts with a plus sign in
 * the form factor and a minus sign in iE, and c15 is negative although the 1982 paper prints it without its sign.
 */
export function holtropHull(h: HullNumbers, edition: Edition): HoltropHull {
  const { waterlineLength: L, beam: B, displacedVolume: vol, midshipCoefficient: CM } = h;
  const T = (h.draughtForward + h.draughtAft) / 2;
  const lcb = h.buoyancyForward;
  const CB = vol / (L * B * T);
  const CP = CB / CM;
  const LR = L * (1 - CP + (0.06 * CP * lcb) / (4 * CP - 1));
  const S = h.wettedArea > 0 ? h.wettedArea : wettedArea(h, T, CB);
  const iE = h.entranceAngle > 0 ? (h.entranceAngle * 180) / Math.PI : entranceAngle(h, CP, LR);
  const c3 =
    h.bulbArea > 0
      ? (0.56 * h.bulbArea ** 1.5) /
        (B * T * (0.31 * Math.sqrt(h.bulbArea) + h.draughtForward - h.bulbHeight))
      : 0;
  const c2 = Math.exp(-1.89 * Math.sqrt(c3));
  const beamRatio = B / L;
  const c7 =
    beamRatio < 0.11
      ? 0.229577 * beamRatio ** 0.33333
      : beamRatio <= 0.25
        ? beamRatio
        : 0.5 - (0.0625 * L) / B;
  const c16 = CP < 0.8 ? 8.07981 * CP - 13.8673 * CP ** 2 + 6.984388 * CP ** 3 : 1.73014 - 0.7067 * CP;
  const slenderness = L ** 3 / vol;
  const c15 =
    slenderness < 512 ? -1.69385 : slenderness > 1726.91 ? 0 : -1.69385 + (L / Math.cbrt(vol) - 8) / 2.36;
  const c4 = Math.min(h.draughtForward / L, 0.04);
  return {
    T,
    CB,
    CP,
    LR,
    S,
    formFactor: edition === '1982' ? formFactor1982(h, T, CP, LR) : formFactor1984(h, T, CP, LR),
    iE,
    c1: 2223105 * c7 ** 3.78613 * (T / B) ** 1.07961 * (90 - iE) ** -1.37565,
    c2,
    c3,
    c4,
    c5: 1 - (0.8 * h.transomArea) / (B * T * CM),
    c7,
    c15,
    c16,
    m1: (0.0140407 * L) / T - (1.75254 * Math.cbrt(vol)) / L - (4.79323 * B) / L - c16,
    lambda: L / B < 12 ? 1.446 * CP - (0.03 * L) / B : 1.446 * CP - 0.36,
    CA: 0.006 * (L + 100) ** -0.16 - 0.00205 + 0.003 * Math.sqrt(L / 7.5) * CB ** 4 * c2 * (0.04 - c4),
  };
}

function wettedArea(h: HullNumbers, T: number, CB: number): number {
  const { waterlineLength: L, beam: B, midshipCoefficient: CM } = h;
  return (
    L *
      (2 * T + B) *
      Math.sqrt(CM) *
      (0.453 + 0.4425 * CB - 0.2862 * CM - (0.003467 * B) / T + 0.3696 * h.waterplaneCoefficient) +
    (2.38 * h.bulbArea) / CB
  );
}

function entranceAngle(h: HullNumbers, CP: number, LR: number): number {
  const { waterlineLength: L, beam: B } = h;
  return (
    1 +
    89 *
      Math.exp(
        -((L / B) ** 0.80856) *
          (1 - h.waterplaneCoefficient) ** 0.30484 *
          (1 - CP - 0.0225 * h.buoyancyForward) ** 0.6367 *
          (LR / B) ** 0.34574 *
          ((100 * h.displacedVolume) / L ** 3) ** 0.16302,
      )
  );
}

function formFactor1982(h: HullNumbers, T: number, CP: number, LR: number): number {
  const { c12, c13 } = formTerms1982(h, T);
  return (
    c13 *
    (0.93 +
      c12 *
        (h.beam / LR) ** 0.92497 *
        (0.95 - CP) ** -0.521448 *
        (1 - CP + 0.0225 * h.buoyancyForward) ** 0.6906)
  );
}

/** Draught over length and shape of the stern, as they count in the form factor of 1982. */
export function formTerms1982(h: HullNumbers, T: number): { readonly c12: number; readonly c13: number } {
  const ratio = T / h.waterlineLength;
  const c12 =
    ratio > 0.05 ? ratio ** 0.2228446 : ratio > 0.02 ? 48.2 * (ratio - 0.02) ** 2.078 + 0.479948 : 0.479948;
  return { c12, c13: 1 + 0.003 * h.sternShape };
}

function formFactor1984(h: HullNumbers, T: number, CP: number, LR: number): number {
  const { waterlineLength: L, beam: B } = h;
  return (
    0.93 +
    0.487118 *
      (1 + 0.011 * h.sternShape) *
      (B / L) ** 1.06806 *
      (T / L) ** 0.46106 *
      (L / LR) ** 0.121563 *
      (L ** 3 / h.displacedVolume) ** 0.36486 *
      (1 - CP) ** -0.604247
  );
}

/** Components of resistance at one speed, N. */
export interface HoltropComponents {
  readonly friction: number;
  readonly appendages: number;
  readonly wave: number;
  readonly bulb: number;
  readonly transom: number;
  readonly correlation: number;
  readonly total: number;
  readonly frictionCoefficient: number;
}

/** Resistance of a hull at a speed by either edition; all numbers SI. */
export function holtropComponents(h: HullNumbers, V: number, edition: Edition): HoltropComponents {
  const hull = holtropHull(h, edition);
  const nothing = { friction: 0, appendages: 0, wave: 0, bulb: 0, transom: 0, correlation: 0, total: 0 };
  if (V === 0) return { ...nothing, frictionCoefficient: 0 };
  const dynamic = 0.5 * h.density * V * V;
  const CF = frictionCoefficient((V * h.waterlineLength) / h.viscosity);
  const friction = dynamic * hull.S * CF;
  const appendages = dynamic * h.appendageArea * h.appendageFactor * CF;
  const wave = waveResistance(h, hull, V / Math.sqrt(HOLTROP_GRAVITY * h.waterlineLength), edition);
  const bulb = bulbResistance(h, V);
  const transom = transomResistance(h, V);
  // The wetted area counts the appendages here; with the bare hull the example's own figure is missed by 0.6 %.
  const correlation = dynamic * (hull.S + h.appendageArea) * hull.CA;
  const total = friction * hull.formFactor + appendages + wave + bulb + transom + correlation;
  return { friction, appendages, wave, bulb, transom, correlation, total, frictionCoefficient: CF };
}

function waveResistance(h: HullNumbers, hull: HoltropHull, Fn: number, edition: Edition): number {
  const { c1, c2, c5, c15, m1, lambda, CP } = hull;
  const weight = h.displacedVolume * h.density * HOLTROP_GRAVITY;
  const slow = (f: number): number => {
    const m =
      edition === '1982'
        ? c15 * CP ** 2 * Math.exp(-0.1 * f ** -2)
        : 0.4 * c15 * Math.exp(-0.034 * f ** -3.29);
    return c1 * c2 * c5 * weight * Math.exp(m1 * f ** -0.9 + m * Math.cos(lambda * f ** -2));
  };
  if (edition === '1982' || Fn < 0.4) return slow(Fn);
  const { waterlineLength: L, beam: B, displacedVolume: vol } = h;
  const c17 = 6919.3 * h.midshipCoefficient ** -1.3346 * (vol / L ** 3) ** 2.00977 * (L / B - 2) ** 1.40692;
  const m3 = -7.2035 * (B / L) ** 0.326869 * (hull.T / B) ** 0.605375;
  const fast = (f: number): number => {
    const m4 = 0.4 * c15 * Math.exp(-0.034 * f ** -3.29);
    return c17 * c2 * c5 * weight * Math.exp(m3 * f ** -0.9 + m4 * Math.cos(lambda * f ** -2));
  };
  if (Fn > 0.55) return fast(Fn);
  return slow(0.4) + ((10 * Fn - 4) * (fast(0.55) - slow(0.4))) / 1.5;
}

/** Emergence PB of the bulb and the Froude number of its immersion at a speed. */
export function bulbTerms(h: HullNumbers, V: number): { readonly PB: number; readonly Fni: number } {
  const root = Math.sqrt(h.bulbArea);
  return {
    PB: (0.56 * root) / (h.draughtForward - 1.5 * h.bulbHeight),
    Fni: V / Math.sqrt(HOLTROP_GRAVITY * (h.draughtForward - h.bulbHeight - 0.25 * root) + 0.15 * V * V),
  };
}

/** Froude number of the immersed transom; from 5 on the water has left it. */
export function transomFroude(h: HullNumbers, V: number): number {
  return V / Math.sqrt((2 * HOLTROP_GRAVITY * h.transomArea) / (h.beam + h.beam * h.waterplaneCoefficient));
}

function bulbResistance(h: HullNumbers, V: number): number {
  if (h.bulbArea <= 0) return 0;
  const { PB, Fni } = bulbTerms(h, V);
  return (
    (0.11 * Math.exp(-3 * PB ** -2) * Fni ** 3 * h.bulbArea ** 1.5 * h.density * HOLTROP_GRAVITY) /
    (1 + Fni * Fni)
  );
}

function transomResistance(h: HullNumbers, V: number): number {
  if (h.transomArea <= 0) return 0;
  const FnT = transomFroude(h, V);
  return FnT < 5 ? 0.5 * h.density * V * V * h.transomArea * 0.2 * (1 - 0.2 * FnT) : 0;
}
