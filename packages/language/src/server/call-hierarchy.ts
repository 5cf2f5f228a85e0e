import { countsOf, countWords, type Part } from '@tailshaft/drivetrain';
import { signedPercent } from '@tailshaft/mechanics';
import { isEntryKind } from '@tailshaft/vocabulary';
import type { LangiumDocument } from 'langium';
import {
  type CallHierarchyIncomingCall,
  type CallHierarchyItem,
  type CallHierarchyOutgoingCall,
  type Position,
  type Range,
  SymbolKind,
} from 'vscode-languageserver';
import type { EntryReading } from '../reading/document.js';
import { type Place, placeOf } from '../reading/place.js';
import { aboutPart } from './hover/part.js';
import { type JudgedLine, judgedLine, linesOf, tightest, usersOf, vesselsThatSee } from './lines.js';
import { rangeOf, samePlace } from './places.js';
import type { TailshaftServices } from './services.js';
import { spotAt } from './spot.js';

/** What an item stands for, carried by the client from one question to the next. */
interface ItemData {
  readonly what: 'entry' | 'line' | 'part';
  readonly place: Place;
}

/** Where a catalogue entry is used and with what margin, and of which parts a shaft line consists. */
export class CallHierarchy {
  constructor(private readonly services: TailshaftServices) {}

  prepare(document: LangiumDocument, position: Position): CallHierarchyItem[] | undefined {
    const { project } = this.services;
    const offset = document.textDocument.offsetAt(position);
    const spot = spotAt(project.reading(document), offset);
    if (spot?.kind === 'entry') return this.items(this.ofEntry(spot.entry));
    if (spot?.kind === 'part' && spot.on === 'name') {
      const entry = project.entries(document).find(spot.part.role, spot.part.name!);
      return entry && this.items(this.ofEntry(entry));
    }
    if (spot?.kind === 'fact' && spot.fact.row.kind.form === 'name' && spot.fact.fact) {
      const { kind } = spot.fact.row;
      const of = kind.form === 'name' && isEntryKind(kind.of) ? kind.of : undefined;
      const entry = of && project.entries(document).find(of, spot.fact.fact.written);
      if (entry) return this.items(this.ofEntry(entry));
    }
    if (spot && 'line' in spot) {
      const line = judgedLine(project, document, spot.line);
      return line && this.items(this.ofLine(line));
    }
    return undefined;
  }

  /** The lines that use an entry; the margin that matters most in the detail. */
  incoming(document: LangiumDocument, { data }: CallHierarchyItem): CallHierarchyIncomingCall[] {
    const { what, place } = data as ItemData;
    const entry = this.services.project
      .reading(document)
      .entries.find(one => samePlace(one.namePlace, place));
    if (what !== 'entry' || !entry) return [];
    const { LangiumDocuments } = this.services.shared.workspace;
    const lines = vesselsThatSee(
      this.services.project,
      document,
      LangiumDocuments.all,
      Number.POSITIVE_INFINITY,
    ).flatMap(linesOf);
    const users = [...usersOf(lines, entry.host), ...usersOfGrade(lines, entry.host)];
    return users.flatMap(({ line, part }) => {
      const from = this.ofLine(line, usedAs(line, part, entry));
      const used = this.rangeOf(placeOf(part.nameOrigin ?? part.origin), from?.uri);
      return from ? [{ from, fromRanges: used ? [used] : [] }] : [];
    });
  }

  /** The parts of a line, in the order of the chain. */
  outgoing(document: LangiumDocument, { data }: CallHierarchyItem): CallHierarchyOutgoingCall[] {
    const { what, place } = data as ItemData;
    if (what !== 'line') return [];
    const line = this.services.project
      .check(document)
      .vessels.flatMap(linesOf)
      .find(one => samePlace(one.line.nameOrigin, place));
    return (line?.line.chain ?? []).flatMap(part => {
      const to = this.ofPart(part, line!, document);
      const used = this.rangeOf(placeOf(part.nameOrigin ?? part.origin), document.uri.toString());
      return to ? [{ to, fromRanges: used ? [used] : [] }] : [];
    });
  }

  private ofEntry(entry: EntryReading, detail = entry.title ?? entry.kind): CallHierarchyItem | undefined {
    return this.item(
      'entry',
      entry.name,
      `${entry.kind}, ${detail}`,
      SymbolKind.Class,
      entry.whole,
      entry.namePlace,
    );
  }

  private ofLine(line: JudgedLine, detail = checksOf(line)): CallHierarchyItem | undefined {
    const { line: one, judged } = line;
    const name = `${judged.vessel.name} ${one.path}`;
    const block = one.origin as Place & { readonly block?: { readonly end: number } };
    const whole = { ...placeOf(block), end: block.block?.end ?? placeOf(block).end };
    return this.item('line', name, detail, SymbolKind.Object, whole, placeOf(one.nameOrigin));
  }

  private ofPart(part: Part, line: JudgedLine, document: LangiumDocument): CallHierarchyItem | undefined {
    const entry =
      part.entry &&
      this.services.project
        .entries(document)
        .entries(part.role)
        .find(one => one.host === part.entry!.origin);
    if (entry) return this.ofEntry(entry, usedAs(line, part, entry));
    const place = placeOf(part.origin);
    return this.item('part', part.role, `${part.change}, declared in place`, SymbolKind.Field, place, place);
  }

  private item(
    what: ItemData['what'],
    name: string,
    detail: string,
    kind: SymbolKind,
    whole: Place,
    place: Place,
  ): CallHierarchyItem | undefined {
    const range = this.rangeOf(whole);
    const selectionRange = this.rangeOf(place);
    if (!range || !selectionRange) return undefined;
    const { uri, start, end } = place;
    return { name, detail, kind, uri, range, selectionRange, data: { what, place: { uri, start, end } } };
  }

  private items(item: CallHierarchyItem | undefined): CallHierarchyItem[] | undefined {
    return item && [item];
  }

  private rangeOf(place: Place, uri = place.uri): Range | undefined {
    return place.uri === uri ? rangeOf(place, this.services.shared.workspace.LangiumDocuments) : undefined;
  }
}

/** `replaced; least margin +12 % (capacity/gear-input-torque); 5 hold, 0 fail, 1 cannot tell`. */
function usedAs(line: JudgedLine, part: Part, entry: EntryReading): string {
  const verdicts = aboutPart(line, part.path, entry);
  const least = tightest(verdicts);
  const margin = least ? `least margin ${signedPercent(least.margin!)} (${least.rule})` : 'no margin known';
  return [part.change, margin, countWords(countsOf(verdicts))].join('; ');
}

function checksOf({ verdicts }: JudgedLine): string {
  const least = tightest(verdicts);
  const margin = least ? `, least margin ${signedPercent(least.margin!)}` : '';
  return `${countWords(countsOf(verdicts))}${margin}`;
}

/** Shafts made of a material. */
function usersOfGrade(lines: Iterable<JudgedLine>, material: Place): { line: JudgedLine; part: Part }[] {
  return [...lines].flatMap(line =>
    line.line.shafts.filter(one => samePlace(one.grade?.origin, material)).map(part => ({ line, part })),
  );
}
