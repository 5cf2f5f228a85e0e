import type { HullNumbers } from '@tailshaft/mechanics';

/** Holtrop and Mennen, An approximate power prediction method, ISP 29 (1982), section 5. */
export const EXAMPLE_1982: HullNumbers = {
  waterlineLength: 205,
  beam: 32,
  draughtForward: 10,
  draughtAft: 10,
  displacedVolume: 37500,
  buoyancyForward: -0.75,
  midshipCoefficient: 0.98,
  waterplaneCoefficient: 0.75,
  bulbArea: 20,
  bulbHeight: 4,
  transomArea: 16,
  appendageArea: 50,
  appendageFactor: 1.5,
  sternShape: 10,
  wettedArea: 0,
  entranceAngle: 0,
  density: 1025,
  viscosity: 1.18831e-6,
};

/**
 * Holtrop, A statistical re-analysis of resistance and propulsion data, ISP 31 (1984): the example of a fast
 * twin-screw ship, inputs and results from memory; the water is taken as that of the 1982 example.
 */
export const EXAMPLE_1984: HullNumbers = {
  waterlineLength: 50,
  beam: 12,
  draughtForward: 3.1,
  draughtAft: 3.3,
  displacedVolume: 900,
  buoyancyForward: -4.5,
  midshipCoefficient: 0.78,
  waterplaneCoefficient: 0.8,
  bulbArea: 0,
  bulbHeight: 0,
  transomArea: 10,
  appendageArea: 50,
  appendageFactor: 3,
  sternShape: 0,
  wettedArea: 0,
  entranceAngle: (25 * Math.PI) / 180,
  density: 1025,
  viscosity: 1.18831e-6,
};
