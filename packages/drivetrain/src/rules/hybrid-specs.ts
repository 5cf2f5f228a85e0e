import { changed, SINGLE_LINE } from './example-specs.js';

const MOTOR = `motor Eider-40 "electric motor on the input of the gear" {
  source "Eider 40 data sheet" dated 2025-02-10
  rotation either
  power 40 kW at 1500 rpm
  torque 255 N.m
  base speed 1500 rpm
  top speed 2950 rpm
}
`;

/** The single line with a motor on the input of its gear, and its ways of running. */
export const HYBRID = `${MOTOR}${changed(
  SINGLE_LINE,
  ['rated medium 0.18 kW/rpm', 'rated medium 0.24 kW/rpm'],
  [
    '      gear Alder-63 ratio 2.04:1 ahead clutch B',
    `      motor Eider-40
      gear Alder-63 ratio 2.04:1 ahead clutch B
      mode passage { driven by engine }
      mode harbour { driven by motor }
      mode boost { driven by engine and motor  motor power at most 30 kW }`,
  ],
)}`;
