import type { LangiumDocument } from 'langium';
import type { LinkedEditingRanges, Position } from 'vscode-languageserver';
import { TailshaftTerminals } from '../generated/ast.js';
import { Names } from '../names/names.js';
import { whyNotRename } from '../names/refusal.js';
import { rangeIn } from './places.js';
import type { TailshaftServices } from './services.js';

/** Names that mean something in one vessel or part only, so that all places are before the author's eyes. */
const LOCAL = new Set(['shaft line', 'arrangement', 'clutch']);

/** The places that a local name stands at, to be typed in all at once. */
export function linkedEditing(
  services: TailshaftServices,
  document: LangiumDocument,
  position: Position,
): LinkedEditingRanges | undefined {
  const names = new Names(services.project, services.shared.workspace.LangiumDocuments);
  const one = names.at(document, document.textDocument.offsetAt(position));
  if (!one || !LOCAL.has(one.kind) || whyNotRename(names, one)) return undefined;
  const all = names.same(one);
  // The protocol wants the same word at each place of one file.
  if (
    all.length < 2 ||
    all.some(other => other.uri !== one.uri || other.end - other.start !== one.name.length)
  )
    return undefined;
  return {
    ranges: all.map(other => rangeIn(document.textDocument, other)),
    wordPattern: TailshaftTerminals.WORD.source,
  };
}
