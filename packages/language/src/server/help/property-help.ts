import { EVIDENCE_KINDS, HEADER_ROWS, partsOf, type Row, type Spelling } from '@tailshaft/vocabulary';
import type { LangiumDocument } from 'langium';
import type { Position, SignatureHelp } from 'vscode-languageserver';
import type { Token } from '../../text/scan.js';
import { type CursorContext, contextAt } from '../completion/context.js';
import { factPlace } from '../completion/facts.js';
import { nextInValue } from '../completion/values.js';
import { disarmed } from '../hover/disarm.js';
import { placeInSentence, sentenceOf } from './sentences.js';
import { placeInValue, type ValuePart, valueParts } from './value-parts.js';

/** What a property or sentence takes, while it is typed: as functions have their parameters shown. */
export function propertyHelp(document: LangiumDocument, position: Position): SignatureHelp | undefined {
  const text = document.textDocument;
  const context = contextAt(text.getText(), text.offsetAt(position));
  if (!context || context.statement.length === 0) return undefined;
  if (context.evidence) return evidenceHelp(context.evidence.length);
  switch (context.frames.at(-1)!.kind) {
    case 'facts':
      return factHelp(context);
    case 'line':
      return headerHelp(context);
    case 'vessel':
      return sentenceHelp(context);
    default:
      return undefined;
  }
}

function factHelp({ frames, statement, partial }: CursorContext): SignatureHelp | undefined {
  const { row, value, begun } = factPlace(frames.at(-1)!.vocabulary!, statement);
  if (!row) return undefined;
  // Behind a whole value stands the next property, unless the cursor still touches the value.
  const typed = begun.length > 0 ? [...value, ...begun] : value;
  if (partial.text === '' && isWhole(row, typed, partial)) return undefined;
  return rowHelp(row, placeInValue(row.kind, value));
}

/** Whether nothing can be added to a value. */
function isWhole(row: Row, typed: readonly Token[], partial: Token): boolean {
  if (typed.length === 0 || (row.kind.form === 'layout' && typed.length === 1)) return false;
  const next = nextInValue(row, typed, partial, NOTHING_KNOWN);
  return next.done && next.offers.length === 0;
}

/** A fact in the header of a part: its word stands right before the cursor. */
function headerHelp({ statement }: CursorContext): SignatureHelp | undefined {
  const row = (HEADER_ROWS as Readonly<Record<string, Row>>)[HEADER_WORDS[statement.at(-1)!.text] ?? ''];
  return row && rowHelp(row, 0);
}

const HEADER_WORDS: Readonly<Record<string, keyof typeof HEADER_ROWS>> = {
  at: 'at',
  ratio: 'ratio',
  clutch: 'ahead',
  hand: 'hand',
  side: 'side',
} satisfies Partial<Record<Spelling, keyof typeof HEADER_ROWS>>;

function sentenceHelp({ statement, partial }: CursorContext): SignatureHelp | undefined {
  const sentence = sentenceOf(statement[0]!.text);
  if (!sentence) return undefined;
  const parts = partsOf(sentence);
  const isHead = parts.length === 2;
  if (isHead && statement.length > 1 && partial.text === '') return undefined;
  const documentation = `${sentence.doc}\n\nExample: \`${sentence.example.split('\n')[0]}\``;
  return help(parts, placeInSentence(parts, statement), documentation);
}

function rowHelp(row: Row, active: number): SignatureHelp {
  const parts = [{ word: row.words }, ...valueParts(row.kind)];
  return help(parts, active, `${row.doc}\n\nExample: \`${row.example}\``);
}

function evidenceHelp(typed: number): SignatureHelp {
  return help(
    [{ fill: EVIDENCE_KINDS.join(', ') }, { fill: 'date, or document in quotes' }],
    Math.min(typed, 1),
    'How the value is known. No rotation check passes on hearsay or assumption.\n\nExample: `[measured 2026-01-14]`',
  );
}

function help(parts: readonly ValuePart[], active: number, documentation: string): SignatureHelp {
  let label = '';
  const parameters: { label: [number, number] }[] = [];
  for (const part of parts) {
    if (label) label += ' ';
    const start = label.length;
    label += 'word' in part ? part.word : `<${part.fill}>`;
    if ('fill' in part) parameters.push({ label: [start, label.length] });
  }
  return {
    signatures: [{ label, documentation: { kind: 'markdown', value: disarmed(documentation) }, parameters }],
    activeSignature: 0,
    activeParameter: active,
  };
}

/** Names of the surroundings say nothing of whether a value is whole. */
const NOTHING_KNOWN = {
  duties: [],
  clutches: [],
  lines: [],
  modes: [],
  materials: () => [],
  sizes: () => [],
  today: '',
};
