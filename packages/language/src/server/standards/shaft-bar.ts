import { formatNumber, type ShaftMaterial, shaftMaterial, shaftMaterials } from '@tailshaft/mechanics';
import { stress } from './figures.js';
import { type StandardTable, sizeMarkdown } from './table.js';

const optional = (value: number | undefined) => (value === undefined ? undefined : stress(value));

/** Generic grades of propeller-shaft bar. */
export const SHAFT_BAR: StandardTable<ShaftMaterial> = {
  title: 'generic grade',
  nameOf: row => row.name,
  rows: shaftMaterials,
  columns: [
    { head: 'UNS', cell: row => row.uns },
    { head: 'torsional yield', cell: row => optional(row.torsionalYield) },
    { head: 'tensile yield', cell: row => optional(row.tensileYield) },
    { head: 'tensile strength', cell: row => optional(row.tensileStrength) },
    { head: 'elastic modulus', cell: row => `${formatNumber(row.youngsModulus / 1e9, 4)} GPa` },
    { head: 'density', cell: row => `${formatNumber(row.density, 4)} kg/m3` },
  ],
  sourcesOf: row => [
    { figures: 'strength', source: row.strengthSource },
    { figures: 'modulus and density', source: row.elasticSource },
  ],
  noteOf: row => row.note,
};

/** The generic grade that words name, by its name or its unified number: `S20910`, `UNS S30400 type`. */
export function gradeIn(...said: readonly (string | undefined)[]): ShaftMaterial | undefined {
  for (const words of said) {
    if (!words) continue;
    const number = /\b[A-Z]\d{5}\b/.exec(words)?.[0];
    const found = shaftMaterial(words) ?? (number ? shaftMaterial(number) : undefined);
    if (found) return found;
  }
  return undefined;
}

/** A generic grade among those of its family, so that weaker and stronger ones are seen. */
export function gradeMarkdown(row: ShaftMaterial): string {
  const family = shaftMaterials
    .filter(one => one.family === row.family)
    .sort((a, b) => strength(a) - strength(b));
  return sizeMarkdown({ ...SHAFT_BAR, rows: family }, row, family.length);
}

function strength({ torsionalYield, tensileYield }: ShaftMaterial): number {
  return torsionalYield ?? (tensileYield ?? 0) / Math.sqrt(3);
}
