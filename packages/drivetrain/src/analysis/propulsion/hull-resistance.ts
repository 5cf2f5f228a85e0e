import {
  appendageEfficiencyFromShare,
  correlatedResistance,
  doesNotApply,
  given,
  holtropCurve,
  type Outcome,
  planingAppendageEfficiency,
  planingCurve,
  type ResistanceCurve,
  renamed,
  resistanceTable,
  resistanceWithAppendages,
  type SpeedRow,
  type Value,
  volumeFroudeNumber,
} from '@tailshaft/mechanics';
import type { Needs } from '../../judge/needs.js';
import type { SpeedMethod } from '../../model/hull.js';
import type { Vessel } from '../../model/vessel.js';
import { assumedOf } from '../efficiencies.js';
import { displacementForm, hullFacts, planingForm, volumeOf } from './hull-forms.js';

/** Methods that give resistance against speed. */
export type ResistanceMethod = Exclude<SpeedMethod, 'given speed' | 'Crouch' | 'handbook displacement'>;

/**
 * Resistance with appendages by the chosen method, or why that does not apply; undefined where facts are missing.
 * `fastest` is a speed that the vessel cannot reach: the planing method is worked out up to there.
 */
export function resistanceBy(
  method: ResistanceMethod,
  vessel: Vessel,
  fastest: Value<'speed'>,
  needs: Needs,
): Outcome<ResistanceCurve> | undefined {
  const curve = uncorrelated(method, vessel, fastest, needs);
  const correlation = assumedOf(vessel, 'resistance correlation', 'ratio');
  return curve?.applies && correlation ? correlated(curve, correlation) : curve;
}

/** What the method gives, by the share that a trial of this vessel gave. */
function correlated(curve: ResistanceCurve, assumed: Value<'ratio'>): Outcome<ResistanceCurve> {
  const correlation = renamed(assumed, 'resistance correlation', 'kR');
  return {
    applies: true,
    method: curve.method,
    lowest: curve.lowest,
    highest: curve.highest,
    numberAt: V => {
      const force = curve.numberAt(V);
      return force === undefined ? undefined : force * correlation.si;
    },
    valueAt: vesselSpeed => {
      const predicted = curve.valueAt(vesselSpeed);
      return predicted && correlatedResistance({ predicted, correlation });
    },
  };
}

function uncorrelated(
  method: ResistanceMethod,
  vessel: Vessel,
  fastest: Value<'speed'>,
  needs: Needs,
): Outcome<ResistanceCurve> | undefined {
  switch (method) {
    case 'given resistance':
      return givenResistance(vessel, needs);
    case 'Savitsky':
      return planingResistance(vessel, fastest, needs);
    case 'Holtrop 1982':
    case 'Holtrop 1984': {
      const form = displacementForm(vessel, needs);
      return form && holtropCurve(form, method === 'Holtrop 1982' ? '1982' : '1984');
    }
  }
}

/** Notes what a method still needs to know of the hull, before anything is worked out by it. */
export function missHull(method: SpeedMethod, vessel: Vessel, needs: Needs): void {
  if (method === 'Savitsky') {
    planingForm(vessel, needs);
    volumeOf(vessel, needs);
  } else if (method === 'Holtrop 1982' || method === 'Holtrop 1984') displacementForm(vessel, needs);
  else if (method === 'given resistance') givenResistance(vessel, needs);
}

function givenResistance(vessel: Vessel, needs: Needs): Outcome<ResistanceCurve> | undefined {
  const { hull } = vessel;
  const fact = hullFacts(vessel, needs);
  const rows: SpeedRow[] = [];
  for (const row of hull?.resistance ?? []) {
    if (row.value)
      rows.push({ speed: speedOf(row.value.x), resistance: renamed(row.value.y, 'resistance', 'R') });
  }
  for (const row of hull?.effectivePower ?? []) {
    if (row.value)
      rows.push({
        speed: speedOf(row.value.x),
        effectivePower: renamed(row.value.y, 'effective power', 'PE'),
      });
  }
  const powers = (hull?.shaftPower ?? []).filter(row => row.value);
  if (powers.length > 0) {
    const efficiency = fact(hull?.propulsiveEfficiency, 'propulsive efficiency');
    if (!efficiency) return undefined;
    const propulsiveEfficiency = renamed(efficiency, 'propulsive efficiency', 'ηD');
    for (const row of powers) {
      rows.push({
        speed: speedOf(row.value!.x),
        deliveredPower: renamed(row.value!.y, 'power at the propellers', 'PD'),
        propulsiveEfficiency,
      });
    }
  }
  if (rows.length < 2) {
    const host = hull?.origin ?? vessel.origin;
    return needs.miss({
      what: 'resistance of the hull at two speeds or more',
      host,
      property: hull ? 'resistance' : 'hull',
    });
  }
  return resistanceTable(rows, 'given resistance');
}

function speedOf(speed: Value<'speed'>): Value<'speed'> {
  return renamed(speed, 'vessel speed', 'V');
}

function planingResistance(
  vessel: Vessel,
  fastest: Value<'speed'>,
  needs: Needs,
): Outcome<ResistanceCurve> | undefined {
  const form = planingForm(vessel, needs);
  const volume = volumeOf(vessel, needs);
  if (!form || !volume) return undefined;
  const bare = planingCurve(form, fastest);
  return bare.applies ? withAppendages(bare, vessel, volume) : doesNotApply(bare.reason);
}

/** The bare hull with what hangs below it: as declared, or by the small-craft table for inclined shafts. */
function withAppendages(
  bare: ResistanceCurve,
  vessel: Vessel,
  displaced: Value<'volume'>,
): Outcome<ResistanceCurve> {
  const share = vessel.hull?.appendageResistance?.value;
  const efficiency = (vesselSpeed: Value<'speed'>): Value<'ratio'> =>
    share
      ? appendageEfficiencyFromShare({ share: renamed(share, 'resistance of appendages', 'a') })
      : planingAppendageEfficiency({
          volumeFroudeNumber: volumeFroudeNumber({ vesselSpeed, displacedVolume: displaced }),
        });
  // On bare numbers, for the loops that look for a balance.
  const known = share && efficiency(given('vessel speed', 'V', 'speed', 1)).si;
  const at = (V: number) =>
    known ??
    planingAppendageEfficiency.spec.compute({
      volumeFroudeNumber: volumeFroudeNumber.spec.compute({ vesselSpeed: V, displacedVolume: displaced.si }),
    });
  return {
    applies: true,
    method: bare.method,
    lowest: bare.lowest,
    highest: bare.highest,
    numberAt: V => {
      const force = bare.numberAt(V);
      return force === undefined ? undefined : force / at(V);
    },
    valueAt: vesselSpeed => {
      const bareResistance = bare.valueAt(vesselSpeed);
      return (
        bareResistance &&
        resistanceWithAppendages({ bareResistance, appendageEfficiency: efficiency(vesselSpeed) })
      );
    },
  };
}
