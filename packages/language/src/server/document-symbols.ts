import type { LangiumDocument } from 'langium';
import type { DocumentSymbolProvider } from 'langium/lsp';
import { type DocumentSymbol, SymbolKind } from 'vscode-languageserver';
import type { LineReading, PartReading } from '../reading/arrangement.js';
import type { EntryReading } from '../reading/document.js';
import type { VesselReading } from '../reading/vessel.js';
import { rangeIn } from './places.js';
import type { TailshaftServices } from './services.js';

interface Stretch {
  readonly start: number;
  readonly end: number;
}
type Make = (
  name: string,
  detail: string,
  kind: SymbolKind,
  whole: Stretch,
  place: Stretch,
  children?: DocumentSymbol[],
) => DocumentSymbol;

/** The outline of a file: entries with their ratios and ratings, vessels with arrangements, lines and parts. */
export class DocumentSymbols implements DocumentSymbolProvider {
  constructor(private readonly services: TailshaftServices) {}

  getSymbols(document: LangiumDocument): DocumentSymbol[] {
    const text = document.textDocument;
    const make: Make = (name, detail, kind, whole, place, children = []) => ({
      name: name || '(no name)',
      detail,
      kind,
      range: rangeIn(text, whole),
      selectionRange: rangeIn(text, clamp(place, whole)),
      children,
    });
    const reading = this.services.project.reading(document);
    const found = [
      ...reading.entries.map(one => ({ at: one.whole.start, symbol: ofEntry(one, make) })),
      ...reading.vessels.map(one => ({ at: one.whole.start, symbol: ofVessel(one, make) })),
    ];
    return found.sort((a, b) => a.at - b.at).map(one => one.symbol);
  }
}

function ofEntry(entry: EntryReading, make: Make): DocumentSymbol {
  const children = entry.facts.nested.map(({ row, head, host }) =>
    make(
      `${row.words} ${head?.fact?.written ?? ''}`.trim(),
      '',
      SymbolKind.Property,
      { start: host.start, end: Math.max(host.headEnd, host.block?.end ?? 0) },
      head?.value ?? host,
    ),
  );
  const detail = entry.title ? `${entry.kind}, ${entry.title}` : entry.kind;
  return make(entry.name, detail, SymbolKind.Class, entry.whole, entry.namePlace, children);
}

function ofVessel(vessel: VesselReading, make: Make): DocumentSymbol {
  const arrangements = vessel.arrangements.map(one =>
    make(
      one.name,
      one.revises ? `revises ${one.revises.name}` : 'arrangement',
      SymbolKind.Namespace,
      one.whole,
      one.namePlace,
      one.lines.map(line => ofLine(line, make)),
    ),
  );
  return make(
    vessel.name,
    vessel.title ?? 'vessel',
    SymbolKind.Module,
    vessel.whole,
    vessel.namePlace,
    arrangements,
  );
}

function ofLine(line: LineReading, make: Make): DocumentSymbol {
  const detail = line.mirrors ? `mirrors ${line.mirrors.name}` : 'shaft line';
  const parts = line.parts.map(part => ofPart(part, make));
  const modes = line.modes.map(mode => make(mode.name, 'mode', SymbolKind.Event, mode.whole, mode.namePlace));
  return make(line.name, detail, SymbolKind.Object, line.whole, line.namePlace, [...parts, ...modes]);
}

function ofPart(part: PartReading, make: Make): DocumentSymbol {
  const detail = [part.action, part.name].filter(Boolean).join(' ');
  return make(part.role, detail, SymbolKind.Field, part.whole, part.namePlace ?? part.host);
}

/** The protocol wants the name inside the whole. */
function clamp(place: Stretch, whole: Stretch): Stretch {
  const start = Math.min(Math.max(place.start, whole.start), whole.end);
  return { start, end: Math.min(Math.max(place.end, start), whole.end) };
}
