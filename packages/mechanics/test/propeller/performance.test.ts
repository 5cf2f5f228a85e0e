import {
  advanceRatio,
  openWaterEfficiency,
  pitchRatio,
  propellerPower,
  propellerThrust,
  propellerTorque,
  speedOfAdvance,
} from '@tailshaft/mechanics';
import { published } from '../published.js';

const _KNOT = 1852 / 3600;
const RPM = Math.PI / 30;
const HAND = 'recomputed by hand from the definition';

published(speedOfAdvance, HAND, [
  { case: '10 m/s, w 0.2', inputs: { vesselSpeed: 10, wakeFraction: 0.2 }, gives: 8, within: 1e-12 },
]);
published(advanceRatio, HAND, [
  {
    case: '6 m/s, 10 rev/s, 1.2 m',
    inputs: { speedOfAdvance: 6, shaftSpeed: 600 * RPM, diameter: 1.2 },
    gives: 0.5,
    within: 1e-12,
  },
]);
published(pitchRatio, HAND, [
  { case: '24 by 20 in', inputs: { pitch: 20 * 0.0254, diameter: 24 * 0.0254 }, gives: 0.8333, within: 5e-5 },
]);
published(propellerThrust, HAND, [
  {
    case: 'KT 0.2, 1000 kg/m³, 10 rev/s, 1 m',
    inputs: { thrustCoefficient: 0.2, density: 1000, shaftSpeed: 600 * RPM, diameter: 1 },
    gives: 20000,
    within: 1e-6,
  },
]);
published(propellerTorque, HAND, [
  {
    case: 'KQ 0.03, 1000 kg/m³, 10 rev/s, 2 m',
    inputs: { torqueCoefficient: 0.03, density: 1000, shaftSpeed: 600 * RPM, diameter: 2 },
    gives: 96000,
    within: 1e-6,
  },
]);
published(propellerPower, HAND, [
  { case: '1000 N·m at 100 rad/s', inputs: { torque: 1000, shaftSpeed: 100 }, gives: 100000, within: 1e-9 },
]);

/** J, KT, KQ, η0 of six B-series points. */
const EFFICIENCY: readonly (readonly [number, number, number, number])[] = [
  [0.4, 0.195852, 0.0255236, 0.4885],
  [0.6, 0.20859, 0.0349094, 0.57059],
  [0.5, 0.172686, 0.0238282, 0.57671],
  [0.7, 0.178291, 0.0307678, 0.64558],
  [0.9, 0.1953, 0.040184, 0.69616],
  [1.1, 0.218282, 0.05323, 0.71792],
];
published(
  openWaterEfficiency,
  'recomputed apart from this code',
  EFFICIENCY.map(([j, kt, kq, gives]) => ({
    case: `J ${j}`,
    inputs: { advanceRatio: j, thrustCoefficient: kt, torqueCoefficient: kq },
    gives,
    within: 5.1e-6,
  })),
);

const _TAYLOR =
  'recomputed: exact links to J and KQ, δ = 101.27 / J and Bp = 33.06 √(KQ / J⁵) in fresh water';
// At J = 1 with n = 1 rev/s, D = 1 m the power is 2π ρ KQ: one factor of the link after another.
const _slugPerCubicFoot = 515.378818;
