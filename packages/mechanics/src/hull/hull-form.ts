import type { Dimension } from '../core/dimension.js';
import type { Source } from '../core/source.js';
import { given, type Value } from '../core/value.js';

/** What the statistical displacement method needs to know of a hull, and the kind of each. */
export const HULL_FORM = {
  waterlineLength: 'length',
  beam: 'length',
  draughtForward: 'length',
  draughtAft: 'length',
  displacedVolume: 'volume',
  /** Centre of buoyancy forward of half the waterline length, percent of that length; aft is negative. */
  buoyancyForward: 'number',
  midshipCoefficient: 'ratio',
  waterplaneCoefficient: 'ratio',
  bulbArea: 'area',
  bulbHeight: 'length',
  transomArea: 'area',
  appendageArea: 'area',
  appendageFactor: 'ratio',
  /** -10 V-shaped, 0 normal, +10 U-shaped with Hogner stern. */
  sternShape: 'number',
  /** Bare wetted area; zero asks for the method's own estimate. */
  wettedArea: 'area',
  /** Half angle of entrance in rad; zero asks for the method's own estimate. */
  entranceAngle: 'angle',
  density: 'density',
  viscosity: 'kinematic viscosity',
} as const satisfies Record<string, Dimension>;

/** The same hull as bare SI numbers. */
export type HullNumbers = { readonly [K in keyof typeof HULL_FORM]: number };
export type HullForm = { readonly [K in keyof typeof HULL_FORM]: Value<(typeof HULL_FORM)[K]> };

type Needed =
  | 'waterlineLength'
  | 'beam'
  | 'draughtForward'
  | 'draughtAft'
  | 'displacedVolume'
  | 'buoyancyForward'
  | 'midshipCoefficient'
  | 'waterplaneCoefficient';

const ASSUMED: readonly [
  key: Exclude<keyof HullForm, Needed>,
  label: string,
  symbol: string,
  si: number,
  assumed: string,
  replaceWith?: string,
][] = [
  ['bulbArea', 'bulb area', 'ABT', 0, 'no bulbous bow'],
  ['bulbHeight', 'height of the bulb', 'hB', 0, 'no bulbous bow'],
  ['transomArea', 'immersed transom area', 'AT', 0, 'no immersed transom', 'transom area'],
  ['appendageArea', 'wetted area of appendages', 'SAPP', 0, 'no appendages counted', 'appendage area'],
  [
    'appendageFactor',
    'appendage factor',
    '1 + k2',
    1.5,
    'rudder behind a stern, 1.3 to 1.5 (from memory)',
    'appendage factor',
  ],
  ['sternShape', 'stern shape', 'Cstern', 0, 'normal sections aft'],
  ['wettedArea', 'bare wetted area', 'S', 0, "the method's own estimate", 'wetted surface'],
  ['entranceAngle', 'half angle of entrance', 'iE', 0, "the method's own estimate"],
  ['density', 'water density', 'ρ', 1025, 'sea water at 15 °C, 1025 kg/m³', 'water density'],
  ['viscosity', 'kinematic viscosity of water', 'ν', 1.18831e-6, 'sea water at 15 °C, 1.18831e-6 m²/s'],
];

/** A complete hull form from what is known; what is not is assumed, and says so. */
export function hullForm(known: Pick<HullForm, Needed> & Partial<HullForm>): HullForm {
  const all: Record<string, Value> = { ...known };
  for (const [key, label, symbol, si, assumed, replaceWith] of ASSUMED)
    all[key] ??= given(label, symbol, HULL_FORM[key], si, {
      assumed,
      ...(replaceWith ? { replaceWith } : {}),
    });
  return all as unknown as HullForm;
}

export const APPENDAGE_FACTORS_SOURCE: Source = {
  author: 'Holtrop and Mennen',
  title: 'An approximate power prediction method, International Shipbuilding Progress 29',
  clause: 'appendage factors 1 + k2',
  year: 1982,
  confidence: 'from memory',
};
