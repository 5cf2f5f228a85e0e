import type { Source } from '../core/source.js';

/** Every factor in the unit tables is made from these, which are exact by definition. */
export const INCH = 0.0254;
export const FOOT = 0.3048;
export const YARD = 0.9144;
export const STATUTE_MILE = 1609.344;
export const NAUTICAL_MILE = 1852;
export const POUND = 0.45359237;
/** m/s², CGPM 1901. */
export const STANDARD_GRAVITY = 9.80665;
/** kg/m³: the conventional density of Hg at 0 °C. */
export const HG_DENSITY = 13595.1;
export const IMPERIAL_GALLON = 4.54609e-3;

export const POUND_FORCE = POUND * STANDARD_GRAVITY;
export const PSI = POUND_FORCE / (INCH * INCH);
/** 550 ft·lbf/s. */
export const HORSEPOWER = 550 * FOOT * POUND_FORCE;
/** 75 kgf·m/s. */
export const METRIC_HORSEPOWER = 75 * STANDARD_GRAVITY;
/** 231 in³. */
export const US_GALLON = 231 * INCH ** 3;
/** One revolution per minute in rad/s. */
export const RPM = (2 * Math.PI) / 60;
export const DEGREE = Math.PI / 180;

/** Factors printed there, exact ones in bold. */
export const SP811: Source = {
  title: 'Guide for the Use of the International System of Units (SI), NIST Special Publication 811',
  author: 'A. Thompson and B. N. Taylor',
  year: 2008,
  clause: 'Appendix B',
  confidence: 'published',
};

/** A product of units whose factors are exact. */
export const BY_PRODUCT: Source = {
  title: 'product of exact factors, NIST Special Publication 811, Appendix B',
  confidence: 'derived',
};
