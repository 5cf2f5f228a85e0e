import type { ShaftLine } from '@tailshaft/drivetrain';

/** Whose speed and power stand on the charts of a line: the motor's only where no engine drives beside it. */
export function moverOf({ engine, motor }: ShaftLine): 'engine' | 'motor' {
  return motor && !engine ? 'motor' : 'engine';
}
