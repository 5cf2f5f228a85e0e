import { given } from '@tailshaft/mechanics';
import { expect, it } from 'vitest';
import { customaryText, otherUnits, siText } from '../src/both-units.js';

/** NIST SP 811, appendix B.8: 1 hp (550 ft·lbf/s) = 745.699 9 W, 1 lbf·ft = 1.355 818 N·m, 1 in = 25.4 mm, 1 lb = 0.453 592 37 kg. */
it.each([
  ['power', 300e3, '300 kW', '402.3 hp'],
  ['torque', 2304, '2304 N·m', '1699 lbf·ft'],
  ['length', 0.05715, '57.15 mm', '2.25 in'],
  ['length', 10.9, '10.9 m', '35.76 ft'],
  ['mass', 850, '850 kg', '1874 lb'],
  ['force', 20e3, '20 kN', '4496 lbf'],
  ['pressure', 500e6, '500 MPa', '72519 psi'],
] as const)('%s', (dimension, si, metric, customary) => {
  const value = given('x', 'x', dimension, si);
  expect(siText(value)).toBe(metric);
  expect(customaryText(value)).toBe(customary);
  expect(otherUnits(value)).toBe(customary);
});

it('leaves what both say alike', () => {
  expect(otherUnits(given('engine speed', 'n', 'rotational speed', 240))).toBeUndefined();
  expect(otherUnits(given('speed of the vessel', 'V', 'speed', 10))).toBeUndefined();
  expect(otherUnits(given('ratio', 'i', 'ratio', 2))).toBeUndefined();
});
