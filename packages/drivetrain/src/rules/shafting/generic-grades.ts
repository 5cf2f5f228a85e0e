import { type Dimension, type ShaftMaterial, type Source, shaftMaterials } from '@tailshaft/mechanics';
import { amount, inUnit, type NewFact, type NewValue, named, numberIn, spell } from '@tailshaft/vocabulary';
import type { LineContext } from '../../judge/context.js';
import type { NewEntry, Route } from '../../judge/route.js';
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
        { do: 'declare' as const, before: line.origin, entry: entryOf(grade, name) },
        editOf(shaft, 'material', shaft.material?.origin, named(name)),
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

function entryOf(grade: ShaftMaterial, name: string): NewEntry {
  const [pressure, density] = printsInches(grade) ? ['psi', 'lb/in3'] : ['MPa', 'kg/m3'];
  const recalled = mark(grade.elasticSource);
  return {
    kind: 'shaft material',
    name,
    title: grade.uns ? `${grade.name}, UNS ${grade.uns}` : grade.name,
    facts: [
      { property: 'source', value: { is: 'title', title: sourceName(grade.strengthSource) } },
      ...stressFact('torsional yield', grade.torsionalYield, pressure),
      ...stressFact('tensile yield', grade.tensileYield, pressure),
      ...stressFact('tensile strength', grade.tensileStrength, pressure),
      {
        property: 'elastic modulus',
        value: printed('pressure', grade.youngsModulus, printsInches(grade) ? pressure : 'GPa'),
        ...recalled,
      },
      { property: 'density', value: printed('density', grade.density, density), ...recalled },
    ],
  };
}

function stressFact(property: string, si: number | undefined, unit: string): NewFact[] {
  return si === undefined ? [] : [{ property, value: printed('pressure', si, unit) }];
}

/** In the unit that the table prints. */
function stress(si: number, grade: ShaftMaterial): string {
  return spell(printed('pressure', si, printsInches(grade) ? 'psi' : 'MPa'));
}

function printsInches(grade: ShaftMaterial): boolean {
  return grade.torsionalYield !== undefined;
}

function printed(dimension: Dimension, si: number, symbol: string): NewValue {
  return amount(inUnit(dimension, Number(numberIn({ si }, symbol).toPrecision(6)), symbol));
}

function sourceName({ title, clause }: Source): string {
  return clause ? `${title}, ${clause}` : title;
}

/** What no source prints is no better than an assumption, and the text says so. */
function mark({ confidence }: Source): { readonly evidence?: 'assumed' } {
  return confidence === 'from memory' ? { evidence: 'assumed' } : {};
}
