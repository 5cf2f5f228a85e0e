/** Z, AE/A0, P/D, J, value. */
export type Point = readonly [number, number, number, number, number];

/**
 * Evaluated by a third party from its own copy of the polynomials, for the propellers of Kuiper, The Wageningen
 * Propeller Series, MARIN publication 92-001 (1992), pp. 111 and 128. Good to 1e-6.
 */
export const THIRD_PARTY_KT: readonly Point[] = [
  [6, 0.65, 1.4, 0, 0.603363],
  [6, 0.65, 1.4, 0.1, 0.588950654],
  [6, 0.65, 1.4, 0.2, 0.569237985],
  [6, 0.65, 1.4, 0.3, 0.544592015],
  [6, 0.65, 1.4, 1.2, 0.161314404],
  [6, 0.65, 1.4, 1.3, 0.10751365],
  [6, 0.65, 1.4, 1.4, 0.05281524],
  [2, 0.3, 0.7, 0, 0.242745716],
  [2, 0.3, 0.7, 0.2, 0.193313888],
  [2, 0.3, 0.7, 0.4, 0.13535988],
  [2, 0.3, 0.7, 0.6, 0.070951181],
  [3, 0.4, 0.5, 0, 0.188195882],
  [3, 0.4, 0.5, 0.1, 0.163443634],
  [3, 0.4, 0.5, 0.2, 0.135394546],
  [3, 0.4, 0.5, 0.3, 0.104372086],
];

/** The same, 10 KQ. */
export const THIRD_PARTY_TEN_KQ: readonly Point[] = [
  [6, 0.65, 1.4, 0, 1.209493726],
  [6, 0.65, 1.4, 0.1, 1.1769086],
  [6, 0.65, 1.4, 0.2, 1.138594465],
  [6, 0.65, 1.4, 0.3, 1.094459956],
  [6, 0.65, 1.4, 1.2, 0.420257329],
  [6, 0.65, 1.4, 1.3, 0.312894007],
  [6, 0.65, 1.4, 1.4, 0.198705297],
  [2, 0.3, 1.2, 0, 0.654180539],
  [2, 0.3, 1.2, 0.2, 0.580406412],
  [2, 0.3, 1.2, 0.4, 0.498303012],
  [2, 0.3, 1.2, 0.6, 0.407981197],
  [3, 0.4, 0.5, 0, 0.160531235],
  [3, 0.4, 0.5, 0.1, 0.143676942],
  [3, 0.4, 0.5, 0.2, 0.125396067],
  [3, 0.4, 0.5, 0.3, 0.105448718],
];

/** 10 KQ read from the charts of Kuiper 1992; a reading is good to 0.01. */
export const CHART_TEN_KQ: readonly Point[] = [
  [2, 0.3, 1.4, 0.8, 0.47],
  [3, 0.65, 1.2, 0.7, 0.51],
  [3, 0.65, 0.8, 0.3, 0.31],
  [6, 0.65, 1.2, 0.8, 0.51],
  [6, 0.65, 1.4, 0.5, 0.99],
  [2, 0.3, 1.2, 1, 0.2],
];

/** 10 KQ of the polynomials at the same points, recomputed apart from this code. */
export const CHART_POINTS_TEN_KQ: readonly Point[] = [
  [2, 0.3, 1.4, 0.8, 0.471],
  [3, 0.65, 1.2, 0.7, 0.5053],
  [3, 0.65, 0.8, 0.3, 0.3129],
  [6, 0.65, 1.2, 0.8, 0.5119],
  [6, 0.65, 1.4, 0.5, 0.9884],
  [2, 0.3, 1.2, 1, 0.2031],
];

/**
 * KT read from the charts of Kuiper, The Wageningen Propeller Series (1992), as the tests of a public program quote the readings
 * (GijsB/propy, test/test_wageningen_b.py, MIT licence), good to 0.004 there: Z, AE/A0, P/D, and KT at J 0.2, 0.4, and so on.
 */
const READ_KT: readonly (readonly [number, number, number, ...number[]])[] = [
  [3, 0.35, 0.6, 0.175, 0.115, 0.042],
  [3, 0.35, 0.8, 0.252, 0.192, 0.124, 0.048],
  [3, 0.35, 1, 0.324, 0.27, 0.204, 0.13, 0.05],
  [3, 0.35, 1.2, 0.385, 0.335, 0.275, 0.208, 0.13, 0.052],
  [3, 0.65, 0.6, 0.18, 0.104, 0.02],
  [3, 0.65, 0.8, 0.276, 0.2, 0.114, 0.024],
  [3, 0.65, 1, 0.375, 0.296, 0.21, 0.118, 0.025],
  [3, 0.65, 1.2, 0.47, 0.39, 0.304, 0.21, 0.12, 0.03],
  [5, 0.6, 0.8, 0.298, 0.224, 0.135, 0.036],
  [5, 0.6, 1, 0.39, 0.324, 0.24, 0.142, 0.04],
  [5, 0.9, 1, 0.42, 0.334, 0.238, 0.132, 0.024],
  [5, 0.9, 1.2, 0.526, 0.444, 0.348, 0.242, 0.136, 0.026],
];
export const CHART_KT: readonly Point[] = READ_KT.flatMap(([blades, area, pitch, ...read]) =>
  read.map((kt, at): Point => [blades, area, pitch, 0.2 * (at + 1), kt]),
);
