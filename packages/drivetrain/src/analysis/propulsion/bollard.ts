import {
  bollardAtPower,
  engineEquilibrium,
  given,
  type OpenWaterCurve,
  openWater,
  type PropellerGeometry,
  propellerLoad,
  renamed,
  shaftSpeedThroughGear,
  type Value,
} from '@tailshaft/mechanics';
import { Needs } from '../../judge/needs.js';
import type { Missing } from '../../judge/verdict.js';
import { home, nameOf } from '../../model/part.js';
import type { Propeller } from '../../model/shafting.js';
import type { ShaftLine, Vessel } from '../../model/vessel.js';
import { ratedTogether } from '../joined.js';
import { isPair } from '../pair.js';
import { propellerPower } from '../propeller-power.js';
import { overallRatio } from '../speeds.js';
import { bladeGeometry, isDucted, seriesCurve } from './blades.js';
import { fullThrottleTable } from './engine-table.js';
import { waterDensity } from './hull-forms.js';
import { hasPitchRange, pitchAtRest } from './set-pitch.js';

const HELD = given('speed of advance', 'VA', 'speed', 0, { assumed: 'held at the bollard' });

export interface Bollard {
  /** The series that it is worked out by. */
  readonly curve: OpenWaterCurve;
  /** Of a propeller in a nozzle, that of both together. */
  readonly thrust: Value<'force'>;
  readonly shaftSpeed: Value<'rotational speed'>;
  readonly engineSpeed: Value<'rotational speed'>;
}

/** The series that reaches down to no speed: the B-series, or in a nozzle the one that stands for it. */
function atRest(propeller: Propeller, geometry: PropellerGeometry, vessel: Vessel) {
  if (isDucted(propeller) || isPair(propeller)) return seriesCurve(propeller, geometry, vessel);
  const curve = openWater('Wageningen B', geometry);
  return curve.applies ? { curve } : { refusal: curve.reason };
}

/** Thrust that the shaft gets at the bollard from a propeller in a nozzle, with this power; the nozzle keeps the rest. */
export function shaftThrustInNozzle(
  propeller: Propeller,
  power: Value<'power'>,
  vessel: Vessel,
  needs: Needs,
): Value<'force'> | undefined {
  const geometry = bladeGeometry(propeller, needs);
  if (!geometry) return undefined;
  if (propeller.kind?.value === 'controllable pitch')
    return needs.miss(
      {
        what: `thrust that the shaft gets from ${nameOf(propeller)} in its nozzle: its pitch at the bollard is not its design pitch`,
        host: propeller.origin,
        property: 'nozzle',
      },
      propeller.nozzle?.origin,
    );
  const series = seriesCurve(propeller, geometry, vessel);
  const pull =
    'refusal' in series
      ? { applies: false as const, reason: series.refusal }
      : bollardAtPower(series.curve, power, waterDensity(vessel));
  if (pull.applies) return renamed(pull.shaftThrust, 'thrust that the shaft gets at the bollard', 'TP');
  return needs.miss(
    {
      what: `thrust that the shaft gets from ${nameOf(propeller)} in its nozzle. ${pull.reason.replace(/\.$/, '')}`,
      host: propeller.origin,
      property: 'nozzle',
    },
    propeller.nozzle?.origin,
  );
}

/**
 * Thrust of one propeller with the vessel held and the lever forward: the series at rest, where the engine's own
 * torque balances it. The suction on the hull is not taken off.
 */
export function bollardOf(
  line: ShaftLine,
  vessel: Vessel,
): { readonly value: Bollard | undefined; readonly missing: readonly Missing[]; readonly refusal?: string } {
  const needs = new Needs();
  const rated = needs.take(ratedTogether(line, vessel));
  const ratio = needs.take(overallRatio(line, 'ahead'));
  const available = needs.take(propellerPower(line, vessel));
  const geometry = line.propeller && bladeGeometry(line.propeller, needs);
  if (!rated || !ratio || !available || !geometry) return { value: undefined, missing: needs.missing };
  const table = fullThrottleTable(line, vessel, rated);
  const set = hasPitchRange(line.propeller!)
    ? pitchAtRest(
        line.propeller!,
        pitch => {
          const found = atRest(line.propeller!, { ...geometry, pitch }, vessel);
          if (!('curve' in found)) return undefined;
          const shaftSpeed = shaftSpeedThroughGear({ engineSpeed: rated.speed, ratio });
          return propellerLoad(found.curve, shaftSpeed, HELD, waterDensity(vessel));
        },
        available,
        needs,
      )
    : undefined;
  if (needs.any) return { value: undefined, missing: needs.missing };
  const series = atRest(line.propeller!, set ? { ...geometry, pitch: set } : geometry, vessel);
  if ('refusal' in series) {
    const name = nameOf(line.propeller!);
    const pair = isPair(line.propeller!);
    const covers = isDucted(line.propeller!)
      ? 'the Ka series in nozzle 19A covers'
      : 'the B-series covers, the only one here that reaches down to no speed';
    const what = pair
      ? `bollard thrust of the pair of ${name}, as measured: no published series covers one`
      : `a propeller that ${covers}, or a measured bollard thrust of ${name}`;
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
      refusal: series.refusal,
    };
  }
  const found = table
    ? engineEquilibrium({
        curve: series.curve,
        engine: table,
        driveline: {
          ratio,
          efficiency: given('driveline efficiency', 'η', 'ratio', available.si / rated.power.si, {
            assumed: 'power at the propeller over rated power of the engine',
          }),
        },
        speedOfAdvance: HELD,
        density: waterDensity(vessel),
      })
    : undefined;
  if (found?.applies) return { value: { ...found, curve: series.curve }, missing: [] };
  const { engine, motor } = line;
  const source = (engine ?? motor)!;
  needs.miss({
    what: `full-load torque of ${nameOf(source)} below rated speed: at the bollard the propeller pulls it down`,
    host: home(source),
    property: engine ? 'full-load torque' : 'torque',
  });
  return { value: undefined, missing: needs.missing, ...(found ? { refusal: found.reason } : {}) };
}
