import { given } from '@tailshaft/mechanics';
import { PLACE_VOCABULARY } from '@tailshaft/vocabulary';
import { expect, it } from 'vitest';
import { flatFacts } from '../../src/compare/facts.js';

const order = (si: number) => ({
  origin: {},
  order: given('order', 'q', 'number', si, { written: String(si) }),
});
const torque = (si: number) => ({
  value: given('torque', 'T', 'torque', si),
  written: `${si} N.m`,
  origin: {},
});

it('tells the torques that shake a line by their order, whichever way round they stand', () => {
  const rows = [
    { ...order(3), orderFact: { value: order(3).order, written: '3', origin: {} }, torque: torque(760) },
    { ...order(6), orderFact: { value: order(6).order, written: '6', origin: {} }, torque: torque(310) },
  ];
  for (const excitations of [rows, [...rows].reverse()]) {
    const facts = flatFacts({ excitations }, PLACE_VOCABULARY.engine);
    expect([...facts.keys()].sort()).toEqual(['excitation order 3 torque', 'excitation order 6 torque']);
    expect(facts.get('excitation order 6 torque')?.written).toBe('310 N.m');
  }
});
