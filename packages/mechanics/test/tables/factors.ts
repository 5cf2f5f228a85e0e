/** SI per printed unit, exact by definition: kept apart from the factors of the code under test. */
export const IN = 0.0254;
export const LBF = 0.45359237 * 9.80665;
export const PSI = LBF / IN ** 2;
export const LBF_IN = LBF * IN;
export const HP = 550 * 12 * LBF_IN;
export const RPM = Math.PI / 30;
export const DEG = Math.PI / 180;
export const HOUR = 3600;
export const LB_IN3 = 0.45359237 / IN ** 3;
export const MM = 1e-3;
export const MPA = 1e6;
export const KW = 1e3;
