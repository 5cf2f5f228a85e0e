import { torsionalYieldDistortionEnergy } from '@tailshaft/mechanics';
import { published } from '../published.js';

published(torsionalYieldDistortionEnergy, 'distortion energy: 0.577 of tensile yield', [
  { case: 'a unit of tensile yield', inputs: { tensileYield: 1 }, gives: 0.577, within: 0.0005 },
]);
