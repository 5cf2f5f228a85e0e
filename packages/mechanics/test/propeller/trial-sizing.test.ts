import {
  correlatedResistance,
  type Dimension,
  demandAtDiameter,
  demandAtPitch,
  diameterForPower,
  given,
  pitchExponent,
  pitchForPower,
  trialResistanceCorrelation,
} from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';

const INCH = 0.0254;

published(pitchExponent, 'worked by hand: 1 + 1/s', [
  { case: 'slip 25 %', inputs: { slip: 0.25 }, gives: 5, within: 1e-9 },
  { case: 'slip 50 %', inputs: { slip: 0.5 }, gives: 3, within: 1e-9 },
  { case: 'no advance', inputs: { slip: 1 }, gives: 2, within: 1e-9 },
]);

published(pitchForPower, 'worked by hand: 250 over 360 is 25/36, its root 5/6', [
  {
    case: '24 in to 20 in',
    inputs: { referencePitch: 24 * INCH, referencePower: 360e3, power: 250e3, exponent: 2 },
    gives: 20 * INCH,
    within: 1e-6,
  },
]);

published(diameterForPower, 'worked by hand: 0.95 to the third is 0.857375, to the fifth 0.773781', [
  {
    case: '26 in to 24.7 in, third power',
    inputs: { referenceDiameter: 26 * INCH, referencePower: 1000e3, power: 857.375e3, exponent: 3 },
    gives: 24.7 * INCH,
    within: 1e-6,
  },
  {
    case: '26 in to 24.7 in, fifth power',
    inputs: { referenceDiameter: 26 * INCH, referencePower: 1000e3, power: 773.781e3, exponent: 5 },
    gives: 24.7 * INCH,
    within: 1e-6,
  },
]);

published(trialResistanceCorrelation, 'worked by hand: 2 × 0.92 × 9 kN is 16.56 kN, over 15 kN', [
  {
    case: 'two screws',
    inputs: { thrust: 9000, screws: 2, thrustDeduction: 0.08, resistance: 15_000 },
    gives: 1.104,
    within: 1e-9,
  },
]);

published(correlatedResistance, 'worked by hand: 1.08 × 12 kN', [
  { case: '8 % more', inputs: { predicted: 12_000, correlation: 1.08 }, gives: 12_960, within: 1e-6 },
]);

const value = <D extends Dimension>(dimension: D, si: number) => given('x', 'x', dimension, si);
const [referencePower, power] = [value('power', 350e3), value('power', 300e3)];

it.each([3, 4, 5])('a diameter asks by the law of diameters what it was worked out for, exponent %s', m => {
  const [exponent, referenceDiameter] = [value('ratio', m), value('length', 0.66)];
  const diameter = diameterForPower({ referenceDiameter, referencePower, power, exponent });
  const asked = demandAtDiameter({ referencePower, referenceDiameter, diameter, exponent });
  expect(asked.si).toBeCloseTo(300e3, 3);
});

it('a pitch asks by the least law of pitch what it was worked out for', () => {
  const referencePitch = value('length', 0.61);
  const pitch = pitchForPower({ referencePitch, referencePower, power, exponent: value('ratio', 2) });
  expect(demandAtPitch({ referencePower, referencePitch, pitch }).si).toBeCloseTo(300e3, 3);
});

// d ln(H (H - c)) / d ln H with c = (1 - s) H, by differences.
it.each([0.1, 0.25, 0.5, 1])('the exponent of the pitch is the slope of H (H - V/n) at slip %s', slip => {
  const torque = (H: number) => H * (H - (1 - slip));
  const slope = Math.log(torque(1.0001) / torque(0.9999)) / Math.log(1.0001 / 0.9999);
  expect(pitchExponent({ slip: value('ratio', slip) }).si).toBeCloseTo(slope, 3);
});
