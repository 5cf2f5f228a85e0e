import {
  findUnit,
  given,
  inputPower,
  motorBaseSpeed,
  motorTorque,
  outputPower,
  outputTorque,
  overallEfficiency,
  powerAllowed,
  powerDifference,
  powerFromTorque,
  powerPerSpeed,
  ratioForSpeed,
  ratioInSeries,
  speedAtTorqueLimit,
  speedDifference,
  torqueFromPower,
  torqueOfCapacity,
  toSI,
  workingLine,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { published } from '../published.js';

const in_ = (number: number, symbol: string) => toSI(number, findUnit(symbol)!);

published(
  torqueFromPower,
  'Wentzell Ex 17.1 (constant 63,000; 180.07 exact); recomputed 300 kW at 2300 rpm',
  [
    {
      case: '5 hp at 1750 rpm',
      inputs: { power: in_(5, 'hp'), speed: in_(1750, 'rpm') },
      gives: 180.07,
      unit: in_(1, 'lbf.in'),
      within: 0.005,
    },
    {
      case: 'the same as printed',
      inputs: { power: in_(5, 'hp'), speed: in_(1750, 'rpm') },
      gives: 180,
      unit: in_(1, 'lbf.in'),
      within: 0.5,
    },
    {
      case: '300 kW at 2300 rpm',
      inputs: { power: 300e3, speed: in_(2300, 'rpm') },
      gives: 1245.6,
      within: 0.05,
    },
    {
      case: '40 hp at 1100 rpm, motor comparison',
      inputs: { power: in_(40, 'hp'), speed: in_(1100, 'rpm') },
      gives: 191,
      unit: in_(1, 'lbf.ft'),
      within: 0.5,
    },
  ],
);
published(powerFromTorque, 'T = 9549.297 kW/rpm turned round', [
  {
    case: '9549.297 N·m at 1 rpm',
    inputs: { torque: 9549.297, speed: in_(1, 'rpm') },
    gives: 1,
    unit: 1e3,
    within: 1e-6,
  },
]);
published(
  powerPerSpeed,
  'flywheel coupling table of a pump manual: 125 hp at 1800 rpm is 6.94; recomputed 300 kW at 2300 rpm',
  [
    {
      case: '125 hp at 1800 rpm',
      inputs: { power: in_(125, 'hp'), speed: in_(1800, 'rpm') },
      gives: 6.94,
      unit: in_(1, 'hp/100rpm'),
      within: 0.005,
    },
    {
      case: '300 kW at 2300 rpm',
      inputs: { power: 300e3, speed: in_(2300, 'rpm') },
      gives: 0.13043,
      unit: in_(1, 'kW/rpm'),
      within: 5e-6,
    },
  ],
);
published(powerAllowed, 'the same coupling table: size 7 at 1800 rpm', [
  {
    case: '7 hp/100 rpm at 1800 rpm',
    inputs: { capacity: in_(7, 'hp/100rpm'), speed: in_(1800, 'rpm') },
    gives: 126,
    unit: in_(1, 'hp'),
    within: 1e-9,
  },
]);
published(torqueOfCapacity, '1 hp/100 rpm = 71.209 N·m, 52.52113 lbf·ft; 1 kW/rpm = 9549.297 N·m', [
  {
    case: 'hp/100 rpm in lbf·ft',
    inputs: { capacity: in_(1, 'hp/100rpm') },
    gives: 52.52113,
    unit: in_(1, 'lbf.ft'),
    within: 5e-6,
  },
  { case: 'hp/100 rpm', inputs: { capacity: in_(1, 'hp/100rpm') }, gives: 71.209, within: 5e-4 },
  { case: 'kW/rpm', inputs: { capacity: in_(1, 'kW/rpm') }, gives: 9549.297, within: 5e-4 },
]);
published(
  outputTorque,
  'recomputed 300 kW at 2300 rpm; equal shaft torque of a faster engine behind a deeper gear',
  [
    {
      case: 'ratio 2.5, 97 %',
      inputs: { inputTorque: 1245.584, ratio: 2.5, efficiency: 0.97 },
      gives: 3020.5,
      within: 0.05,
    },
    {
      case: '150 hp at 2400 through 2.0',
      inputs: { inputTorque: in_(150, 'hp') / in_(2400, 'rpm'), ratio: 2, efficiency: 1 },
      gives: 656,
      unit: in_(1, 'lbf.ft'),
      within: 0.6,
    },
    {
      case: '150 hp at 3600 through 3.0, reversing',
      inputs: { inputTorque: in_(150, 'hp') / in_(3600, 'rpm'), ratio: -3, efficiency: 1 },
      gives: 656,
      unit: in_(1, 'lbf.ft'),
      within: 0.6,
    },
  ],
);
published(outputPower, 'rating note on ISO 8665 basis: shaft power is 97 % of crankshaft power', [
  { case: '300 kW', inputs: { inputPower: 300e3, efficiency: 0.97 }, gives: 291, unit: 1e3, within: 1e-9 },
]);
published(inputPower, 'rating note on ISO 8665 basis, turned round', [
  { case: '291 kW', inputs: { outputPower: 291e3, efficiency: 0.97 }, gives: 300, unit: 1e3, within: 1e-9 },
]);
published(
  ratioInSeries,
  'Khurmi and Gupta, Theory of Machines, Ex 13.1: 975 rpm to 52 through 2.5, 3 and 2.5',
  [
    { case: 'first two pairs', inputs: { first: -2.5, second: -3 }, gives: 7.5, within: 1e-12 },
    { case: 'all three', inputs: { first: 7.5, second: -2.5 }, gives: -975 / 52, within: 1e-12 },
  ],
);
published(speedDifference, 'worked by hand: 2.0 nominal is 1.958 exact; 2.05 and 1.96; 2.0 to 2.5', [
  {
    case: 'nominal 2.0, exact 1.958',
    inputs: { assumed: 2, actual: 1.958 },
    gives: 2.1,
    unit: 0.01,
    within: 0.05,
  },
  {
    case: 'clutch A 2.05, B 1.96',
    inputs: { assumed: 2.05, actual: 1.96 },
    gives: 4.6,
    unit: 0.01,
    within: 0.05,
  },
  { case: 'deeper, 2.0 to 2.5', inputs: { assumed: 2, actual: 2.5 }, gives: -20, unit: 0.01, within: 1e-9 },
]);
published(powerDifference, 'propeller law by hand: 3 % rpm is 9.3 % power, -3 % is -8.7 %; ratios as above', [
  {
    case: '+3 % speed',
    inputs: { assumed: 1.03, actual: 1, exponent: 3 },
    gives: 9.3,
    unit: 0.01,
    within: 0.05,
  },
  {
    case: '-3 % speed',
    inputs: { assumed: 0.97, actual: 1, exponent: 3 },
    gives: -8.7,
    unit: 0.01,
    within: 0.05,
  },
  {
    case: '2.0 for 1.958',
    inputs: { assumed: 2, actual: 1.958, exponent: 3 },
    gives: 6.6,
    unit: 0.01,
    within: 0.05,
  },
  {
    case: 'port 2.00, starboard 1.80',
    inputs: { assumed: 2, actual: 1.8, exponent: 3 },
    gives: 37,
    unit: 0.01,
    within: 0.5,
  },
  { case: '2.5:1 taken out', inputs: { assumed: 2.5, actual: 1, exponent: 3 }, gives: 16 - 1, within: 0.5 },
]);
published(ratioForSpeed, 'repower example: 3600 rpm engine, 1150 rpm propeller', [
  {
    case: '3600/1150',
    inputs: { engineSpeed: in_(3600, 'rpm'), shaftSpeed: in_(1150, 'rpm') },
    gives: 3.13,
    within: 0.005,
  },
]);
published(motorTorque, 'limits of a 13 kW, 122 N·m motor, by hand', [
  {
    case: 'torque limit',
    inputs: { torqueLimit: 122, powerLimit: 13e3, greatestSpeed: 300, speed: 50 },
    gives: 122,
    within: 1e-9,
  },
  {
    case: 'power limit',
    inputs: { torqueLimit: 122, powerLimit: 13e3, greatestSpeed: 300, speed: 200 },
    gives: 65,
    within: 1e-9,
  },
  {
    case: 'astern',
    inputs: { torqueLimit: 122, powerLimit: 13e3, greatestSpeed: 300, speed: -200 },
    gives: 65,
    within: 1e-9,
  },
  {
    case: 'too fast',
    inputs: { torqueLimit: 122, powerLimit: 13e3, greatestSpeed: 300, speed: 301 },
    gives: 0,
    within: 0,
  },
  {
    case: 'standing',
    inputs: { torqueLimit: 122, powerLimit: 13e3, greatestSpeed: 300, speed: 0 },
    gives: 122,
    within: 0,
  },
]);
published(motorBaseSpeed, 'by hand', [
  { case: '13 kW, 130 N·m', inputs: { torqueLimit: 130, powerLimit: 13e3 }, gives: 100, within: 1e-9 },
]);
published(
  speedAtTorqueLimit,
  'motor against 40 hp at 1100 rpm: 90 lb-ft of 191 gives about 755 rpm and 13 hp',
  [
    {
      case: '90 of 191 lb-ft',
      inputs: {
        torqueLimit: in_(90, 'lbf.ft'),
        demandTorque: in_(190.99, 'lbf.ft'),
        demandSpeed: in_(1100, 'rpm'),
      },
      gives: 755,
      unit: in_(1, 'rpm'),
      within: 0.5,
    },
  ],
);

describe('power', () => {
  it('13 hp is left at 755 rpm and 90 lb-ft', () => {
    const power = powerFromTorque({
      torque: given('T', 'T', 'torque', in_(90, 'lbf.ft')),
      speed: given('n', 'n', 'rotational speed', in_(755, 'rpm')),
    });
    expect(power.si / in_(1, 'hp')).toBeCloseTo(13, 0);
  });

  it('multiplies efficiencies, and shows each', () => {
    const stage = (si: number) => given('stage', 'η', 'ratio', si);
    const overall = overallEfficiency([stage(0.97), stage(0.99), stage(0.99)]);
    expect(overall.si).toBeCloseTo(0.97 * 0.99 ** 2, 12);
    expect(workingLine(overall)).toBe('η = η_1 η_2 η_3 = 0.97 × 0.99 × 0.99 = 0.9507');
    expect(overallEfficiency([]).si).toBe(1);
    expect(overallEfficiency([stage(1.2)]).working?.range[0]?.met).toBe(false);
  });
});
