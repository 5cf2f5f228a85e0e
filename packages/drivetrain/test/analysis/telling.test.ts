import { given } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { tellLike } from '../../src/analysis/telling.js';

const power = (written: string) =>
  given('power', 'P', 'power', 1e5, { written, unit: written.split(' ')[1]! });

it.each([
  ['250 hp', 'torque', 'torque', 780, '575.3 lbf·ft'],
  ['186 kW', 'torque', 'torque', 780, '780 N·m'],
  // Vessels go in knots whatever the engine is rated in; nobody says a tip speed in miles.
  ['250 hp', 'vessel speed', 'speed', 10, '19.44 kn'],
  ['186 kW', 'vessel speed', 'speed', 10, '19.44 kn'],
  ['250 hp', 'tip speed', 'speed', 40.88, '134.1 ft/s'],
  ['186 kW', 'tip speed', 'speed', 40.88, '40.88 m/s'],
] as const)('beside %s a %s is said as the trade says it there', (written, label, dimension, si, said) => {
  expect(tellLike(power(written))(given(label, 'x', dimension, si))).toBe(said);
});
