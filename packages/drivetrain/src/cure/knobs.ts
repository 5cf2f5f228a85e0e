import type { Role } from '../model/part.js';

/** A size that a designer chooses, and in what steps it is made. */
export interface Knob {
  /** `of the shaft`, for titles. */
  readonly of: string;
  readonly field: string;
  /** Metric and inch steps that it is made or set in, metres and inches. */
  readonly metric: number;
  readonly inch: number;
  /** So many times itself at most, either way, where beyond it is another kind of part. */
  readonly times?: number;
  /** Said in the title: what follows from another size. */
  readonly follows?: string;
}

/**
 * Sizes that may be chosen otherwise, by role; `inner` stands in blocks inside the part. Readings, spaces and ratings of parts
 * are no choice: a fitted part is what it is.
 */
export const KNOBS: Readonly<Partial<Record<Role, readonly Knob[]>>> = {
  shaft: [
    {
      of: 'shaft',
      field: 'diameter',
      metric: 0.005,
      inch: 1 / 8,
      follows: 'bearings, seal, coupling and propeller bore follow',
    },
    { of: 'shaft', field: 'couplingEnd', metric: 0.001, inch: 1 / 16 },
    { of: 'shaft', field: 'overhang', metric: 0.005, inch: 1 / 4 },
    { of: 'shaft', field: 'bearingSpan', metric: 0.05, inch: 2 },
    { of: 'shaft', field: 'tubeBore', metric: 0.001, inch: 1 / 16 },
    { of: 'shaft', field: 'keywayWidth', metric: 0.001, inch: 1 / 16 },
    { of: 'shaft', field: 'couplingKeyWidth', metric: 0.001, inch: 1 / 16 },
    { of: 'shaft', field: 'angle', metric: 0, inch: 0 },
    { of: 'shaft', field: 'length', metric: 0.005, inch: 1 / 4 },
    { of: 'bearing', field: 'position', metric: 0.01, inch: 1 / 2 },
    { of: 'bearing', field: 'length', metric: 0.005, inch: 1 / 4 },
    { of: 'bearing', field: 'bore', metric: 0.001, inch: 1 / 16 },
    { of: 'bearing', field: 'housingBore', metric: 0.001, inch: 1 / 16 },
    { of: 'collar bearing', field: 'collarOutside', metric: 0.005, inch: 1 / 4 },
    { of: 'key', field: 'height', metric: 0.001, inch: 1 / 16 },
    { of: 'section', field: 'diameter', metric: 0.005, inch: 1 / 8 },
  ],
  propeller: [
    {
      of: 'propeller',
      field: 'diameter',
      metric: 0.01,
      inch: 1 / 2,
      times: 1.25,
      follows: 'clearances, pitch and load follow',
    },
    { of: 'propeller', field: 'pitch', metric: 0.01, inch: 1 / 2, times: 1.5 },
    { of: 'propeller', field: 'areaRatio', metric: 0, inch: 0 },
    { of: 'propeller', field: 'hubLength', metric: 0.005, inch: 1 / 4 },
    { of: 'propeller', field: 'boreLargeEnd', metric: 0.001, inch: 1 / 16 },
    { of: 'propeller', field: 'keywayWidth', metric: 0.001, inch: 1 / 16 },
  ],
  coupling: [
    { of: 'coupling', field: 'bore', metric: 0.001, inch: 1 / 16 },
    { of: 'coupling', field: 'keyWidth', metric: 0.001, inch: 1 / 16 },
    { of: 'coupling', field: 'length', metric: 0.005, inch: 1 / 4 },
    { of: 'coupling', field: 'jointAngle', metric: 0, inch: 0 },
    { of: 'coupling', field: 'secondJointAngle', metric: 0, inch: 0 },
  ],
  engine: [
    { of: 'engine', field: 'angle', metric: 0, inch: 0 },
    { of: 'engine', field: 'faceAt', metric: 0.005, inch: 1 / 4 },
    { of: 'engine', field: 'bedCentres', metric: 0.005, inch: 1 / 4, follows: 'the beds are altered' },
    { of: 'engine', field: 'takeOff', metric: 0, inch: 0 },
  ],
  gear: [],
};
