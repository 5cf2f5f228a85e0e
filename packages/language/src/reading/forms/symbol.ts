import type { Dimension } from '@tailshaft/mechanics';

/** The letter that a declared quantity of this kind goes by in workings. */
export function symbolOf(dimension: Dimension): string {
  return SYMBOLS[dimension] ?? 'x';
}

const SYMBOLS: Partial<Record<Dimension, string>> = {
  number: 'z',
  ratio: 'i',
  length: 'd',
  mass: 'm',
  time: 't',
  angle: 'α',
  temperature: 'T',
  speed: 'v',
  'rotational speed': 'n',
  force: 'F',
  torque: 'T',
  power: 'P',
  'power per speed': 'K',
  pressure: 'p',
  density: 'ρ',
  'moment of inertia': 'J',
  area: 'A',
  volume: 'V',
};
