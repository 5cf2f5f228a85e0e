import {
  asmeAllowedShear,
  asmeCombinedShear,
  bendingAndThrustStress,
  columnFactorLong,
  columnFactorShort,
  equivalentStress,
  fatigueSafetyFactor,
  given,
  renamed,
  SHORT_COLUMN,
  shaftSlenderness,
  torsionalShearStress,
  type Value,
  yieldFactor,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import { isSaid } from '../model/reads.js';
import type { Propeller, Shaft } from '../model/shafting.js';
import type { ShaftLine } from '../model/vessel.js';
import { bowingSize, type ShaftStation, shaftStations } from './shaft-stations.js';
import { gradeOf, wantedOf } from './shaft-strength.js';
import { hasSupports, spansOf } from './shaft-supports.js';

/** What one station bears, by each criterion that can be worked out. */
export interface StationStress {
  readonly station: ShaftStation;
  readonly allowed: Value<'pressure'>;
  readonly stress: Value<'pressure'>;
  readonly yieldFactor: Value<'number'>;
  /** Where the grade has an endurance limit. */
  readonly fatigueFactor: Value<'number'> | undefined;
}

export interface ShaftLoad {
  readonly torque: Value<'torque'>;
  readonly thrust: Value<'force'>;
}

/** Shock factors of the ASME code for a turning shaft under steady or gradual load. */
const BENDING_FACTOR = given('shock factor of bending', 'C_m', 'number', 1.5, {
  assumed: '1.5: turning shaft, steady or gradual load (ASME code)',
});
const TORSION_FACTOR = given('shock factor of torsion', 'C_t', 'number', 1, {
  assumed: '1.0: turning shaft, steady or gradual load (ASME code)',
});

/** What the ASME code allows where a keyway is cut, as a share of the plain shaft. */
export const KEYWAY_FACTOR = 0.75;

/** The propeller shaft under torque, thrust and the weight of its overhung propeller, station by station. */
export function combinedStress(
  line: ShaftLine,
  shaft: Shaft,
  propeller: Propeller,
  load: ShaftLoad | undefined,
  wantsFatigue: boolean,
  needs: Needs,
): StationStress[] | undefined {
  const stations = shaftStations(shaft, propeller, needs);
  const grade = gradeOf(shaft, needs);
  const tensileYield = grade && needs.fact(grade.tensileYield, wantedOf(grade, 'tensile yield'));
  const strength = grade && needs.fact(grade.tensileStrength, wantedOf(grade, 'tensile strength'));
  const endurance =
    grade && (wantsFatigue || isSaid(() => grade.enduranceLimit))
      ? needs.fact(grade.enduranceLimit, wantedOf(grade, 'endurance limit'))
      : undefined;
  const columnFactor = tensileYield && columnFactorOf(line, shaft, tensileYield, needs);
  const allowed = (keyway: boolean) => tensileYield && strength && allowedBy(tensileYield, strength, keyway);
  if (!stations || !tensileYield || !columnFactor || !load) {
    for (const keyway of [true, false]) needs.found(allowed(keyway));
    return undefined;
  }
  const bar: Bar = {
    tensileYield: renamed(tensileYield, 'tensile yield', 'S_y'),
    endurance: endurance && renamed(endurance, 'endurance limit', 'S_e'),
    columnFactor,
  };
  const borne = stations.map(station => ({ ...borneAt(station, load, bar), station }));
  const judged = borne.flatMap(one => {
    const limit = allowed(one.station.keyway);
    return limit ? [{ ...one, allowed: limit }] : [];
  });
  if (judged.length > 0) return judged;
  for (const { stress, yieldFactor: factor } of borne) needs.found([stress, factor]);
  return undefined;
}

function allowedBy(
  tensileYield: Value<'pressure'>,
  strength: Value<'pressure'>,
  keyway: boolean,
): Value<'pressure'> {
  return asmeAllowedShear({
    tensileYield: renamed(tensileYield, 'tensile yield', 'S_y'),
    tensileStrength: renamed(strength, 'tensile strength', 'S_u'),
    keywayFactor: given('keyway factor', 'k_w', 'number', keyway ? KEYWAY_FACTOR : 1, {
      assumed: keyway ? 'a keyway is cut there' : 'no keyway there',
    }),
  });
}

interface Bar {
  readonly tensileYield: Value<'pressure'>;
  readonly endurance: Value<'pressure'> | undefined;
  readonly columnFactor: Value<'number'>;
}

function borneAt(
  station: ShaftStation,
  { torque, thrust }: ShaftLoad,
  bar: Bar,
): Omit<StationStress, 'station' | 'allowed'> {
  const { size, moment } = station;
  const { tensileYield, endurance, columnFactor } = bar;
  const none = (label: string, symbol: string, why: string) =>
    given(label, symbol, 'torque', 0, { assumed: why });
  return {
    stress: asmeCombinedShear({
      ...size,
      bendingMoment: moment,
      torque,
      thrust,
      bendingFactor: BENDING_FACTOR,
      torsionFactor: TORSION_FACTOR,
      columnFactor,
    }),
    yieldFactor: yieldFactor({
      tensileYield,
      equivalentStress: equivalentStress({
        normalStress: bendingAndThrustStress({ ...size, bendingMoment: moment, thrust }),
        shearStress: torsionalShearStress({ ...size, torque }),
      }),
    }),
    fatigueFactor:
      endurance &&
      fatigueSafetyFactor({
        ...size,
        meanBending: none('mean bending moment', 'M_m', 'the weight bends a turning shaft to and fro'),
        alternatingBending: renamed(moment, 'alternating bending moment', 'M_a'),
        meanTorque: renamed(torque, 'mean torque', 'T_m'),
        alternatingTorque: none('alternating torque', 'T_a', 'torsional vibration is judged by itself'),
        tensileYield,
        enduranceLimit: endurance,
      }),
  };
}

/** How much the thrust counts more because the shaft may bow between its bearings. */
function columnFactorOf(
  line: ShaftLine,
  shaft: Shaft,
  tensileYield: Value<'pressure'>,
  needs: Needs,
): Value<'number'> | undefined {
  const size = bowingSize(shaft, needs);
  if (!size) return undefined;
  const spans = hasSupports(shaft) ? spansOf(shaft, line.shafts[line.shafts.indexOf(shaft) - 1], needs) : [];
  const [first, ...rest] = spans.map(one => one.length);
  if (!first) {
    return needs.miss({
      what: 'bearings of the shaft, or its greatest bearing span',
      host: shaft.origin,
      property: 'bearing span',
    });
  }
  const span = rest.reduce((longest, one) => (one.si > longest.si ? one : longest), first);
  const slenderness = shaftSlenderness({ ...size, span: renamed(span, 'greatest bearing span', 'L') });
  if (slenderness.si <= SHORT_COLUMN) return columnFactorShort({ slenderness });
  const { grade } = shaft;
  const youngsModulus = grade && needs.fact(grade.youngsModulus, wantedOf(grade, 'elastic modulus'));
  return (
    youngsModulus &&
    columnFactorLong({
      slenderness,
      compressiveYield: renamed(tensileYield, 'tensile yield', 'S_y'),
      youngsModulus: renamed(youngsModulus, 'elastic modulus', 'E'),
    })
  );
}
