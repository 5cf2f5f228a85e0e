import {
  advanceOfTrial,
  advanceRatioAtTorque,
  given,
  openWater,
  propellerLoad,
  torqueCoefficientRead,
  wakeOfTrial,
} from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { published } from '../published.js';

published(
  torqueCoefficientRead,
  'worked by hand: n = 20 1/s, D = 0.5 m, ρ = 1000: 2π ρ n³ D⁵ = 1 570 796 W for KQ = 1',
  [
    {
      case: '47.12 kW',
      inputs: {
        power: 47_123.89,
        shaftSpeed: 40 * Math.PI,
        density: 1000,
        diameter: 0.5,
        relativeRotativeEfficiency: 1,
      },
      gives: 0.03,
      within: 1e-7,
    },
  ],
);

published(advanceOfTrial, 'worked by hand: 0.6 × 20 1/s × 0.5 m', [
  {
    case: 'J 0.6',
    inputs: { advanceRatio: 0.6, shaftSpeed: 40 * Math.PI, diameter: 0.5 },
    gives: 6,
    within: 1e-12,
  },
]);

published(wakeOfTrial, 'worked by hand: 6 m/s at the propeller of a vessel at 7.5 m/s', [
  { case: '0.2', inputs: { speedOfAdvance: 6, vesselSpeed: 7.5 }, gives: 0.2, within: 1e-12 },
]);

/** Third-party evaluation of B6-65 at P/D 1.4 from the published coefficients: J 0.3 has 10KQ 1.094460, J 1.2 has 0.420257. */
it.each([
  [0.3, 0.109446],
  [1.2, 0.0420257],
])('finds the advance ratio %d by the torque coefficient that is published for it', (j, kq) => {
  const curve = openWater('Wageningen B', {
    diameter: given('D', 'D', 'length', 1),
    pitch: given('P', 'P', 'length', 1.4),
    blades: given('Z', 'Z', 'number', 6),
    areaRatio: given('AE/A0', 'AE/A0', 'ratio', 0.65),
  });
  if (!curve.applies) throw new Error(curve.reason);
  expect(advanceRatioAtTorque(curve, given('KQ', 'KQ', 'ratio', kq))!.si).toBeCloseTo(j, 4);
  const speed = given('ω', 'ω', 'rotational speed', 60);
  const advance = advanceOfTrial({
    advanceRatio: given('J', 'J', 'ratio', j),
    shaftSpeed: speed,
    diameter: curve.geometry.diameter,
  });
  const load = propellerLoad(curve, speed, advance, given('ρ', 'ρ', 'density', 1025));
  expect(load.torqueCoefficient.si).toBeCloseTo(kq, 5);
});

it('finds none for a torque that the series has nowhere', () => {
  const curve = openWater('Wageningen B', {
    diameter: given('D', 'D', 'length', 1),
    pitch: given('P', 'P', 'length', 0.8),
    blades: given('Z', 'Z', 'number', 4),
    areaRatio: given('AE/A0', 'AE/A0', 'ratio', 0.55),
  });
  if (!curve.applies) throw new Error(curve.reason);
  expect(advanceRatioAtTorque(curve, given('KQ', 'KQ', 'ratio', 0.5))).toBeUndefined();
});
