import {
  classPlantFactors,
  classPowerPerSpeed,
  classShaftDiameter,
  classShaftFactors,
  classStrengthCapSource,
  classStrengthCaps,
  countedTensileStrength,
  given,
  leastOf,
  powerPerSpeed,
  renamed,
  smallCraftPowerPerSpeed,
  smallCraftSafetyFactor,
  smallCraftShaftDiameter,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import { nameOf } from '../model/part.js';
import type { Shaft, ShaftMaterial } from '../model/shafting.js';
import type { LineAnalysis } from './line.js';
import type { Load } from './loads.js';
import type { AppliedCriterion, ClassFactors } from './shaft-criteria.js';
import { type ShaftSize, type SizedSection, sizesWithEnds } from './shaft-sections.js';

export type { ShaftSize } from './shaft-sections.js';

/** What one criterion says of one shaft. */
export interface ShaftStrength {
  readonly criterion: AppliedCriterion;
  /** Which of its diameters this is of: the one that takes least. */
  readonly weakest: SizedSection;
  /** How many diameters were judged. */
  readonly judged: number;
  /** Power per speed that the fitted shaft takes, and what it gets. */
  readonly capacity: Value<'power per speed'>;
  readonly demand: Value<'power per speed'>;
  /** Least diameter of a solid shaft of this grade. */
  readonly needed: Value<'length'>;
  /** Torsional yield over torsional stress of the fitted shaft, where the criterion counts so. */
  readonly fittedFactor: Value<'number'> | undefined;
}

/** Full rated power as it enters a shaft. */
export function ratedShaftLoad(analysis: LineAnalysis, shaft: Shaft, needs: Needs): Load | undefined {
  const rated = needs.take(analysis.rated);
  if (!rated) return undefined;
  const loads = analysis.loads(rated);
  const load = loads.entering.get(shaft);
  if (!load) return needs.take({ value: undefined, missing: loads.missing });
  needs.found(powerPerSpeed({ power: load.power, speed: load.speed }));
  return {
    speed: renamed(load.speed, 'shaft speed', 'ω'),
    torque: renamed(load.torque, 'shaft torque', 'T'),
    power: renamed(load.power, 'power at the shaft', 'P'),
  };
}

/** Judges every diameter of a shaft under a load by one criterion, and tells of the weakest. */
export function shaftStrength(
  shaft: Shaft,
  load: Load,
  criterion: AppliedCriterion,
  isPropellerShaft: boolean,
  needs: Needs,
): ShaftStrength | undefined {
  const sizes = sizesWithEnds(shaft, needs);
  const grade = gradeOf(shaft, needs);
  const weakestOf = (judge: (one: SizedSection) => OneStrength): ShaftStrength => {
    const all = sizes!.map(one => ({ ...judge(one), criterion, weakest: one, judged: sizes!.length }));
    const weakest = all.reduce((weak, one) => (one.capacity.si < weak.capacity.si ? one : weak));
    return { ...weakest, capacity: leastOf(all.map(one => one.capacity))! };
  };
  if (criterion.formula === 'class') {
    const strength = grade && needs.fact(grade.tensileStrength, wantedOf(grade, 'tensile strength'));
    if (!sizes || !strength) return undefined;
    return weakestOf(({ size, end }) =>
      // The coupling end is no part of the propeller shaft by class: a keyway in a cylinder.
      classStrength(
        size,
        load,
        strength,
        isPropellerShaft && end?.property !== 'coupling end diameter',
        criterion,
      ),
    );
  }
  const torsionalYield = grade && needs.fact(grade.torsionalYield, wantedOf(grade, 'torsional yield'));
  if (!torsionalYield) return undefined;
  const St = renamed(torsionalYield, 'torsional yield', 'S_t');
  const safetyFactor = renamed(criterion.factor, 'safety factor', 'SF');
  const { power, speed } = load;
  if (!sizes) {
    needs.found(smallCraftShaftDiameter({ power, speed, torsionalYield: St, safetyFactor }));
    return undefined;
  }
  return weakestOf(({ size }) => ({
    capacity: smallCraftPowerPerSpeed({ ...size, torsionalYield: St, safetyFactor }),
    demand: demandOf(load),
    needed: smallCraftShaftDiameter({
      power: load.power,
      speed: load.speed,
      torsionalYield: St,
      safetyFactor,
    }),
    fittedFactor: smallCraftSafetyFactor({
      ...size,
      torsionalYield: St,
      power: load.power,
      speed: load.speed,
    }),
  }));
}

type OneStrength = Omit<ShaftStrength, 'criterion' | 'weakest' | 'judged'>;

/** The catalogue grade that the shaft names by more than hearsay. */
export function gradeOf(shaft: Shaft, needs: Needs): ShaftMaterial | undefined {
  const name = needs.fact(shaft.material, {
    what: `material of ${nameOf(shaft)}`,
    host: shaft.origin,
    property: 'material',
  });
  if (name === undefined) return undefined;
  if (shaft.grade) return shaft.grade;
  const what = `properties of shaft material ${name}: no entry of that name is declared or imported`;
  return needs.miss({ what, host: shaft.origin, property: 'material' }, shaft.material?.origin);
}

/** Where a property of a grade is to be written. */
export function wantedOf(grade: ShaftMaterial, property: string) {
  return { what: `${property} of ${grade.name}`, host: grade.origin, property };
}

function demandOf({ power, speed }: Load): Value<'power per speed'> {
  return renamed(powerPerSpeed({ power, speed }), 'power per speed at the shaft');
}

function classStrength(
  { outsideDiameter, bore }: ShaftSize,
  load: Load,
  strength: Value<'pressure'>,
  isPropellerShaft: boolean,
  chosen: ClassFactors,
): OneStrength {
  const cap = isPropellerShaft
    ? classStrengthCaps.propeller
    : classStrengthCaps['carbon or carbon-manganese'];
  const tensileStrength = countedTensileStrength({
    tensileStrength: renamed(strength, 'tensile strength', 'R_m'),
    cap: given('strength counted at most', 'cap', 'pressure', cap, { assumed: classStrengthCapSource.title }),
  });
  const feature = classShaftFactors.find(one =>
    isPropellerShaft ? one.feature === 'keyed propeller' : one.feature === 'keyway, cylindrical connection',
  )!;
  const plant = classPlantFactors.find(one => one.F === 100)!;
  const inputs = {
    tensileStrength,
    plantFactor:
      chosen.plantFactor ??
      given('plant factor', 'F', 'number', plant.F, {
        assumed: plant.plant,
        replaceWith: 'class plant factor at least',
      }),
    featureFactor:
      (isPropellerShaft ? chosen.shaftFactor : undefined) ??
      given('factor of the design feature', 'k', 'number', feature.k, {
        assumed: `${feature.shaft} shaft, ${feature.feature}${feature.kSource.confidence === 'from memory' ? ' (from memory)' : ''}`,
        ...(isPropellerShaft ? { replaceWith: 'class shaft factor at least' } : {}),
      }),
    boreRatio: given('bore ratio', 'd_i/d_o', 'ratio', bore.si / outsideDiameter.si, {
      assumed: 'bore over outside diameter',
    }),
  };
  return {
    capacity: classPowerPerSpeed({ ...inputs, outsideDiameter }),
    demand: demandOf(load),
    needed: classShaftDiameter({ ...inputs, power: load.power, speed: load.speed }),
    fittedFactor: undefined,
  };
}
