import type { Source } from '../core/source.js';

/** Design feature of a shaft in IACS UR M68, with its two factors. */
export interface ClassShaftFactor {
  readonly shaft: 'intermediate' | 'thrust' | 'propeller';
  readonly feature: string;
  /** Diameter factor k. */
  readonly k: number;
  readonly kSource: Source;
  /** Torsional-vibration factor c_K. */
  readonly cK: number;
  readonly cKSource: Source;
}

const M68 = { title: 'IACS UR M68', clause: 'table of k and c_K' };
const MEMORY: Source = { ...M68, confidence: 'from memory' };
const NAVAL_RULES: Source = {
  ...M68,
  clause: 'c_K, same figure in naval ship rules',
  confidence: 'published',
};
const THESIS: Source = {
  ...M68,
  clause: 'c_K, same figure in a thesis calculation',
  confidence: 'published',
};
const EXAMPLES: Source = { ...M68, clause: 'k, used in two worked examples', confidence: 'published' };
const ONE_EXAMPLE: Source = { ...M68, clause: 'k, used in one worked example', confidence: 'published' };

export const classShaftFactors: readonly ClassShaftFactor[] = [
  row('intermediate', 'integral coupling flange or straight section', 1.0, MEMORY, 1.0, NAVAL_RULES),
  row('intermediate', 'shrink-fit coupling', 1.0, MEMORY, 1.0, NAVAL_RULES),
  row('intermediate', 'keyway, tapered connection', 1.1, MEMORY, 0.6, NAVAL_RULES),
  row('intermediate', 'keyway, cylindrical connection', 1.1, MEMORY, 0.45, MEMORY),
  row('intermediate', 'radial hole, at most 0.3 d', 1.1, MEMORY, 0.5, MEMORY),
  row('intermediate', 'longitudinal slot', 1.2, MEMORY, 0.3, MEMORY),
  row('thrust', 'both sides of the thrust collar', 1.1, MEMORY, 0.85, MEMORY),
  row('thrust', 'in way of an axial roller bearing', 1.1, MEMORY, 0.85, MEMORY),
  row('propeller', 'flange-mounted or keyless taper propeller', 1.22, ONE_EXAMPLE, 0.55, THESIS),
  row('propeller', 'keyed propeller', 1.26, EXAMPLES, 0.55, THESIS),
  row('propeller', 'forward of the aft bearing, to the forward stern-tube seal', 1.15, MEMORY, 0.8, MEMORY),
];

/** Factor F by kind of plant. */
export const classPlantFactors = [
  {
    plant: 'turbine, electric motor or slip coupling; intermediate and thrust shafts',
    F: 95,
    source: { ...M68, clause: 'F, used in one worked example', confidence: 'published' },
  },
  {
    plant: 'any other diesel plant; every propeller shaft',
    F: 100,
    source: { ...M68, clause: 'F, used in two worked examples', confidence: 'published' },
  },
] as const satisfies readonly { plant: string; F: number; source: Source }[];

/** Most tensile strength the formula may take credit for, Pa: stronger steel gains nothing. */
export const classStrengthCaps = {
  propeller: 600e6,
  'carbon or carbon-manganese': 760e6,
  alloy: 800e6,
} as const;

export const classStrengthCapSource: Source = {
  title: 'IACS UR M68, same caps in class rules of 2008',
  clause: 'tensile strength in the material factor',
  confidence: 'published',
};

/** What the requirement says it is not for. */
export const classShaftExclusions: readonly string[] = [
  'additional strengthening for ice',
  'gear shafts',
  'motor, generator and turbine rotor shafts',
  'crankshafts',
  'unprotected shafts in sea water',
];

function row(
  shaft: ClassShaftFactor['shaft'],
  feature: string,
  k: number,
  kSource: Source,
  cK: number,
  cKSource: Source,
): ClassShaftFactor {
  return { shaft, feature, k, kSource, cK, cKSource };
}
