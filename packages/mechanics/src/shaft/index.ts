export * from './classDiameter.js';
export * from './classTorsionalLimits.js';
export * from './combinedLoad.js';
export * from './combinedShear.js';
export * from './key.js';
export * from './smallCraftDiameter.js';
export * from './taper.js';
export * from './taperFit.js';
export {
  diameterForTorsion,
  massPerLength,
  shearModulus,
  torqueAtShearStress,
  torsionalShearStress,
} from './torsion.js';
export * from './torsionalYield.js';
