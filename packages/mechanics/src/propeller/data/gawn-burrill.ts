/** One term of the KCA regression: C, e, x, y, z of C · 10^e (AD/A0)^x (P/D)^y J^z. */
export type KcaTerm = readonly [number, number, number, number, number];

/**
 * Gawn-Burrill KCA series, regression by Radojcic (1988); both tables are identical in two independent copies.
 * The loss polynomials for cavitating flow are left out on purpose: their sign is not settled.
 */
export const GAWN_BURRILL_KT: readonly KcaTerm[] = [
  [0.1193852, 0, 0, 0, 0],
  [-0.6574682, 0, 0, 0, 1],
  [0.3493294, 0, 0, 1, 0],
  [0.4119366, 0, 0, 1, 1],
  [-0.1991927, 0, 0, 2, 1],
  [5.863051, -2, 0, 2, 2],
  [-1.107735, -2, 0, 2, 3],
  [-0.1341679, 0, 1, 0, 0],
  [0.2628839, 0, 1, 0, 1],
  [-0.5217023, 0, 1, 1, 1],
  [0.2970728, 0, 1, 2, 0],
  [6.15258, -2, 2, 1, 3],
  [-2.47084, -2, 2, 2, 3],
  [-4.080166, -3, 1, 6, 0],
  [4.154201, -3, 1, 6, 1],
  [-1.136452, -3, 2, 6, 0],
];

export const GAWN_BURRILL_KQ: readonly KcaTerm[] = [
  [1.541166, -3, 0, 0, 0],
  [0.1091688, 0, 0, 0, 1],
  [-0.310242, 0, 0, 0, 2],
  [0.1547428, 0, 0, 0, 3],
  [-4.370615, -2, 0, 1, 0],
  [0.2490295, 0, 0, 1, 2],
  [-0.1594602, 0, 0, 1, 3],
  [8.536747, -2, 0, 2, 0],
  [-9.512163, -2, 0, 2, 1],
  [-9.320307, -3, 0, 2, 2],
  [3.287805, -2, 0, 2, 3],
  [5.496034, -2, 1, 0, 1],
  [-4.865063, -2, 1, 1, 0],
  [-0.10625, 0, 1, 1, 1],
  [8.529955, -2, 1, 2, 0],
  [1.101023, -2, 2, 0, 3],
  [-3.151756, -3, 2, 2, 2],
];
