import {
  classShaftFactors,
  classStrengthCapSource,
  classStrengthCaps,
  continuousTorsionalLimit,
  countedTensileStrength,
  given,
  renamed,
  speedShare,
  torqueAtShearStress,
  torsionalSizeFactor,
  transientTorsionalLimit,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import { nameOf } from '../model/part.js';
import type { Shaft } from '../model/shafting.js';
import { type ShaftSize, sizesForward, sizesOf, sizesWithEnds } from './shaft-sections.js';
import { gradeOf, wantedOf } from './shaft-strength.js';

/** A cross-section of a shaft with the feature that weakens it. */
export interface StressSection {
  readonly shaft: Shaft;
  readonly name: string;
  readonly size: ShaftSize;
  /** Section modulus in torsion, m³. */
  readonly modulus: number;
  /** Stress here over stress of the plain shaft, where it is thinnest. */
  readonly stressShare: number;
  readonly featureFactor: Value<'number'>;
  readonly tensileStrength: Value<'pressure'>;
  readonly sizeFactor: Value<'number'>;
}

/** Sections of a shaft that the class limits of vibratory stress are held against. */
export function stressSections(shaft: Shaft, isPropellerShaft: boolean, needs: Needs): StressSection[] {
  const sizes = sizesOf(shaft, needs);
  const grade = gradeOf(shaft, needs);
  const strength = grade && needs.fact(grade.tensileStrength, wantedOf(grade, 'tensile strength'));
  if (!sizes || !strength) return [];
  const cap = isPropellerShaft
    ? classStrengthCaps.propeller
    : classStrengthCaps['carbon or carbon-manganese'];
  const tensileStrength = countedTensileStrength({
    tensileStrength: renamed(strength, 'tensile strength', 'R_m'),
    cap: given('strength counted at most', 'cap', 'pressure', cap, { assumed: classStrengthCapSource.title }),
  });
  const plain = Math.min(...sizes.map(one => modulusOf(one.size)));
  const section = (name: string, at: ShaftSize, feature: string): StressSection => {
    const row = classShaftFactors.find(one => one.feature === feature)!;
    const modulus = modulusOf(at);
    return {
      shaft,
      name,
      size: at,
      modulus,
      stressShare: plain / modulus,
      featureFactor: given('factor of the design feature', 'c_K', 'number', row.cK, {
        assumed: `${row.shaft} shaft, ${row.feature}${row.cKSource.confidence === 'published' ? '' : ` (${row.cKSource.confidence})`}`,
      }),
      tensileStrength,
      sizeFactor: torsionalSizeFactor({ diameter: at.outsideDiameter }),
    };
  };
  const keyed = 'keyway, cylindrical connection';
  const feature = isPropellerShaft ? 'keyed propeller' : keyed;
  const sections = sizes.map(one =>
    section(
      one.section ? `${one.name} of the shaft` : one.name === 'shaft' ? nameOf(shaft) : `the ${one.name}`,
      one.size,
      feature,
    ),
  );
  for (const { size, end } of shaft.taperLargeEnd ? (sizesWithEnds(shaft, needs) ?? []) : [])
    if (end?.fact === shaft.taperLargeEnd)
      sections.push(section(`the large end of the taper of ${nameOf(shaft)}`, size, feature));
  if (shaft.couplingKeyWidth || shaft.couplingEnd) {
    const size = sizesForward(shaft, needs)?.[0]?.size;
    const end = shaft.couplingEnd
      ? needs.fact(shaft.couplingEnd, {
          what: `diameter of the coupling end of ${nameOf(shaft)}`,
          host: shaft.origin,
          property: 'coupling end diameter',
        })
      : size?.outsideDiameter;
    if (end && size) {
      const at = { ...size, outsideDiameter: renamed(end, 'diameter of the coupling end', 'd') };
      sections.push(section(`the coupling end of ${nameOf(shaft)}`, at, keyed));
    }
  }
  return sections;
}

/** The torque that gives a stress of one. */
function modulusOf({ outsideDiameter, bore }: ShaftSize): number {
  return torqueAtShearStress.spec.compute({
    stress: 1,
    outsideDiameter: outsideDiameter.si,
    bore: bore.si,
  });
}

/** Both limits at a speed, as plain numbers: for searching along a speed range. Pa. */
export function limitsAt(section: StressSection, share: number): { continuous: number; transient: number } {
  const { featureFactor, sizeFactor, tensileStrength } = section;
  const continuous = continuousTorsionalLimit.spec.compute({
    tensileStrength: tensileStrength.si,
    featureFactor: featureFactor.si,
    sizeFactor: sizeFactor.si,
    speedShare: share,
  });
  return {
    continuous,
    transient: transientTorsionalLimit.spec.compute({
      continuousLimit: continuous,
      featureFactor: featureFactor.si,
    }),
  };
}

/** The same with all that it was worked out from. */
export function limitValues(
  { featureFactor, sizeFactor, tensileStrength }: StressSection,
  speed: Value<'rotational speed'>,
  ratedSpeed: Value<'rotational speed'>,
): { continuous: Value<'pressure'>; transient: Value<'pressure'> } {
  const continuous = continuousTorsionalLimit({
    tensileStrength,
    featureFactor,
    sizeFactor,
    speedShare: speedShare({ speed, ratedSpeed }),
  });
  return { continuous, transient: transientTorsionalLimit({ continuousLimit: continuous, featureFactor }) };
}
