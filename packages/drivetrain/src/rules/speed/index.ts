import type { Rule } from '../rule.js';
import { gearInputMaximum } from './gear-input-maximum.js';
import { idleInGear } from './idle-in-gear.js';
import { idlePressure } from './idle-pressure.js';
import { moverTurnedAlong } from './mover-turned-along.js';
import { slowRunning } from './slow-running.js';
import { tipSpeed } from './tip-speed.js';
import { transferInputMaximum } from './transfer-input-maximum.js';
import { vesselSpeedPerEngineRpm } from './vessel-speed-per-engine-rpm.js';

/** Rules on speeds of shafts, tips and the vessel, in the order of the catalogue of mistakes. */
export const SPEED_RULES: readonly Rule[] = [
  gearInputMaximum,
  transferInputMaximum,
  vesselSpeedPerEngineRpm,
  idleInGear,
  idlePressure,
  slowRunning,
  tipSpeed,
  moverTurnedAlong,
];
