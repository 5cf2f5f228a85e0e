import {
  appendageEfficiencyFromShare,
  blockCoefficient,
  displacedVolume,
  given,
  midshipFromPrismatic,
  outsideRange,
  resistanceWithAppendages,
} from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';

published(displacedVolume, "Archimedes' principle, by hand", [
  {
    case: '11.8 t in sea water of 1025 kg/m³',
    inputs: { displacement: 11800, density: 1025 },
    gives: 11.5122,
    within: 5e-5,
  },
]);

published(blockCoefficient, 'Holtrop and Mennen 1982, worked example', [
  {
    case: 'L 205, B 32, T 10, volume 37500 m³: CP 0.5833 times CM 0.98',
    inputs: { displacedVolume: 37500, waterlineLength: 205, beam: 32, draught: 10 },
    gives: 0.5833 * 0.98,
    within: 5e-5,
  },
]);

published(midshipFromPrismatic, 'Holtrop and Mennen 1982, worked example', [
  {
    case: 'CB 0.57165 and the printed CP 0.5833',
    inputs: { blockCoefficient: 37500 / (205 * 32 * 10), prismaticCoefficient: 0.5833 },
    gives: 0.98,
    within: 5e-5,
  },
]);

published(appendageEfficiencyFromShare, 'definition, by hand', [
  { case: 'a quarter on top', inputs: { share: 0.25 }, gives: 0.8, within: 1e-12 },
]);

published(resistanceWithAppendages, 'definition, by hand', [
  {
    case: '8 kN bare at 0.8',
    inputs: { bareResistance: 8000, appendageEfficiency: 0.8 },
    gives: 10000,
    within: 1e-9,
  },
]);

it('says when a hull does not fit in its own box', () => {
  const block = blockCoefficient({
    displacedVolume: given('volume', '∇', 'volume', 90),
    waterlineLength: given('length', 'L', 'length', 10),
    beam: given('beam', 'B', 'length', 3),
    draught: given('draught', 'T', 'length', 1),
  });
  expect(outsideRange(block)).toHaveLength(1);
});
