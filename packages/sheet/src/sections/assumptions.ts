import { findRule } from '@tailshaft/drivetrain';
import { citeSource, provenanceOf, type Source } from '@tailshaft/mechanics';
import { type Block, list, paragraph, section, table } from '../document/blocks.js';
import { quiet, separated, type Text, warning } from '../document/text.js';
import type { Sheet } from '../sheet.js';

/** What was taken for granted: assumptions of the text, defaults, criteria that nobody chose, weak sources. */
export function assumptionsSection(sheet: Sheet): Block {
  const blocks = [assumed(sheet), defaults(sheet), defaultCriteria(sheet), weakSources(sheet)];
  const said = blocks.some(one => one !== undefined);
  return section('assumptions', 'Assumptions and defaults', [
    ...blocks,
    said ? undefined : paragraph('Nothing was assumed for the numbers and criteria of this sheet.'),
  ]);
}

/** `assume ...` of the text. */
function assumed(sheet: Sheet): Block | undefined {
  const { assumptions } = sheet.vessel;
  if (assumptions.length === 0) return undefined;
  return table(
    'Assumed in the spec',
    [{ title: 'Quantity' }, { title: 'Value' }, { title: 'Reason', wide: true }, { title: 'Place' }],
    assumptions.map(one => [
      one.about,
      one.quantity?.written ?? '',
      one.because ?? warning('no reason given'),
      sheet.place(one.origin) ?? '',
    ]),
  );
}

/**
 * Values that stand in a working because nothing else was declared, and that a person may write otherwise; each once, with
 * the first number it went into. What a method takes on its way stands in its working.
 */
function defaults(sheet: Sheet): Block | undefined {
  const rows = new Map<string, Text[]>();
  for (const entry of sheet.workings.entries) {
    // Whatever lies deeper is an input of an entry of its own.
    for (const value of [entry.value, ...entry.value.working!.inputs]) {
      if (provenanceOf(value) !== 'default' || !value.replaceWith) continue;
      const assumed = value.assumed!;
      const key = `${value.label} ${assumed}`;
      if (!rows.has(key))
        rows.set(key, [
          value.label,
          assumed,
          value.replaceWith,
          { as: 'reference', text: `W${entry.number}`, to: `w${entry.number}` },
        ]);
    }
  }
  if (rows.size === 0) return undefined;
  return table(
    'Defaults used where nothing is declared',
    [
      { title: 'Quantity' },
      { title: 'Default', wide: true },
      { title: 'Replace by' },
      { title: 'First used in' },
    ],
    [...rows.values()],
  );
}

function defaultCriteria(sheet: Sheet): Block | undefined {
  const rows = new Map<string, Text[]>();
  for (const { rule, criterion, criterionChosenBy } of sheet.input.verdicts) {
    if (criterion && criterionChosenBy === 'default') rows.set(`${rule} ${criterion}`, [rule, criterion]);
  }
  if (rows.size === 0) return undefined;
  return table(
    'Default criteria, not chosen in the spec',
    [{ title: 'Check' }, { title: 'Criterion', wide: true }],
    [...rows.values()],
  );
}

/** Formulas and rules that no publication at hand bears out. */
function weakSources(sheet: Sheet): Block | undefined {
  const lines = new Map<string, Text>();
  const add = (what: string, source: Source) => {
    if (source.confidence !== 'from memory' && source.confidence !== 'common practice') return;
    const key = `${what} ${citeSource(source)}`;
    lines.set(key, separated(': ', what, quiet(citeSource(source))));
  };
  for (const { value } of sheet.workings.entries) add(value.working!.name, value.working!.source);
  for (const { rule } of sheet.input.verdicts) {
    const source = findRule(rule)?.source;
    if (source) add(rule, source);
  }
  if (lines.size === 0) return undefined;
  return section('weak-sources', 'From memory or from practice', [
    paragraph(
      'These were judged or computed from trade practice or from memory of a publication, not from a text at hand:',
    ),
    list([...lines.values()]),
  ]);
}
