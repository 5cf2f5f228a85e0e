import { compareBoreAndShaft, couplingBoreGuide, given } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { IN } from '../tables/factors.js';

it('holds the printed fit of half-couplings, 0.0005 to 0.001 in', () => {
  expect([couplingBoreGuide.least / IN, couplingBoreGuide.most / IN]).toEqual([
    expect.closeTo(0.0005, 9),
    expect.closeTo(0.001, 9),
  ]);
});

it('a half-coupling bored 1.500 in does not fit a 1.375 in shaft; an unknown key is said to be unknown', () => {
  const inches = (label: string, value: number) => given(label, label, 'length', value * IN);
  const shaft = { diameter: inches('shaft', 1.375), keyWidth: inches('key', 0.3125) };
  expect(compareBoreAndShaft({ diameter: inches('bore', 1.5) }, shaft)).toMatchObject([
    { feature: 'coupling bore', result: 'differs', prevents: true },
    { feature: 'key width', result: 'not stated', on: 'one' },
  ]);
  expect(compareBoreAndShaft(shaft, shaft)).toEqual([]);
});
