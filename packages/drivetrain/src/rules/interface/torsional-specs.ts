import { changed } from '../example-specs.js';
import { WITH_DAMPER } from './damper-specs.js';

/** The line with the inertias and stiffnesses that a torsional calculation goes by. */
export const WITH_INERTIAS = changed(
  WITH_DAMPER,
  ['  cycle four-stroke\n', '  cycle four-stroke\n  inertia 2.6 kg.m2\n'],
  [
    '  slip device offered\n',
    '  slip device offered\n  input inertia 0.42 kg.m2\n  output inertia 0.6 kg.m2\n',
  ],
  [
    '  torsional yield 70000 psi\n',
    '  torsional yield 70000 psi\n  shear modulus 77 GPa\n  density 7890 kg/m3\n',
  ],
  ['diameter 65 mm [drawing] }', 'diameter 65 mm [drawing]  length 4.8 m }'],
  ['area ratio 0.72 }', 'area ratio 0.72  inertia 1.1 kg.m2 }'],
);

/** The same with what shakes the line, what calms it, and the strength that the class limits go by. */
export const WITH_EXCITATION = changed(
  WITH_INERTIAS,
  ['  inertia 2.6 kg.m2\n', '  inertia 2.6 kg.m2\n  excitation order 3 torque 620 N.m\n'],
  [
    '  torsional stiffness 8200 N.m/rad\n',
    '  torsional stiffness 8200 N.m/rad\n  dynamic magnifier 6\n  vibratory torque at most 480 N.m\n',
  ],
  ['  shear modulus 77 GPa\n', '  shear modulus 77 GPa\n  tensile strength 860 MPa\n'],
  ['inertia 1.1 kg.m2 }', 'inertia 1.1 kg.m2  damping factor 30  excitation order 4 torque 160 N.m }'],
);
