/**
 * US customary units that the handbook formulas are written in, in SI. All exact by definition, except that
 * the foot and pound make the horsepower and the psi what they are here.
 */
export const FOOT = 0.3048;
export const INCH = 0.0254;
export const POUND = 0.45359237;
export const POUND_FORCE = 4.4482216152605;
export const HORSEPOWER = 550 * FOOT * POUND_FORCE;
export const PSI = POUND_FORCE / INCH ** 2;
export const MILE_PER_HOUR = 0.44704;
/** rad/s in one revolution per minute. */
export const RPM = (2 * Math.PI) / 60;
