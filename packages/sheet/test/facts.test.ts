import { expect, it } from 'vitest';
import { factRows } from '../src/sections/facts.js';

const fact = (written: string) => ({ value: written, written, origin: {} });

it('names each fact in the words of the trade, and no name twice', () => {
  const gear = {
    clutches: [{ name: 'A', nameFact: fact('A'), output: fact('same') }],
    ratings: [{ duty: 'medium', dutyFact: fact('medium'), fuel: fact('diesel') }],
    train: { meshes: [fact('input 20 with output 40')] },
    bearings: [{ name: 'strut', kind: fact('strut') }],
    accessories: [{ name: 'starter', rotation: fact('standard') }],
    youngsModulus: fact('193 GPa'),
  };
  expect(factRows(gear).map(one => one.label)).toEqual([
    'clutch A: output',
    'rating medium: fuel',
    'train: mesh',
    'bearing strut: kind',
    'accessory starter: rotation',
    'elastic modulus',
  ]);
});
