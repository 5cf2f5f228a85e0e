import type { Source } from '@tailshaft/mechanics';

/** Which way an engine turns, and from where that is seen. */
export const ENGINE_ROTATION: Source = {
  title: 'SAE J824, Engine Rotation and Cylinder Numbering',
  clause: 'standard rotation is counter-clockwise seen at the principal output end',
  confidence: 'published',
};

/** Which hand goes with which way of turning; the algebra follows from it. */
export const HAND: Source = {
  title: 'ISO 3715-1, Ships and marine technology: propulsion plants for ships',
  clause: 'right-handed propeller',
  confidence: 'from memory',
};

/** Follows from the definitions of sense, hand and output by multiplying signs. */
export const ALGEBRA: Source = {
  title: 'sense of the engine times the sense factor of every stage, all seen from aft',
  confidence: 'derived',
};

/** What makers state about their own part. */
export const MAKER: Source = {
  title: 'the data sheet of the part, which alone can state it',
  confidence: 'common practice',
};

/** Trade usage. */
export const PRACTICE: Source = {
  title: 'usage of builders and yards',
  confidence: 'common practice',
};

/** Shown with every rule on rotation. */
export const DOCK_CAUTION =
  'A clean result does not prove which way the vessel moves. Prove it at the dock: tied up, low power, one side at a time, from every station, with eyes on the shaft.';
