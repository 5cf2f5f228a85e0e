/**
 * The kinds of quantity a drivetrain spec speaks of, each with the coherent SI unit that all computation uses.
 * Torque, energy and power per speed share base units but are different things, so they are different kinds.
 */
export const SI_UNIT = {
  number: '1',
  ratio: '1',
  length: 'm',
  area: 'm²',
  volume: 'm³',
  mass: 'kg',
  time: 's',
  angle: 'rad',
  temperature: 'K',
  'temperature difference': 'K',
  speed: 'm/s',
  acceleration: 'm/s²',
  'rotational speed': 'rad/s',
  frequency: 'Hz',
  force: 'N',
  torque: 'N·m',
  energy: 'J',
  power: 'W',
  'power per speed': 'N·m',
  pressure: 'Pa',
  density: 'kg/m³',
  'mass per length': 'kg/m',
  'moment of inertia': 'kg·m²',
  'second moment of area': 'm⁴',
  'section modulus': 'm³',
  'torsional stiffness': 'N·m/rad',
  'torsional damping': 'N·m·s/rad',
  'linear stiffness': 'N/m',
  'moment of mass': 'kg·m',
  'volume flow': 'm³/s',
  'kinematic viscosity': 'm²/s',
  'fuel rate': 'kg/J',
} as const;

/** Kind of quantity, e.g. `'torque'`. */
export type Dimension = keyof typeof SI_UNIT;
