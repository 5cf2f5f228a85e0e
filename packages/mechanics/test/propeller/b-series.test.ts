import {
  bSeriesThrustCoefficient,
  bSeriesTorqueCoefficient,
  correctedThrustCoefficient,
  correctedTorqueCoefficient,
  thrustReynoldsCorrection,
  torqueReynoldsCorrection,
} from '@tailshaft/mechanics';
import { type PublishedCase, published } from '../published.js';
import {
  CHART_KT,
  CHART_POINTS_TEN_KQ,
  CHART_TEN_KQ,
  type Point,
  THIRD_PARTY_KT,
  THIRD_PARTY_TEN_KQ,
} from './b-series-points.js';

const cases = (points: readonly Point[], within: number, unit = 1): PublishedCase[] =>
  points.map(([blades, areaRatio, pitchRatio, advanceRatio, gives]) => ({
    case: `B${blades}-${Math.round(areaRatio * 100)} P/D ${pitchRatio} J ${advanceRatio}`,
    inputs: { blades, areaRatio, pitchRatio, advanceRatio },
    gives,
    within,
    unit,
  }));

const THIRD_PARTY = 'third-party evaluation of the polynomials for the propellers of Kuiper 1992';
published(bSeriesThrustCoefficient, THIRD_PARTY, cases(THIRD_PARTY_KT, 1e-6));
published(bSeriesTorqueCoefficient, THIRD_PARTY, cases(THIRD_PARTY_TEN_KQ, 1e-6, 0.1));
published(
  bSeriesThrustCoefficient,
  'Kuiper, The Wageningen Propeller Series, MARIN 92-001 (1992), chart readings of KT, quoted by a public program',
  cases(CHART_KT, 0.004),
);
published(
  bSeriesTorqueCoefficient,
  'Kuiper, The Wageningen Propeller Series, MARIN 92-001 (1992), chart readings of 10 KQ',
  cases(CHART_TEN_KQ, 0.01, 0.1),
);
published(
  bSeriesTorqueCoefficient,
  'recomputed apart from this code at the points of the chart readings',
  cases(CHART_POINTS_TEN_KQ, 5.1e-5, 0.1),
);

/** Z, AE/A0, P/D, J, KT, KQ. */
const ACROSS: readonly (readonly [number, number, number, number, number, number])[] = [
  [3, 0.5, 0.8, 0.4, 0.195852, 0.0255236],
  [3, 0.65, 1, 0.6, 0.20859, 0.0349094],
  [4, 0.4, 0.8, 0.5, 0.172686, 0.0238282],
  [4, 0.7, 1, 0.7, 0.178291, 0.0307678],
  [5, 0.75, 1.2, 0.9, 0.1953, 0.040184],
  [7, 0.85, 1.4, 1.1, 0.218282, 0.05323],
  [3, 0.5, 0.7, 0, 0.277685, 0.0301093],
  [4, 0.55, 0.8, 0, 0.338549, 0.0402953],
  [4, 0.7, 1, 0, 0.454739, 0.0675384],
];
const kt = ACROSS.map(([z, e, p, j, value]): Point => [z, e, p, j, value]);
const kq = ACROSS.map(([z, e, p, j, , value]): Point => [z, e, p, j, value]);
published(
  bSeriesThrustCoefficient,
  'recomputed apart from this code, six points and three at rest',
  cases(kt, 5e-7),
);
published(
  bSeriesTorqueCoefficient,
  'recomputed apart from this code, six points and three at rest',
  cases(kq, 5.1e-8),
);

/** Z, AE/A0, P/D, J, Rn, ΔKT, ΔKQ. */
const REYNOLDS: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [4, 0.7, 1, 0.7, 2e6, -4.9e-5, -6.23e-7],
  [4, 0.7, 1, 0.7, 1e7, 0.00052153, -0.000800147],
  [4, 0.7, 1, 0.7, 1e8, 0.0014144, -0.001642695],
  [3, 0.5, 0.8, 0.4, 2e6, 0.00011715, -4.391e-6],
  [3, 0.5, 0.8, 0.4, 1e7, 0.00027319, -0.000563537],
  [3, 0.5, 0.8, 0.4, 1e8, 0.00051941, -0.001187807],
];
const reynolds = (column: 5 | 6, within: number): PublishedCase[] =>
  REYNOLDS.map(row => ({
    case: `B${row[0]} P/D ${row[2]} J ${row[3]} Rn ${row[4].toExponential()}`,
    inputs: {
      blades: row[0],
      areaRatio: row[1],
      pitchRatio: row[2],
      advanceRatio: row[3],
      reynoldsNumber: row[4],
    },
    gives: row[column],
    within,
  }));
published(thrustReynoldsCorrection, 'recomputed apart from this code', reynolds(5, 5e-8));
published(torqueReynoldsCorrection, 'recomputed apart from this code', reynolds(6, 5.1e-10));

published(correctedThrustCoefficient, 'recomputed: a sum', [
  {
    case: 'sum',
    inputs: { coefficient: 0.178291, correction: 0.00052153 },
    gives: 0.17881253,
    within: 1e-12,
  },
]);
published(correctedTorqueCoefficient, 'recomputed: a sum', [
  {
    case: 'sum',
    inputs: { coefficient: 0.0307678, correction: -0.000800147 },
    gives: 0.029967653,
    within: 1e-12,
  },
]);
