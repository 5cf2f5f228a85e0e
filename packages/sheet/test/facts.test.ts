import { PLACE_VOCABULARY } from '@tailshaft/vocabulary';
import { expect, it } from 'vitest';
import { factRows } from '../src/sections/facts.js';

const fact = (written: string) => ({ value: written, written, origin: {} });

it('names each fact in the words of its row, and no name twice', () => {
  const gear = {
    clutches: [{ name: 'A', nameFact: fact('A'), output: fact('same') }],
    ratings: [{ duty: 'medium', dutyFact: fact('medium'), fuel: fact('diesel') }],
    thrustBearing: { dynamicRating: fact('60 kN') },
    inputSpeedMax: fact('3000 rpm'),
  };
  expect(factRows(gear, PLACE_VOCABULARY.gear).map(one => one.label)).toEqual([
    'clutch A: output',
    'rated medium: for',
    'thrust bearing: dynamic rating',
    'input speed at most',
  ]);
});
