import type { Source } from '../core/source.js';
import { poundPerCubicInch, psi } from './printed-units.js';

/** Which rule gives torsional yield when only the tensile yield is known. */
export type ShaftMaterialFamily = 'steel' | 'nickel alloy' | 'copper alloy';

/** Bar for propeller shafts by generic grade. Stresses in Pa, density in kg/m³. What is not printed is absent. */
export interface ShaftMaterial {
  readonly name: string;
  /** Unified numbering, where the grade has one. */
  readonly uns?: string;
  readonly family: ShaftMaterialFamily;
  readonly torsionalYield?: number;
  readonly tensileYield?: number;
  readonly tensileStrength?: number;
  readonly strengthSource: Source;
  readonly youngsModulus: number;
  readonly density: number;
  readonly elasticSource: Source;
  /** For the shear modulus, which no source tabulates. From memory. */
  readonly poissonRatio: number;
  readonly note?: string;
}

/** Two small-craft formula pages print it; they share one ancestor handbook, so they count as one source. */
const BAR_TABLE: Source = {
  title: 'boat shaft bar properties, handbook table',
  clause: 'two copies',
  confidence: 'published',
};
const BAR_TABLE_ONE_COPY: Source = { ...BAR_TABLE, clause: 'one copy' };
const CLASS_TABLE: Source = {
  title: 'Guidance for high speed and light craft (Korean class form)',
  clause: 'table of shaft materials: yield and tensile strength',
  confidence: 'published',
};
const ELASTIC_MEMORY: Source = { title: 'textbook elastic constants', confidence: 'from memory' };

export const shaftMaterials: readonly ShaftMaterial[] = [
  {
    name: 'austenitic stainless 304',
    uns: 'S30400',
    family: 'steel',
    torsionalYield: psi(20_000),
    strengthSource: BAR_TABLE,
    youngsModulus: psi(28e6),
    density: poundPerCubicInch(0.286),
    elasticSource: BAR_TABLE,
    poissonRatio: 0.3,
    note: 'one copy prints density 0.206 lb/in³, a misprint',
  },
  {
    name: 'austenitic stainless 316',
    uns: 'S31600',
    family: 'steel',
    tensileYield: 175e6,
    tensileStrength: 470e6,
    strengthSource: CLASS_TABLE,
    youngsModulus: 193e9,
    density: 8000,
    elasticSource: ELASTIC_MEMORY,
    poissonRatio: 0.3,
  },
  {
    name: 'martensitic stainless 431',
    uns: 'S43100',
    family: 'steel',
    tensileYield: 675e6,
    tensileStrength: 850e6,
    strengthSource: CLASS_TABLE,
    youngsModulus: 200e9,
    density: 7750,
    elasticSource: ELASTIC_MEMORY,
    poissonRatio: 0.3,
  },
  {
    name: 'carbon steel',
    family: 'steel',
    tensileYield: 200e6,
    tensileStrength: 400e6,
    strengthSource: CLASS_TABLE,
    youngsModulus: 206e9,
    density: 7850,
    elasticSource: ELASTIC_MEMORY,
    poissonRatio: 0.3,
  },
  {
    name: 'high-strength austenitic 22Cr-13Ni-5Mn',
    uns: 'S20910',
    family: 'steel',
    torsionalYield: psi(70_000),
    strengthSource: BAR_TABLE,
    youngsModulus: psi(28e6),
    density: poundPerCubicInch(0.285),
    elasticSource: BAR_TABLE,
    poissonRatio: 0.3,
    note: 'small bar only: strength falls as the bar gets thicker, ask for the mill certificate',
  },
  {
    name: 'nitrogen-bearing austenitic 18Cr-Mn',
    uns: 'S24100',
    family: 'steel',
    torsionalYield: psi(60_000),
    strengthSource: BAR_TABLE,
    youngsModulus: psi(28.8e6),
    density: poundPerCubicInch(0.281),
    elasticSource: BAR_TABLE,
    poissonRatio: 0.3,
  },
  {
    name: 'precipitation-hardening stainless 17Cr-4Ni',
    uns: 'S17400',
    family: 'steel',
    torsionalYield: psi(70_000),
    strengthSource: BAR_TABLE,
    youngsModulus: psi(28.5e6),
    density: poundPerCubicInch(0.284),
    elasticSource: BAR_TABLE,
    poissonRatio: 0.3,
  },
  {
    name: 'nickel-copper 400',
    uns: 'N04400',
    family: 'nickel alloy',
    torsionalYield: psi(40_000),
    strengthSource: BAR_TABLE_ONE_COPY,
    youngsModulus: psi(26e6),
    density: poundPerCubicInch(0.319),
    elasticSource: BAR_TABLE_ONE_COPY,
    poissonRatio: 0.32,
  },
  {
    name: 'age-hardened nickel-copper 500',
    uns: 'N05500',
    family: 'nickel alloy',
    torsionalYield: psi(67_000),
    strengthSource: BAR_TABLE_ONE_COPY,
    youngsModulus: psi(26e6),
    density: poundPerCubicInch(0.306),
    elasticSource: BAR_TABLE_ONE_COPY,
    poissonRatio: 0.32,
  },
  {
    name: 'naval brass',
    uns: 'C46400',
    family: 'copper alloy',
    torsionalYield: psi(20_000),
    strengthSource: BAR_TABLE_ONE_COPY,
    youngsModulus: psi(16e6),
    density: poundPerCubicInch(0.304),
    elasticSource: BAR_TABLE_ONE_COPY,
    poissonRatio: 0.34,
    note: 'the shaft bronze of the published diameter and spacing examples',
  },
];

/** The material of a grade name or unified number; `stainless` alone names none, its strengths range over 3:1. */
export function shaftMaterial(name: string): ShaftMaterial | undefined {
  const key = plain(name);
  return shaftMaterials.find(row => plain(row.name) === key || (row.uns && plain(row.uns) === key));
}

const plain = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .replace(/^uns /, '')
    .trim();
