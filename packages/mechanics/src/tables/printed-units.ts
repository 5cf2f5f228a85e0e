/** Factors for figures that a table prints in inch units, exact by definition of the inch, the pound and g. */
export const inch = (printed: number): number => printed * 0.0254;
export const psi = (printed: number): number => (printed * 0.45359237 * 9.80665) / 0.0254 ** 2;
export const poundPerCubicInch = (printed: number): number => (printed * 0.45359237) / 0.0254 ** 3;
export const degrees = (printed: number): number => (printed * Math.PI) / 180;
