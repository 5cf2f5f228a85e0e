import {
  torsionalYieldCopperAlloy,
  torsionalYieldDistortionEnergy,
  torsionalYieldTwoThirds,
} from '@tailshaft/mechanics';
import { published } from '../published.js';
import { MPA, PSI } from '../tables/factors.js';

published(torsionalYieldTwoThirds, 'ABYC P-6 (2002): two thirds of the tensile yield of a 316 bar', [
  { case: '175 MPa in MPa', inputs: { tensileYield: 175 * MPA }, gives: 116.7, within: 0.05, unit: MPA },
  { case: '175 MPa in psi', inputs: { tensileYield: 175 * MPA }, gives: 16_900, within: 50, unit: PSI },
]);

published(torsionalYieldDistortionEnergy, 'distortion energy: 0.577 of tensile yield', [
  { case: 'a unit of tensile yield', inputs: { tensileYield: 1 }, gives: 0.577, within: 0.0005 },
]);

published(torsionalYieldCopperAlloy, 'small-craft rule for copper alloys (from memory): half', [
  { case: '276 MPa', inputs: { tensileYield: 276 * MPA }, gives: 138, within: 1e-9, unit: MPA },
]);
