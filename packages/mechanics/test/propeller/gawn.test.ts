import {
  developedAreaRatio,
  expandedAreaRatio,
  gawnBurrillThrustCoefficient,
  gawnBurrillTorqueCoefficient,
  gawnThrustCoefficient,
  gawnTorqueCoefficient,
  given,
  openWaterEfficiency,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { type PublishedCase, published } from '../published.js';

type Row = readonly [area: number, pitch: number, j: number, kt: number, kq: number, efficiency: number];
const RECOMPUTED = 'recomputed apart from this code; no published value was found';

const gawn: readonly Row[] = [
  [0.5, 1, 0.6, 0.22211, 0.035344, 0.6001],
  [0.8, 1.2, 0.8, 0.24083, 0.049793, 0.6158],
  [0.65, 0.8, 0.5, 0.1732, 0.024762, 0.5566],
];
const kca: readonly Row[] = [
  [0.5, 1, 0.6, 0.22531, 0.03557, 0.6049],
  [0.8, 1.2, 0.8, 0.23549, 0.046268, 0.648],
  [0.95, 1.6, 1.2, 0.2307, 0.062599, 0.7038],
];
const cases = (rows: readonly Row[], area: string, column: 3 | 4, within: number): PublishedCase[] =>
  rows.map(row => ({
    case: `area ${row[0]} P/D ${row[1]} J ${row[2]}`,
    inputs: { [area]: row[0], pitchRatio: row[1], advanceRatio: row[2], blades: 3 },
    gives: row[column],
    within,
  }));

published(gawnThrustCoefficient, RECOMPUTED, cases(gawn, 'areaRatio', 3, 5.1e-6));
published(gawnTorqueCoefficient, RECOMPUTED, cases(gawn, 'areaRatio', 4, 5.1e-7));
published(gawnBurrillThrustCoefficient, RECOMPUTED, cases(kca, 'developedAreaRatio', 3, 5.1e-6));
published(gawnBurrillTorqueCoefficient, RECOMPUTED, cases(kca, 'developedAreaRatio', 4, 5.1e-7));

describe('open-water efficiency of both fits, from their own coefficients, as recomputed apart from this code', () => {
  const ratios = (entries: Record<string, number>) =>
    Object.fromEntries(
      Object.entries(entries).map(([name, si]) => [name, given(name, name, 'ratio', si)]),
    ) as never;
  it.each([
    ...gawn.map(row => ['Gawn', 'areaRatio', gawnThrustCoefficient, gawnTorqueCoefficient, row] as const),
    ...kca.map(
      row =>
        [
          'Gawn-Burrill',
          'developedAreaRatio',
          gawnBurrillThrustCoefficient,
          gawnBurrillTorqueCoefficient,
          row,
        ] as const,
    ),
  ])('%s, %s %j', (_, area, thrust, torque, row) => {
    const point = ratios({ [area]: row[0], pitchRatio: row[1], advanceRatio: row[2], blades: 3 });
    const found = openWaterEfficiency({
      advanceRatio: given('J', 'J', 'ratio', row[2]),
      thrustCoefficient: thrust(point),
      torqueCoefficient: torque(point),
    }).si;
    expect(Math.abs(found - row[5])).toBeLessThanOrEqual(5.1e-5);
  });
});

published(developedAreaRatio, 'recomputed apart from this code', [
  { case: 'AE 0.50', inputs: { expandedAreaRatio: 0.5, blades: 3 }, gives: 0.50397, within: 5e-6 },
  { case: 'AE 0.80', inputs: { expandedAreaRatio: 0.8, blades: 3 }, gives: 0.78157, within: 5e-6 },
]);
published(expandedAreaRatio, 'recomputed: the inverse of the two above', [
  { case: 'AD 0.50397', inputs: { developedAreaRatio: 0.50397, blades: 3 }, gives: 0.5, within: 5e-6 },
  { case: 'AD 0.78157', inputs: { developedAreaRatio: 0.78157, blades: 3 }, gives: 0.8, within: 5e-6 },
]);

describe('the two flat-face fits, each at its own area ratio of 0.8, as recomputed apart from this code', () => {
  const blades = given('blades', 'Z', 'number', 3);
  const at = (p: number, j: number) => {
    const pitchRatio = given('P/D', 'P/D', 'ratio', p);
    const advanceRatio = given('J', 'J', 'ratio', j);
    const developed = given('AD/A0', 'AD/A0', 'ratio', 0.8);
    const areaRatio = given('AE/A0', 'AE/A0', 'ratio', 0.8);
    return [
      gawnThrustCoefficient({ pitchRatio, advanceRatio, areaRatio, blades }).si,
      gawnBurrillThrustCoefficient({ pitchRatio, advanceRatio, developedAreaRatio: developed, blades }).si,
    ] as const;
  };
  it('agree within 1 % at P/D 1.0, J 0.4', () => {
    const [a, b] = at(1, 0.4);
    expect(Math.abs(a / b - 1)).toBeLessThan(0.01);
  });
  it.each([
    [1.4, 0.4, 0.55, 0.63],
    [0.8, 0.7, 0.082, 0.061],
  ])('differ at P/D %f, J %f: %f against %f', (p, j, first, second) => {
    const [a, b] = at(p, j);
    const digits = first > 0.1 ? 0.005 : 0.0005;
    expect(Math.abs(a - first)).toBeLessThan(digits);
    expect(Math.abs(b - second)).toBeLessThan(digits);
  });
});
