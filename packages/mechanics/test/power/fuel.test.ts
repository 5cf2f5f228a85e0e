import {
  cycleLoad,
  distanceOnTank,
  fuelBetween,
  fuelBySpecific,
  fuelForDistance,
  fuelInProportion,
  MARINE_CYCLES,
} from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';

const KNOT = 1852 / 3600;
const LITRE_PER_HOUR = 1e-3 / 3600;
const G_PER_KWH = 1e-3 / 3.6e6;

published(fuelBySpecific, 'worked by hand: 200 kW × 215 g/kWh = 43 kg/h, over 0.84 kg/L', [
  {
    case: '200 kW at 215 g/kWh',
    inputs: { power: 200e3, specificFuel: 215 * G_PER_KWH, fuelDensity: 840 },
    gives: 51.19,
    within: 0.005,
    unit: LITRE_PER_HOUR,
  },
]);

published(fuelInProportion, 'worked by hand: 78 L/h at 300 kW is 0.26 L for each kWh; 210 kW take 54.6 L/h', [
  {
    case: '210 of 300 kW',
    inputs: { power: 210e3, declaredFlow: 78 * LITRE_PER_HOUR, declaredPower: 300e3 },
    gives: 54.6,
    within: 1e-9,
    unit: LITRE_PER_HOUR,
  },
]);

published(fuelBetween, 'worked by hand: half way between 100 kW, 28 L/h and 200 kW, 52 L/h', [
  {
    case: '150 kW',
    inputs: {
      power: 150e3,
      lowerPower: 100e3,
      lowerFlow: 28 * LITRE_PER_HOUR,
      upperPower: 200e3,
      upperFlow: 52 * LITRE_PER_HOUR,
    },
    gives: 40,
    within: 1e-9,
    unit: LITRE_PER_HOUR,
  },
]);

published(fuelForDistance, 'worked by hand: 40 nmi at 10 kn are 4 h, 51.2 L/h each', [
  {
    case: '40 nmi at 10 kn',
    inputs: { flow: 51.2 * LITRE_PER_HOUR, distance: 40 * 1852, vesselSpeed: 10 * KNOT },
    gives: 204.8,
    within: 1e-9,
    unit: 1e-3,
  },
]);

published(distanceOnTank, 'worked by hand: 1000 L at 50 L/h are 20 h, at 10 kn 200 nmi', [
  {
    case: '1000 L',
    inputs: { flow: 50 * LITRE_PER_HOUR, usableFuel: 1, vesselSpeed: 10 * KNOT },
    gives: 200,
    within: 1e-9,
    unit: 1852,
  },
]);

/** ISO 8178-4, cycles E3 and E5, from memory: the weights of a cycle make one, and its speeds lie on the cube of power. */
it.each([
  ['E3', 0.6875],
  ['E5', 0.3425],
] as const)('%s weighs rated power by %d', (name, load) => {
  const { modes } = MARINE_CYCLES.find(one => one.name === name)!;
  expect(modes.reduce((sum, one) => sum + one.weight, 0)).toBeCloseTo(1, 12);
  expect(cycleLoad(modes)).toBeCloseTo(load, 12);
  for (const { speed, power } of modes) expect(Math.abs(speed ** 3 - power)).toBeLessThan(0.015);
});
