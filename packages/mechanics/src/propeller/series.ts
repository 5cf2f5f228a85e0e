import type { RangeResult, Value } from '../core/value.js';
import { developedAreaRatio, expandedAreaRatio } from './areas.js';
import {
  B_SERIES_LIMITS,
  B_SERIES_TESTED_AREA,
  bSeriesThrust,
  bSeriesThrustCoefficient,
  bSeriesTorque,
  bSeriesTorqueCoefficient,
} from './b-series.js';
import { GAWN_LIMITS, gawnThrust, gawnThrustCoefficient, gawnTorque, gawnTorqueCoefficient } from './gawn.js';
import {
  GAWN_BURRILL_LIMITS,
  gawnBurrillThrust,
  gawnBurrillThrustCoefficient,
  gawnBurrillTorque,
  gawnBurrillTorqueCoefficient,
} from './gawn-burrill.js';
import type { PropellerGeometry } from './geometry.js';
import {
  KA_LIMITS,
  kaCautions,
  kaNozzleThrust,
  kaNozzleThrustCoefficient,
  kaThrust,
  kaThrustCoefficient,
  kaTorque,
  kaTorqueCoefficient,
} from './ka-series.js';
import type { Polynomial } from './polynomial.js';

export type SeriesName = 'Wageningen B' | 'Gawn' | 'Gawn-Burrill' | 'Ka';

/** What a series needs to know of a blade, as numbers; the area ratio is the kind that this series uses. */
export interface BladeNumbers {
  readonly pitchRatio: number;
  readonly areaRatio: number;
  readonly blades: number;
}

interface BladeValues {
  readonly advanceRatio: Value<'ratio'>;
  readonly pitchRatio: Value<'ratio'>;
  readonly areaRatio: Value<'ratio'>;
  readonly blades: Value<'number'>;
}

/** A tested family of propellers, reduced to what the common computations ask of it. */
export interface PropellerSeries {
  readonly name: SeriesName;
  /** Which propellers it stands for, in words a person can compare with the part in hand. */
  readonly standsFor: string;
  readonly area: 'expanded' | 'developed';
  readonly lowestAdvanceRatio: number;
  readonly pitchRatios: readonly [number, number];
  readonly areaRatios: readonly [number, number];
  /** Limits of the series; outside them there is no curve. */
  readonly limits: (blade: BladeNumbers) => RangeResult[];
  /** Conditions that only weaken the result. */
  readonly cautions: (blade: BladeNumbers) => RangeResult[];
  /** The same, where they also depend on how the propeller advances. */
  readonly cautionsAt?: (blade: BladeNumbers, advanceRatio: number) => RangeResult[];
  readonly thrust: (blade: BladeNumbers) => Polynomial;
  readonly torque: (blade: BladeNumbers) => Polynomial;
  readonly thrustCoefficient: (values: BladeValues) => Value<'ratio'>;
  readonly torqueCoefficient: (values: BladeValues) => Value<'ratio'>;
  /** Of a propeller in a nozzle: the part of the thrust that the nozzle hands to the hull, and not to the shaft. */
  readonly nozzle?: {
    readonly thrust: (blade: BladeNumbers) => Polynomial;
    readonly thrustCoefficient: (values: BladeValues) => Value<'ratio'>;
  };
  /** What every result by this series has to say of its figures. */
  readonly remark?: string;
}

interface Rule {
  readonly condition: string;
  readonly met: (blade: BladeNumbers) => boolean;
}

const judge = (rules: readonly Rule[], blade: BladeNumbers): RangeResult[] =>
  rules.map(rule => ({ condition: rule.condition, met: rule.met(blade) }));

const asDeveloped = ({ areaRatio, ...rest }: BladeNumbers) => ({ ...rest, developedAreaRatio: areaRatio });

