import { DIAMETER_EXPONENT, demandAtDiameter, demandAtPitch } from '@tailshaft/mechanics';
import { published } from '../published.js';

const INCH = 0.0254;

published(
  demandAtDiameter,
  'worked by hand from P = 2π ρ n³ D⁵ KQ: 28 over 26 is 1.0769; its third power 1.2490, its fifth 1.4485; 24 over 26 to the fifth 0.6702',
  [
    ['same pitch, least', 28, 249.8],
    ['same pitch, most', 28, 289.7],
    ['similar', 24, 134.04],
  ].map(([kind, inches, kilowatts]) => ({
    case: `26 to ${inches} in, ${kind}`,
    inputs: {
      referencePower: 200e3,
      referenceDiameter: 26 * INCH,
      diameter: Number(inches) * INCH,
      exponent: DIAMETER_EXPONENT[kind as keyof typeof DIAMETER_EXPONENT],
    },
    gives: Number(kilowatts) * 1000,
    within: 50,
  })),
);

published(demandAtPitch, 'worked by hand: 26 over 24 squared is 1.1736', [
  {
    case: '24 to 26 in',
    inputs: { referencePower: 200e3, referencePitch: 24 * INCH, pitch: 26 * INCH },
    gives: 234.72e3,
    within: 10,
  },
]);
