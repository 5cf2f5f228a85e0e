import { changed, SINGLE_LINE } from '../example-specs.js';

/** A damper between flywheel and gear, with all that its sheet says. */
export const WITH_DAMPER = changed(
  SINGLE_LINE,
  ['  housing SAE-3\n', '  housing SAE-3\n  flywheel size 11.5\n  flywheel recess diameter 314 mm\n'],
  ['  slip device offered\n', '  slip device offered\n  input spline teeth 26\n  input spline pitch 16/32\n'],
  [
    'shaft material high-strength-stainless {',
    `coupling Reed-300 "two-stage damper" {
  source "Reed 300 sheet" dated 2024-09-01
  kind damper
  torque at most 1600 N.m
  torsional stiffness 8200 N.m/rad
  flywheel size 11.5
  rivet ring diameter 300 mm
  cylinders at least 4
  spline teeth 26
  spline pitch 16/32
}

coupling Reed-310 "softer two-stage damper" {
  source "Reed 310 sheet" dated 2024-09-01
  kind damper
  torque at most 1750 N.m
  torsional stiffness 7400 N.m/rad
  dynamic magnifier 6
  vibratory torque at most 560 N.m
  flywheel size 11.5
  rivet ring diameter 300 mm
  cylinders at least 3
  spline teeth 26
  spline pitch 16/32
}

shaft material high-strength-stainless {`,
  ],
  ['      gear Alder-63 ratio 2.04:1', '      coupling Reed-300\n      gear Alder-63 ratio 2.04:1'],
);
