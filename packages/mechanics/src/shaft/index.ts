export * from './class-diameter.js';
export * from './class-torsional-limits.js';
export * from './combined-load.js';
export * from './combined-shear.js';
export * from './key.js';
export * from './small-craft-diameter.js';
export * from './taper.js';
export * from './taper-fit.js';
export {
  massPerLength,
  shearModulus,
  torqueAtShearStress,
  torsionalShearStress,
} from './torsion.js';
export * from './torsional-yield.js';
