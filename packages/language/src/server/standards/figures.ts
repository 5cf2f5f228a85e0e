import { formatNumber } from '@tailshaft/mechanics';

const INCH = 0.0254;
const PSI = 6894.757293168361;

/** A length that a table prints in inches: in millimetres, with the inches beside. */
export function inches(metres: number): string {
  return `${millimetres(metres)} (${decimal(metres / INCH, 4)} in)`;
}

export function inchLimits(limits: {
  readonly min?: number;
  readonly max?: number;
  readonly nominal?: number;
}): string {
  const { min, max, nominal } = limits;
  if (min !== undefined && max !== undefined)
    return `${decimal(min * 1000, 3)} to ${millimetres(max)} (${decimal(min / INCH, 4)} to ${decimal(max / INCH, 4)} in)`;
  return inches(nominal ?? min ?? max ?? Number.NaN);
}

/** A length that a table prints in millimetres. */
export function millimetres(metres: number): string {
  return `${decimal(metres * 1000, 3)} mm`;
}

/** A stress in MPa, with psi beside where the table prints it. */
export function stress(pascals: number): string {
  const psi = pascals / PSI;
  const round = Math.abs(psi / 1000 - Math.round(psi / 1000)) < 1e-6;
  return `${formatNumber(pascals / 1e6, 4)} MPa${round ? ` (${decimal(psi, 0)} psi)` : ''}`;
}

/** So many decimals at most, and no zeros behind them. */
function decimal(number: number, places: number): string {
  const text = number.toFixed(places);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}
