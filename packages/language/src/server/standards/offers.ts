import {
  flywheelHousings,
  flywheelSizes,
  inchShaftEnds,
  metricShaftEnds,
  outputFlanges,
  type ShaftMaterial,
  shaftMaterials,
} from '@tailshaft/mechanics';
import type { Row, Vocabulary } from '@tailshaft/vocabulary';
import { CompletionItemKind, type Range } from 'vscode-languageserver';
import { type Offer, value } from '../completion/items.js';
import { FLYWHEELS } from './flywheels.js';
import { HOUSINGS } from './housings.js';
import { OUTPUT_FLANGES, outputFlangeMarkdown } from './output-flanges.js';
import { gradeMarkdown, SHAFT_BAR } from './shaft-bar.js';
import { INCH_ENDS, METRIC_ENDS, shaftEndMarkdown } from './shaft-ends.js';
import { rowWords, type StandardTable, sizeMarkdown } from './table.js';

/** Sizes of published tables, each with its figures, for the value of a property; none where no table is about it. */
export function standardOffers(
  row: Row,
  vocabulary: Vocabulary,
  shaftFit: ShaftFit = () => undefined,
): Offer[] {
  const { kind } = row;
  if (kind.form === 'any word' && kind.what === 'housing size')
    return flywheelHousings.map(one => offer(HOUSINGS, one, ['bolt circle', 'holes']));
  if (kind.form === 'any word' && kind.what === 'flywheel size')
    return flywheelSizes.map(one => offer(FLYWHEELS, one, ['pilot', 'bolt circle']));
  if (vocabulary.title === 'flange' && row.field === 'outsideDiameter')
    return outputFlanges.map(one => ({
      ...offer(OUTPUT_FLANGES, one, ['bolt circle', 'bolts']),
      doc: outputFlangeMarkdown(one.outsideDiameter),
    }));
  const { title } = vocabulary;
  const isShaft = title === 'shaft' && ['diameter', 'taperLargeEnd', 'couplingEnd'].includes(row.field);
  if (isShaft || (title.startsWith('propeller') && row.field === 'boreLargeEnd'))
    return shaftSizes(row.field === 'diameter' ? shaftFit : () => undefined);
  if ((title === 'shaft' && row.field === 'taper') || row.field === 'boreTaper') return tapers();
  return [];
}

/** Whole entries for the generic grades of shaft bar, each figure as its source prints it. */
export function gradeOffers(): Offer[] {
  return shaftMaterials.map(row => ({
    label: `shaft material … ${row.uns ?? row.name}`,
    kind: CompletionItemKind.Snippet,
    detail: [row.name, rowWords(SHAFT_BAR, row, ['torsional yield', 'tensile yield'])].join(', '),
    doc: gradeMarkdown(row),
    insert: gradeEntry(row),
    snippet: true,
    filter: `shaft material ${row.uns ?? ''} ${row.name}`,
  }));
}

/**
 * The name of a generic grade, with its entry written at the end of the file: for a shaft whose grade is nowhere
 * declared. The entry says that its figures are a table's, and not those of the bar.
 */
export function genericGrades(atEnd: Range): Offer[] {
  return shaftMaterials.map(row => ({
    ...value(
      gradeName(row),
      `generic grade, ${rowWords(SHAFT_BAR, row, ['torsional yield', 'tensile yield'])}`,
    ),
    doc: `Table figures, not those of the bar: a mill certificate takes precedence.\n\n${gradeMarkdown(row)}`,
    also: {
      range: atEnd,
      newText: `\n${[
        `/// Generic grade: table figures, not those of the bar fitted. Ask for the mill certificate.`,
        `shaft material ${gradeName(row)} "${gradeTitle(row)}, generic grade" {`,
        `  source "${row.strengthSource.title}, generic grade"`,
        ...gradeFacts(row, '  '),
        '}',
        '',
      ].join('\n')}`,
    },
  }));
}

function offer<R>(table: StandardTable<R>, row: R, heads: readonly string[]): Offer {
  const name = table.nameOf(row);
  return value(name, rowWords(table, row, heads), sizeMarkdown(table, row));
}

/** How a shaft of a diameter in metres would fare where it is typed, in a few words. */
export type ShaftFit = (metres: number, written: string) => string | undefined;

function shaftSizes(shaftFit: ShaftFit): Offer[] {
  const told = (metres: number, made: Offer): Offer => {
    const fit = shaftFit(metres, made.label);
    return fit ? { ...made, detail: `${fit} · ${made.detail}` } : made;
  };
  return [
    ...inchShaftEnds.map(one =>
      told(one.diameter, {
        ...offer(INCH_ENDS, one, ['diameter', 'keyway width']),
        doc: shaftEndMarkdown(one.diameter)!,
      }),
    ),
    ...metricShaftEnds.map(one => told(one.diameter, offer(METRIC_ENDS, one, ['taper', 'key']))),
  ];
}

function tapers(): Offer[] {
  return [
    value('1:16', 'inch series up to 5 1/2 in', 'Taper of inboard propeller shafts, SAE J755 (published).'),
    value('1:12', 'inch series, 6 to 8 in', 'Taper of the larger shafts, SAE J755 (published).'),
    value('1:10', 'metric series', 'Taper of metric small-craft shafts, ISO 4566 (from memory).'),
  ];
}

const PSI = 6894.757293168361;

const gradeName = (row: ShaftMaterial) => row.name.replace(/[^A-Za-z0-9]+/g, '-').toLowerCase();
const gradeTitle = (row: ShaftMaterial) => (row.uns ? `${row.name}, UNS ${row.uns} type` : row.name);

function gradeFacts(row: ShaftMaterial, indent: string): string[] {
  const strength = (words: string, figure: number | undefined) =>
    figure === undefined ? [] : [`${indent}${words} ${figureOf(figure)}`];
  return [
    ...strength('torsional yield', row.torsionalYield),
    ...strength('tensile yield', row.tensileYield),
    ...strength('tensile strength', row.tensileStrength),
    `${indent}elastic modulus ${Number((row.youngsModulus / 1e9).toPrecision(4))} GPa`,
    `${indent}density ${Number(row.density.toPrecision(4))} kg/m3`,
  ];
}

/** A generic grade is where one begins, not what was bought: the certificate of the bar stays an open question. */
function gradeEntry(row: ShaftMaterial): string {
  return [
    `shaft material \${1:${gradeName(row)}} "${gradeTitle(row)}, generic grade" {`,
    '\tsource ${2:unknown}',
    ...gradeFacts(row, '\t'),
    '}',
    '$0',
  ].join('\n');
}

/** In psi where the table prints it so, and in MPa otherwise. */
function figureOf(pascals: number): string {
  const psi = pascals / PSI;
  const printed = Math.abs(psi - Math.round(psi / 100) * 100) < 1e-3;
  return printed ? `${Math.round(psi)} psi` : `${Number((pascals / 1e6).toPrecision(6))} MPa`;
}
