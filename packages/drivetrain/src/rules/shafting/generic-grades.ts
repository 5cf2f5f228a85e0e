import { findUnit, fromSI, type ShaftMaterial, type Source, shaftMaterials } from '@tailshaft/mechanics';
import type { LineContext } from '../../judge/context.js';
import type { Route } from '../../judge/route.js';
import type { Shaft } from '../../model/shafting.js';
import { editOf } from './shaft-routes.js';

/** Ways to declare a generic grade of the handbook tables as an entry of the spec, and to name it at the shaft. */
export function genericGrades({ catalogue, line }: LineContext, shaft: Shaft, written: string): Route[] {
  const taken = new Set(catalogue.materials.map(one => one.name));
  return gradesLike(written)
    .map(grade => ({ grade, name: entryName(grade) }))
    .filter(({ name }) => !taken.has(name))
    .map(({ grade, name }) => ({
      title: `Declare ${grade.name} as an entry, ${strengthOf(grade)}, and write it here, if certificate or analysis says so`,
      edits: [
        { do: 'declare' as const, before: line.origin, text: entryOf(grade, name) },
        editOf(shaft, 'material', shaft.material?.origin, name),
      ],
    }));
}

/** Grades whose name, number or family shares a word with what stands in the text; all of them when none does. */
function gradesLike(written: string): readonly ShaftMaterial[] {
  const words = wordsOf(written);
  const like = shaftMaterials.filter(grade =>
    wordsOf(`${grade.name} ${grade.uns ?? ''} ${FAMILY_WORDS[grade.family]}`).some(word =>
      words.includes(word),
    ),
  );
  return like.length > 0 ? like : shaftMaterials;
}

const FAMILY_WORDS: Readonly<Record<ShaftMaterial['family'], string>> = {
  steel: 'steel',
  'nickel alloy': 'nickel',
  'copper alloy': 'copper bronze',
};

function wordsOf(text: string): string[] {
  return text.toLowerCase().match(/[a-z0-9]+/g) ?? [];
}

function entryName({ name }: ShaftMaterial): string {
  return name.replaceAll(' ', '-');
}

function strengthOf(grade: ShaftMaterial): string {
  return grade.torsionalYield
    ? `torsional yield ${stress(grade.torsionalYield, grade)}`
    : `tensile yield ${stress(grade.tensileYield!, grade)}`;
}

function entryOf(grade: ShaftMaterial, name: string): string {
  const recalled = mark(grade.elasticSource);
  const density = printed(grade.density, printsInches(grade) ? 'lb/in3' : 'kg/m3');
  const facts = [
    `source ${JSON.stringify(sourceName(grade.strengthSource))}`,
    fact('torsional yield', grade.torsionalYield, grade),
    fact('tensile yield', grade.tensileYield, grade),
    fact('tensile strength', grade.tensileStrength, grade),
    `elastic modulus ${printed(grade.youngsModulus, printsInches(grade) ? 'psi' : 'GPa')}${recalled}`,
    `density ${density}${recalled}`,
  ].filter(one => one !== undefined);
  const title = JSON.stringify(grade.uns ? `${grade.name}, UNS ${grade.uns}` : grade.name);
  return `shaft material ${name} ${title} {\n${facts.map(one => `  ${one}\n`).join('')}}\n`;
}

function fact(words: string, value: number | undefined, grade: ShaftMaterial): string | undefined {
  return value === undefined ? undefined : `${words} ${stress(value, grade)}`;
}

/** In the unit that the table prints. */
function stress(value: number, grade: ShaftMaterial): string {
  return printed(value, printsInches(grade) ? 'psi' : 'MPa');
}

function printsInches(grade: ShaftMaterial): boolean {
  return grade.torsionalYield !== undefined;
}

function printed(value: number, unit: string): string {
  return `${Number(fromSI(value, findUnit(unit)!).toPrecision(6))} ${unit}`;
}

function sourceName({ title, clause }: Source): string {
  return clause ? `${title}, ${clause}` : title;
}

/** What no source prints is no better than an assumption, and the text says so. */
function mark({ confidence }: Source): string {
  return confidence === 'from memory' ? ' [assumed]' : '';
}
