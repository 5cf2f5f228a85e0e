import {
  ATMOSPHERE_LESS_VAPOUR,
  allowableBladeLoading,
  BURRILL_LIMIT,
  bladeArea,
  bladeLoading,
  burrillAreaRatio,
  cavitationNumber,
  developedAreaRatio,
  expandedAreaRatio,
  flatFaceThrustLoadingLimit,
  given,
  KELLER_ADDITION,
  kellerAreaRatio,
  outsideRange,
  pressureAboveVapour,
  projectedAreaFactor,
  resultantSpeed,
  type Value,
} from '@tailshaft/mechanics';
import type { BladeAreaMethod } from '../../model/propeller.js';
import type { Vessel } from '../../model/vessel.js';
import type { Propulsion } from './propulsion.js';

/** What a blade-area criterion says: the capacity must be at least the demand. */
export interface BladeAreaCheck {
  readonly capacity: Value;
  readonly demand: Value;
  /** Area ratio that the criterion asks for, where it is put that way. */
  readonly needed: Value<'ratio'> | undefined;
  readonly thrust: Value<'force'>;
  /** Conditions of the criterion that are not met: it does not apply then. */
  readonly outside: readonly string[];
}

/** Judges the blade area at full throttle, or at rated speed where full throttle is not known. */
export function bladeAreaBy(
  method: BladeAreaMethod,
  propulsion: Propulsion,
  shaftDepth: Value<'length'>,
  vessel: Vessel,
): BladeAreaCheck {
  const run = propulsion.full.applies ? propulsion.full : propulsion.rated;
  const { curve, density } = propulsion;
  if (curve.series.nozzle) return ofOpenPropellers(curve.areaRatio, run.thrust);
  const { diameter, blades } = curve.geometry;
  const { thrust } = run;
  if (method === 'handbook loading') {
    const demand = bladeLoading({
      power: propulsion.rated.power,
      efficiency: propulsion.rated.efficiency,
      speedOfAdvance: propulsion.rated.speedOfAdvance,
      developedArea: bladeArea({ areaRatio: developed(propulsion), diameter }),
    });
    const capacity = allowableBladeLoading({ speedOfAdvance: propulsion.rated.speedOfAdvance, shaftDepth });
    return { capacity, demand, needed: undefined, thrust, outside: own(capacity, demand) };
  }
  const pressure = pressureAboveVapour({
    atmosphereLessVapour: given(
      'atmosphere less vapour pressure',
      'pa - pv',
      'pressure',
      ATMOSPHERE_LESS_VAPOUR,
      {
        assumed: '99047 Pa, at 15 °C (from memory)',
      },
    ),
    density,
    shaftDepth,
  });
  const has = expanded(propulsion);
  if (method === 'Keller') {
    const place = screwsAre(propulsion, vessel);
    const needed = kellerAreaRatio({
      blades,
      thrust,
      pressureAboveVapour: pressure,
      diameter,
      addition: given('addition', 'k', 'ratio', KELLER_ADDITION[place], {
        assumed: `${place} (from memory)`,
      }),
    });
    return { capacity: has, demand: needed, needed, thrust, outside: own(needed) };
  }
  const speed = resultantSpeed({ speedOfAdvance: run.speedOfAdvance, shaftSpeed: run.shaftSpeed, diameter });
  const sigma = cavitationNumber({ pressureAboveVapour: pressure, density, resultantSpeed: speed });
  const limit =
    method === 'flat-face 10 %'
      ? flatFaceThrustLoadingLimit({ cavitationNumber: sigma })
      : BURRILL_LIMIT[method.replace('Burrill ', '') as keyof typeof BURRILL_LIMIT]({
          cavitationNumber: sigma,
        });
  const needed = burrillAreaRatio({
    thrust,
    density,
    resultantSpeed: speed,
    loadingLimit: limit,
    projectedFactor: projectedAreaFactor({ pitchRatio: curve.pitchRatio }),
    diameter,
  });
  return { capacity: has, demand: needed, needed, thrust, outside: own(limit, needed) };
}

/** The blades carry half of the thrust and less, in a flow that the nozzle speeds up: no criterion of open propellers knows it. */
function ofOpenPropellers(area: Value<'ratio'>, thrust: Value<'force'>): BladeAreaCheck {
  const outside = ['it is a criterion of open propellers, and this one turns in a nozzle'];
  return { capacity: area, demand: area, needed: undefined, thrust, outside };
}

/** Only the criterion's own conditions: those of the run behind it are told with the run. */
function own(...values: readonly Value[]): string[] {
  const names = values.map(value => value.working?.name);
  return [...new Set(values.flatMap(outsideRange))].filter(text =>
    names.some(name => name && text.startsWith(name)),
  );
}

function screwsAre({ screws }: Propulsion, vessel: Vessel): keyof typeof KELLER_ADDITION {
  if (screws === 1) return 'single screw';
  return vessel.hull?.form?.value === 'planing' ? 'fast twin screw with transom' : 'twin screw';
}

const TAKEN = 'developed and expanded area taken as equal: their relation is published for three blades only';

function expanded({ curve }: Propulsion): Value<'ratio'> {
  const { areaIs, areaRatio, blades } = curve.geometry;
  if (areaIs !== 'developed') return areaRatio;
  return blades.si === 3
    ? expandedAreaRatio({ developedAreaRatio: areaRatio, blades })
    : { ...areaRatio, assumed: TAKEN };
}

function developed({ curve }: Propulsion): Value<'ratio'> {
  const { areaIs, areaRatio, blades } = curve.geometry;
  if (areaIs === 'developed') return areaRatio;
  return blades.si === 3
    ? developedAreaRatio({ expandedAreaRatio: areaRatio, blades })
    : { ...areaRatio, assumed: TAKEN };
}
