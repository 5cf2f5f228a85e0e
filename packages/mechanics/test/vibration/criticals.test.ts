import {
  ARCHER_FACTOR,
  couplingDamping,
  criticalsChart,
  engineDamping,
  engineOrders,
  given,
  modalDampingRatio,
  orderBehindGear,
  outsideRange,
  placeCritical,
  propellerDampingArcher,
  propellerOrders,
  type RunningRange,
  solveTorsional,
  type TorsionalModel,
  torsionalCriticals,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { published } from '../published.js';
import { G, J, K, must } from './trains.js';
import { RPM } from './units.js';

const speed = (rpm: number) => given('speed', 'n', 'rotational speed', rpm * RPM);
const range: RunningRange = { from: speed(600), to: speed(2300) };

describe('orders', () => {
  it.each([
    ['four-stroke', 6, 4, [3, 6, 9, 12]],
    ['four-stroke', 5, 3, [2.5, 5, 7.5]],
    ['two-stroke', 4, 3, [4, 8, 12]],
  ] as const)(
    '%s with %i cylinders: cylinders/2 or cylinders, and multiples',
    (cycle, cylinders, multiples, orders) => {
      const found = engineOrders({ cycle, cylinders, multiples, at: 'engine' });
      expect(found.map(one => one.order)).toEqual(orders);
      expect(found.every(one => one.kind === 'engine firing')).toBe(true);
    },
  );

  it('has blade rate and multiples for a propeller', () => {
    expect(propellerOrders(4, 3, 'propeller').map(one => one.order)).toEqual([4, 8, 12]);
  });

  it('counts no cylinders, however many are written', () => {
    const found = engineOrders({ cycle: 'four-stroke', cylinders: 1e308, multiples: 1, at: 'engine' });
    expect(found.map(one => one.order)).toEqual([5e307]);
  });

  it('has none of an engine or propeller that cannot be', () => {
    expect(engineOrders({ cycle: 'four-stroke', cylinders: 0, multiples: 2, at: 'e' })).toEqual([]);
    expect(engineOrders({ cycle: 'four-stroke', cylinders: Number.NaN, multiples: 2, at: 'e' })).toEqual([]);
    expect(propellerOrders(2.5, 3, 'p')).toEqual([]);
  });
});

published(
  orderBehindGear,
  'definition of an order: third engine order through 2.04:1 is 6.12 per propeller turn',
  [{ case: 'third order', inputs: { q: 3, i: 2.04 }, gives: 6.12, within: 1e-12 }],
);

describe('a critical against the running range', () => {
  it.each([
    ['above', 2760, 'above', 0.2],
    ['below', 480, 'below', 0.2],
    ['inside, nearer the top', 2070, 'inside', -0.1],
    ['inside, nearer the bottom', 660, 'inside', -0.1],
    ['at the top', 2300, 'inside', 0],
  ] as const)('%s', (_, rpm, position, margin) => {
    const place = placeCritical(speed(rpm), range)!;
    expect(place.position).toBe(position);
    expect(place.margin).toBeCloseTo(margin, 12);
  });

  it('cannot be placed by a speed that is not known, nor against a range the wrong way round', () => {
    expect(placeCritical(speed(Number.NaN), range)).toBeUndefined();
    expect(placeCritical(speed(1000), { from: speed(Number.NaN), to: speed(2000) })).toBeUndefined();
    expect(placeCritical(speed(1000), { from: speed(2000), to: speed(600) })).toBeUndefined();
  });
});

/** J 20, 4, 60 with 1e5 and 4e4 has modes at 405.264 and 1882.582 per minute. Gears at the far end carry them on. */
const train: TorsionalModel = {
  inertias: [J('engine', 20), J('coupling', 4), J('pinion', 60), J('propeller', 0)],
  shafts: [K('a', 'engine', 'coupling', 1e5), K('b', 'coupling', 'pinion', 4e4)],
  gears: [G('mesh', 'pinion', 'propeller', 2)],
};
const solution = must(solveTorsional(train));
const orders = [
  ...engineOrders({ cycle: 'four-stroke', cylinders: 6, multiples: 1, at: 'engine' }),
  ...propellerOrders(4, 1, 'propeller'),
];

describe('criticals of a geared train', () => {
  it('meet each mode at frequency ÷ order, in turns of the shaft asked for', () => {
    const found = torsionalCriticals(solution, orders, { ...range, at: 'engine' });
    const rows = found.map(one => [one.order.label, one.mode, Math.round((one.speed.si / RPM) * 100) / 100]);
    expect(rows).toEqual([
      ['engine order 3', 1, 135.09],
      ['blade rate, order 4', 1, 202.63],
      ['engine order 3', 2, 627.53],
      ['blade rate, order 4', 2, 941.29],
    ]);
    expect(found.map(one => one.place?.position)).toEqual(['below', 'below', 'inside', 'inside']);
  });

  it('are the same instants seen from the propeller shaft', () => {
    const byEngine = torsionalCriticals(solution, orders, { ...range, at: 'engine' });
    const byPropeller = torsionalCriticals(solution, orders, { ...range, at: 'propeller' });
    byPropeller.forEach((one, i) => {
      expect(one.speed.si * 2).toBeCloseTo(byEngine[i]!.speed.si, 9);
    });
    expect(byPropeller.find(one => one.order.kind === 'engine firing')?.orderHere.si).toBe(6);
  });

  it('leave out an order of a part that the train does not have', () => {
    expect(
      torsionalCriticals(solution, propellerOrders(4, 1, 'bow thruster'), { ...range, at: 'engine' }),
    ).toEqual([]);
  });
});

describe('criticals chart', () => {
  const chart = criticalsChart(solution, orders, { ...range, at: 'engine' });
  it('ends a quarter above the running range and shows both modes', () => {
    expect(chart.highestSpeed).toBeCloseTo(2300 * 1.25 * RPM, 9);
    expect(chart.frequencyLines.map(one => one.mode)).toEqual([1, 2]);
    expect(chart.running).toEqual({ from: range.from.si, to: range.to.si });
  });
  it('ends every order line on an edge of the chart', () => {
    for (const { end } of chart.orderLines) {
      const edges = [end.speed / chart.highestSpeed, end.frequency / chart.highestFrequency];
      expect(Math.max(...edges)).toBeCloseTo(1, 12);
    }
  });
  it('puts each crossing on its frequency line and its order line', () => {
    expect(chart.crossings).toHaveLength(4);
    for (const { mode, order, speed: at, frequency } of chart.crossings) {
      expect(frequency).toBeCloseTo(chart.frequencyLines.find(line => line.mode === mode)!.frequency, 9);
      const { end } = chart.orderLines.find(line => line.order === order)!;
      expect(frequency / at).toBeCloseTo(end.frequency / end.speed, 9);
    }
    expect(chart.crossings.filter(one => one.insideRange)).toHaveLength(2);
  });
  it('leaves off a mode that no order reaches in its width', () => {
    const slow = { from: speed(50), to: speed(200), at: 'engine' };
    expect(criticalsChart(solution, orders, slow).frequencyLines.map(one => one.mode)).toEqual([1]);
  });
});

published(propellerDampingArcher, 'a near 30 is C near 3.1 Q/Ω (from memory)', [
  { case: 'per Q/Ω', inputs: { a: ARCHER_FACTOR.si, Q: 1, Omega: 1 }, gives: 3.14, within: 0.005 },
]);
published(engineDamping, 'definition of the magnifier: ω J / C', [
  { case: 'round numbers', inputs: { omega: 300, J: 0.2, M: 40 }, gives: 1.5, within: 1e-12 },
]);
published(couplingDamping, 'definition of relative damping: π C ω a² lost of k a²/2 stored is ψ = 2π C ω/k', [
  { case: 'round numbers', inputs: { psi: 2 * Math.PI, k: 1000, omega: 50 }, gives: 20, within: 1e-12 },
]);

describe('damping of a mode', () => {
  const two: TorsionalModel = { inertias: [J('a', 2), J('b', 1e12)], shafts: [K('s', 'a', 'b', 800)] };
  const [mode] = must(solveTorsional(two)).modes;
  it('is C/(2√(kJ)) for one inertia on a spring, wherever the damper sits', () => {
    expect(modalDampingRatio(two, mode!, [{ inertia: 'a', damping: 4 }])).toBeCloseTo(
      4 / (2 * Math.sqrt(1600)),
      9,
    );
    expect(modalDampingRatio(two, mode!, [{ shaft: 's', damping: 4 }])).toBeCloseTo(
      4 / (2 * Math.sqrt(1600)),
      9,
    );
  });
  it('is not a number when a damper sits on nothing', () => {
    expect(modalDampingRatio(two, mode!, [{ inertia: 'c', damping: 4 }])).toBeNaN();
    expect(modalDampingRatio(two, mode!, [{ shaft: 't', damping: 4 }])).toBeNaN();
  });
  it('flags a magnifier outside the usual 30 to 60', () => {
    const C = engineDamping({
      omega: given('ω', 'ω', 'rotational speed', 300),
      J: given('J', 'J', 'moment of inertia', 0.2),
      M: given('M', 'M', 'number', 200),
    });
    expect(outsideRange(C)).toHaveLength(1);
    expect(engineDamping.spec.source.confidence).toBe('from memory');
  });
});
