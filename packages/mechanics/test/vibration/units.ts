/** Factors of the printed examples, NIST SP 811. */
export const INCH = 0.0254;
export const LONG_TON = 1016.0469088;
export const POUND = 0.45359237;
export const PSI = 6894.757293168361;
export const GRAVITY = 9.80665;
export const PER_MINUTE = 1 / 60;
export const RPM = (2 * Math.PI) / 60;
export const secondMoment = (d: number) => (Math.PI * d ** 4) / 64;