export const SERIES: Readonly<Record<SeriesName, PropellerSeries>> = {
  'Wageningen B': {
    name: 'Wageningen B',
    standsFor: 'aerofoil sections near the hub, 2 to 7 blades: common workboat and auxiliary propellers',
    area: 'expanded',
    lowestAdvanceRatio: 0,
    pitchRatios: [0.5, 1.4],
    areaRatios: [0.3, 1.05],
    limits: blade => judge(B_SERIES_LIMITS, blade),
    cautions: blade => judge([B_SERIES_TESTED_AREA], blade),
    thrust: bSeriesThrust,
    torque: bSeriesTorque,
    thrustCoefficient: values => bSeriesThrustCoefficient(values),
    torqueCoefficient: values => bSeriesTorqueCoefficient(values),
  },
  Gawn: {
    name: 'Gawn',
    standsFor: 'flat-face segmental sections, wide tips, 3 blades: common small-craft propellers',
    area: 'expanded',
    lowestAdvanceRatio: 0.3,
    pitchRatios: [0.8, 1.4],
    areaRatios: [0.5, 1.1],
    limits: blade => judge(GAWN_LIMITS, blade),
    cautions: ({ pitchRatio }) => [
      {
        condition: 'pitch ratio at most 1.3, above which the Gawn-Burrill fit is to be preferred',
        met: pitchRatio <= 1.3,
      },
    ],
    cautionsAt: ({ pitchRatio }, j) => [
      {
        condition: 'advance ratio at least 0.5, below which the Gawn-Burrill fit is to be preferred',
        met: j >= 0.5,
      },
      {
        condition:
          'advance ratio at most 0.7 at pitch ratios near 0.8, above which this fit gives too much thrust',
        met: j <= 0.7 || pitchRatio > 0.85,
      },
    ],
    thrust: gawnThrust,
    torque: gawnTorque,
    thrustCoefficient: values => gawnThrustCoefficient(values),
    torqueCoefficient: values => gawnTorqueCoefficient(values),
  },
  'Gawn-Burrill': {
    name: 'Gawn-Burrill',
    standsFor: 'flat-face segmental sections, 3 blades, tested up to high pitch: fast small craft',
    area: 'developed',
    lowestAdvanceRatio: 0.3,
    pitchRatios: [0.8, 1.8],
    areaRatios: [0.5, 1.1],
    limits: blade =>
      GAWN_BURRILL_LIMITS.map(rule => ({ condition: rule.condition, met: rule.met(asDeveloped(blade)) })),
    cautions: () => [],
    thrust: blade => gawnBurrillThrust(asDeveloped(blade)),
    torque: blade => gawnBurrillTorque(asDeveloped(blade)),
    thrustCoefficient: ({ areaRatio, ...rest }) =>
      gawnBurrillThrustCoefficient({ ...rest, developedAreaRatio: areaRatio }),
    torqueCoefficient: ({ areaRatio, ...rest }) =>
      gawnBurrillTorqueCoefficient({ ...rest, developedAreaRatio: areaRatio }),
  },
  Ka: {
    name: 'Ka',
    standsFor: 'wide-tipped blades in nozzle 19A, 3 to 5 blades: tugs, trawlers and pushers',
    area: 'expanded',
    lowestAdvanceRatio: 0,
    pitchRatios: [0.6, 1.4],
    areaRatios: [0.6, 0.8],
    limits: blade => judge(KA_LIMITS, blade),
    cautions: kaCautions,
    thrust: kaThrust,
    torque: kaTorque,
    thrustCoefficient: values => kaThrustCoefficient(values),
    torqueCoefficient: values => kaTorqueCoefficient(values),
    nozzle: { thrust: kaNozzleThrust, thrustCoefficient: values => kaNozzleThrustCoefficient(values) },
    remark: 'The Ka polynomials are those of digital copies; the printed tables were not at hand',
  },
};

/**
 * The declared area ratio as the kind that the series counts. Between the two kinds only the flat-face relation is
 * published; for B-series sections the two are taken as equal, as blade loading criteria do.
 */
export function areaForSeries(series: PropellerSeries, geometry: PropellerGeometry): Value<'ratio'> {
  const declared = geometry.areaIs ?? 'expanded';
  const { areaRatio, blades } = geometry;
  if (declared === series.area) return areaRatio;
  if (series.name === 'Wageningen B' || series.name === 'Ka')
    return { ...areaRatio, assumed: 'developed area taken as the expanded area' };
  return series.area === 'developed'
    ? developedAreaRatio({ expandedAreaRatio: areaRatio, blades })
    : expandedAreaRatio({ developedAreaRatio: areaRatio, blades });
}
