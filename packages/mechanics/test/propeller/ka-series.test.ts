import {
  bollardAtPower,
  bollardUpperBound,
  given,
  kaNozzleThrustCoefficient,
  kaThrustCoefficient,
  kaTorqueCoefficient,
  nozzleBollardUpperBound,
  openWater,
  propellerLoad,
  shaftThrustInNozzle,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { KA_TABLES } from '../../src/propeller/data/ka-series.js';
import { type PublishedCase, published } from '../published.js';

type Row = readonly [
  blades: number,
  area: number,
  pitch: number,
  j: number,
  kt: number,
  ktn: number,
  tenKq: number,
];

/** No printed chart reading was found: these were worked out apart from this code, from a digital copy. */
const APART =
  'recomputed apart from this code from a digital copy of the tables; no printed figure was found';
const ROWS: readonly Row[] = [
  [4, 0.7, 0.6, 0, 0.2336, 0.1098, 0.1577],
  [4, 0.7, 0.8, 0, 0.3695, 0.1821, 0.2713],
  [4, 0.7, 1, 0, 0.5257, 0.2688, 0.4424],
  [4, 0.7, 1.2, 0, 0.6938, 0.3602, 0.6683],
  [4, 0.7, 1.4, 0, 0.8657, 0.4466, 0.933],
  [4, 0.7, 1, 0.2, 0.4142, 0.166, 0.4279],
  [4, 0.7, 1, 0.4, 0.3068, 0.087, 0.3844],
  [4, 0.7, 1, 0.6, 0.1847, 0.0199, 0.3077],
  [5, 0.75, 0.6, 0, 0.2369, 0.1098, 0.1679],
  [5, 0.75, 1, 0, 0.5343, 0.2716, 0.4565],
  [5, 0.75, 1.4, 0, 0.8879, 0.4647, 0.9652],
  [3, 0.65, 0.8, 0, 0.3644, 0.1796, 0.2585],
  [3, 0.65, 1.2, 0, 0.6797, 0.3541, 0.6512],
];
const cases = (column: 4 | 5 | 6, unit = 1): PublishedCase[] =>
  ROWS.map(row => ({
    case: `Ka ${row[0]}-${Math.round(row[1] * 100)} P/D ${row[2]} J ${row[3]}`,
    inputs: { blades: row[0], areaRatio: row[1], pitchRatio: row[2], advanceRatio: row[3] },
    gives: row[column],
    // The remembered table holds the digit that the other two give, which moves its last place.
    within: row[0] === 3 ? 9e-5 : 5.1e-5,
    unit,
  }));
published(kaThrustCoefficient, APART, cases(4));
published(kaNozzleThrustCoefficient, APART, cases(5));
published(kaTorqueCoefficient, APART, cases(6, 0.1));

const DENSITY = given('density of the water', 'ρ', 'density', 1025);
const curveOf = (blades: number, areaRatio: number, pitch: number, diameter = 2) => {
  const curve = openWater('Ka', {
    diameter: given('propeller diameter', 'D', 'length', diameter),
    pitch: given('propeller pitch', 'P', 'length', pitch * diameter),
    blades: given('number of blades', 'Z', 'number', blades),
    areaRatio: given('expanded area ratio', 'AE/A0', 'ratio', areaRatio),
  });
  if (!curve.applies) throw new Error(curve.reason);
  return curve;
};
const TESTED = KA_TABLES.flatMap(({ blades, areaRatio }) =>
  [0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.4].map(pitch => [blades, areaRatio, pitch] as const),
);

describe('Ka propellers in nozzle 19A against what holds of any', () => {
  it.each(TESTED)(
    '%d blades of area %f, pitch ratio %f: at rest nozzle and propeller share the thrust about equally (textbook landmark, from memory)',
    (...blade) => {
      const still = given('speed of advance', 'VA', 'speed', 0);
      const load = propellerLoad(
        curveOf(...blade),
        given('shaft speed', 'ω', 'rotational speed', 25),
        still,
        DENSITY,
      );
      const share = load.shaftThrust.si / load.thrust.si;
      expect(share).toBeGreaterThan(0.47);
      expect(share).toBeLessThan(0.54);
    },
  );

  it.each(TESTED)(
    '%d blades of area %f, pitch ratio %f: pulls less than momentum theory allows a nozzle, and at common pitches more than it allows an open disc',
    (blades, area, pitch) => {
      const power = given('power', 'PD', 'power', 500_000);
      const pull = bollardAtPower(curveOf(blades, area, pitch), power, DENSITY);
      if (!pull.applies) throw new Error(pull.reason);
      const diameter = given('propeller diameter', 'D', 'length', 2);
      expect(pull.thrust.si).toBeLessThan(nozzleBollardUpperBound({ density: DENSITY, diameter, power }).si);
      if (pitch >= 0.9)
        expect(pull.thrust.si).toBeGreaterThan(bollardUpperBound({ density: DENSITY, diameter, power }).si);
    },
  );

  it.each(TESTED)(
    '%d blades of area %f, pitch ratio %f: thrust and torque fall all the way to no thrust, and never give more than they take',
    (...blade) => {
      const curve = curveOf(...blade);
      for (let step = 0; step < 50; step++) {
        const [now, next] = [(curve.zeroThrust * step) / 50, (curve.zeroThrust * (step + 1)) / 50];
        expect(curve.thrustCoefficient(next)).toBeLessThan(curve.thrustCoefficient(now));
        expect(curve.torqueCoefficient(now)).toBeGreaterThan(0);
        expect(curve.efficiency(now)).toBeLessThan(0.65);
      }
    },
  );

  it('4-70 lies half way between 3-65 and 5-75, term by term', () => {
    const [three, four, five] = KA_TABLES;
    const at = (table: (typeof KA_TABLES)[number], kind: 'thrust' | 'nozzleThrust' | 'torque', key: string) =>
      table[kind].find(({ p, j }) => `${p} ${j}` === key)?.value ?? 0;
    const apart = (['thrust', 'nozzleThrust', 'torque'] as const).flatMap(kind =>
      four![kind].filter(({ p, j, value }) => {
        const mean = (at(three!, kind, `${p} ${j}`) + at(five!, kind, `${p} ${j}`)) / 2;
        return Math.abs(value - mean) > 1.05e-6;
      }),
    );
    expect(apart).toEqual([]);
    expect(
      KA_TABLES.flatMap(one => [...one.thrust, ...one.nozzleThrust, ...one.torque]).filter(one => one.doubt),
    ).toHaveLength(2);
  });

  it('is refused where nothing was tested', () => {
    const geometry = (blades: number, areaRatio: number, pitch: number) => () =>
      curveOf(blades, areaRatio, pitch);
    expect(geometry(6, 0.8, 1)).toThrow('3, 4 or 5 blades');
    expect(geometry(4, 0.55, 1)).toThrow('expanded area ratio within 0.05');
    expect(geometry(4, 0.7, 1.5)).toThrow('pitch ratio 0.6 to 1.4');
  });
});

published(nozzleBollardUpperBound, 'momentum theory: 2^(1/3) of the open disc of the same test', [
  {
    case: '1 MW, 2 m',
    inputs: { density: 1025, diameter: 2, power: 1e6 },
    gives: 234410,
    within: 5,
  },
]);

published(shaftThrustInNozzle, 'worked by hand from the definition of the coefficients', [
  {
    case: 'half of the thrust is the nozzle’s',
    inputs: {
      thrustCoefficient: 0.5257,
      nozzleThrustCoefficient: 0.2688,
      density: 1025,
      shaftSpeed: 25,
      diameter: 2,
    },
    gives: 66700.4,
    within: 0.1,
  },
  {
    case: 'a nozzle that drags leaves the shaft more than the whole',
    inputs: {
      thrustCoefficient: 0.2,
      nozzleThrustCoefficient: -0.02,
      density: 1000,
      shaftSpeed: 6 * Math.PI,
      diameter: 1.5,
    },
    gives: 10023.75,
    within: 0.01,
  },
]);
