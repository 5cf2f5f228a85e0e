import { engineEquilibrium, given, openWater, type Value } from '@tailshaft/mechanics';
import { Needs } from '../../judge/needs.js';
import type { Missing } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import type { ShaftLine, Vessel } from '../../model/vessel.js';
import { ratedPoint } from '../engine-points.js';
import { propellerPower } from '../propeller-power.js';
import { overallRatio } from '../speeds.js';
import { bladeGeometry } from './blades.js';
import { fullThrottleTable } from './engine-table.js';
import { waterDensity } from './hull-forms.js';

export interface Bollard {
  readonly thrust: Value<'force'>;
  readonly shaftSpeed: Value<'rotational speed'>;
  readonly engineSpeed: Value<'rotational speed'>;
}

/**
 * Thrust of one propeller with the vessel held and the lever forward: the B-series at rest, where the engine's own
 * torque balances it. The suction on the hull is not taken off.
 */
export function bollardOf(
  line: ShaftLine,
  vessel: Vessel,
): { readonly value: Bollard | undefined; readonly missing: readonly Missing[]; readonly refusal?: string } {
  const needs = new Needs();
  const rated = needs.take(ratedPoint(line, vessel));
  const ratio = needs.take(overallRatio(line, 'ahead'));
  const available = needs.take(propellerPower(line, vessel));
  const geometry = line.propeller && bladeGeometry(line.propeller, needs);
  if (!rated || !ratio || !available || !geometry) return { value: undefined, missing: needs.missing };
  const table = fullThrottleTable(line, vessel, rated);
  const curve = openWater('Wageningen B', geometry);
  if (!curve.applies) {
    const name = nameOf(line.propeller!);
    const what = `a propeller that the B-series covers, the only one here that reaches down to no speed, or a measured bollard thrust of ${name}`;
    return {
      value: undefined,
      missing: [
        {
          what,
          host: home(line.propeller!),
          property: 'pitch',
          example: 'unknown',
          at: line.propeller!.origin,
        },
      ],
      refusal: curve.reason,
    };
  }
  const found = table
    ? engineEquilibrium({
        curve,
        engine: table,
        driveline: {
          ratio,
          efficiency: given('driveline efficiency', 'η', 'ratio', available.si / rated.power.si, {
            assumed: 'power at the propeller over rated power of the engine',
          }),
        },
        speedOfAdvance: given('speed of advance', 'VA', 'speed', 0, { assumed: 'held at the bollard' }),
        density: waterDensity(vessel),
      })
    : undefined;
  if (found?.applies) return { value: found, missing: [] };
  const { engine, motor } = line;
  const source = (engine ?? motor)!;
  needs.miss({
    what: `full-load torque of ${nameOf(source)} below rated speed: at the bollard the propeller pulls it down`,
    host: home(source),
    property: engine ? 'full-load torque' : 'torque',
  });
  return { value: undefined, missing: needs.missing, ...(found ? { refusal: found.reason } : {}) };
}
