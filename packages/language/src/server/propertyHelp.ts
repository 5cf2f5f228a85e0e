import type { LangiumDocument } from 'langium';
import type { Position, SignatureHelp, SignatureHelpOptions } from 'vscode-languageserver';
import { withNested } from '../elaborate/vessel.js';
import type { BlockReading } from '../reading/block.js';
import type { DocumentReading } from '../reading/document.js';
import type { Row } from '../vocabulary/kinds.js';
import { formWords } from './hover/property.js';
import type { TailshaftServices } from './services.js';
import { spotAt } from './spot.js';

export const PROPERTY_HELP: SignatureHelpOptions = { triggerCharacters: [' '] };

/** What a property takes, while its value is typed: as functions have their parameters shown. */
export function propertyHelp(
  { project }: TailshaftServices,
  document: LangiumDocument,
  position: Position,
): SignatureHelp | undefined {
  const offset = document.textDocument.offsetAt(position);
  const reading = project.reading(document);
  const row = begunAt(reading, document.textDocument.getText(), offset) ?? rowAt(reading, offset);
  if (!row) return undefined;
  const value = plainly(formWords(row));
  const start = row.words.length + 1;
  return {
    signatures: [
      {
        label: `${row.words} ${value}`,
        documentation: { kind: 'markdown', value: `${row.doc}\n\nExample: \`${row.example}\`` },
        parameters: [{ label: [start, start + value.length] }],
      },
    ],
    activeSignature: 0,
    activeParameter: 0,
  };
}

/** The property whose value the cursor stands in. */
function rowAt(reading: DocumentReading, offset: number): Row | undefined {
  const spot = spotAt(reading, offset);
  return spot?.kind === 'fact' && spot.on === 'value' ? spot.fact.row : undefined;
}

/** The property whose words stand right before the cursor, with no value yet. */
function begunAt(reading: DocumentReading, text: string, offset: number): Row | undefined {
  for (const block of blocksAround(reading, offset)) {
    for (const { text: words, end } of block.unread) {
      if (end > offset || !/^[ \t]+$/.test(text.slice(end, offset))) continue;
      const row = block.host.vocabulary.rows.find(one => one.words === words);
      if (row) return row;
    }
  }
  return undefined;
}

/** All blocks of the statement around the cursor. */
function* blocksAround(reading: DocumentReading, offset: number): Generator<BlockReading> {
  const around = ({ whole }: { whole: { start: number; end: number } }) =>
    whole.start <= offset && offset <= whole.end + 1;
  for (const entry of reading.entries) if (around(entry)) yield* withNested(entry.facts);
  for (const vessel of reading.vessels) {
    if (!around(vessel)) continue;
    for (const block of Object.values(vessel.settings)) yield* withNested(block);
    for (const line of vessel.arrangements.flatMap(one => one.lines)) {
      yield* withNested(line.facts);
      for (const part of line.parts) yield* withNested(part.facts);
    }
  }
}

function plainly(markdown: string): string {
  return `<${markdown.replace(/`/g, '')}>`;
}
