import {
  admiraltyCoefficient,
  apparentSlip,
  displacementLengthRatio,
  displacementSpeedLength,
  expectedSlip,
  given,
  hullSpeed,
  pitchFromSlip,
  realSlip,
  renamed,
  speedLengthRatio,
  type Value,
} from '@tailshaft/mechanics';
import type { Vessel } from '../model/vessel.js';
import type { LineAnalysis } from './line.js';
import { motorYardsticks, propellerYardsticks, shaftYardsticks } from './sizing-figures.js';

/*
 * The yardsticks of the trade: no check judges by them, and people who know such vessels see by them at a glance whether a
 * prediction can be right.
 */

/** How heavy the hull is for its length, and the speed of the wave of that length. */
export function hullFigures({ hull }: Vessel): Value[] {
  const waterlineLength = hull?.waterlineLength?.value;
  const displacement = hull?.displacement?.value;
  if (!waterlineLength) return [];
  return usable([
    displacement && displacementLengthRatio({ displacement, waterlineLength }),
    hullSpeed({ waterlineLength }),
  ]);
}

/** Slip and speed–length ratio of a line at full throttle or, where that cannot be predicted, at rated power; then what the usual formulas would choose. */
export function lineFigures(analysis: LineAnalysis): Value[] {
  return usable([
    ...runFigures(analysis),
    ...propellerYardsticks(analysis),
    ...shaftYardsticks(analysis),
    ...motorYardsticks(analysis),
  ]);
}

function runFigures(analysis: LineAnalysis): (Value | undefined)[] {
  const propulsion = analysis.propulsion?.value;
  const { propeller } = analysis.line;
  if (!propulsion || !propeller) return [];
  const { full, rated, screws } = propulsion;
  const run = full.applies ? full : rated;
  const at = full.applies ? 'full throttle' : 'rated power';
  const { shaftSpeed, vesselSpeed, speedOfAdvance } = run;
  const pitch = (propeller.effectivePitch ?? propeller.pitch)?.value;
  const { hull } = analysis.vessel;
  const waterlineLength = hull?.waterlineLength?.value;
  const displacement = hull?.displacement?.value;
  const power = given('power at all propellers', 'P', 'power', rated.power.si * screws, {
    assumed: `${screws} times the power at one propeller`,
  });
  const slip = pitch && apparentSlip({ vesselSpeed, pitch, shaftSpeed });
  const real = pitch && realSlip({ speedOfAdvance, pitch, shaftSpeed });
  const length = waterlineLength && speedLengthRatio({ vesselSpeed, waterlineLength });
  const expected = renamed(expectedSlip({ vesselSpeed }), 'slip expected at that speed, handbook');
  return [
    slip && renamed(slip, `apparent slip at ${at}`),
    real && renamed(real, `real slip at ${at}`),
    slip && expected,
    slip &&
      renamed(
        pitchFromSlip({ vesselSpeed, shaftSpeed, slip: expected }),
        'pitch for that speed at the expected slip',
      ),
    length && renamed(length, `speed-length ratio at ${at}`),
    displacement &&
      renamed(
        displacementSpeedLength({ displacement, power }),
        'speed-length ratio for that power, handbook',
      ),
    displacement &&
      renamed(
        admiraltyCoefficient({ displacement, vesselSpeed: rated.vesselSpeed, power }),
        'Admiralty coefficient at rated power',
      ),
  ];
}

/** Those that come to a number by a formula that holds here. */
function usable(values: readonly (Value | undefined)[]): Value[] {
  return values.filter(
    (one): one is Value =>
      one !== undefined && Number.isFinite(one.si) && (one.working?.range ?? []).every(({ met }) => met),
  );
}
