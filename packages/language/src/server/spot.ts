import { withNested } from '../elaborate/vessel.js';
import type { AcceptanceReading } from '../reading/acceptance.js';
import type { ArrangementReading, LineReading, PartReading } from '../reading/arrangement.js';
import type { BlockReading, FactReading, NestedReading } from '../reading/block.js';
import type { DocumentReading, EntryReading, ImportReading } from '../reading/document.js';
import type { SentenceReading, VesselReading } from '../reading/vessel.js';
import { touches } from './places.js';

/** What a fact belongs to. */
export interface Owner {
  readonly entry?: EntryReading;
  readonly vessel?: VesselReading;
  readonly arrangement?: ArrangementReading;
  readonly line?: LineReading;
  readonly part?: PartReading;
}

/** What stands at a place of a text. */
export type Spot =
  | { readonly kind: 'import'; readonly wanted: ImportReading }
  | { readonly kind: 'entry'; readonly entry: EntryReading; readonly on: 'kind' | 'name' }
  | { readonly kind: 'vessel'; readonly vessel: VesselReading }
  | { readonly kind: 'arrangement'; readonly vessel: VesselReading; readonly arrangement: ArrangementReading }
  | { readonly kind: 'base'; readonly vessel: VesselReading; readonly arrangement: ArrangementReading }
  | ({ readonly kind: 'line' | 'mirrored' } & InLine)
  | ({ readonly kind: 'part'; readonly part: PartReading; readonly on: 'role' | 'name' } & InLine)
  | {
      readonly kind: 'fact';
      readonly on: 'words' | 'value' | 'evidence';
      readonly fact: FactReading;
      readonly block: BlockReading;
      readonly owner: Owner;
    }
  | { readonly kind: 'nested'; readonly nested: NestedReading; readonly owner: Owner }
  | {
      readonly kind: 'requirement' | 'assumption';
      readonly sentence: SentenceReading;
      readonly vessel: VesselReading;
    }
  | { readonly kind: 'acceptance'; readonly acceptance: AcceptanceReading; readonly vessel: VesselReading };

interface InLine {
  readonly vessel: VesselReading;
  readonly arrangement: ArrangementReading;
  readonly line: LineReading;
}

/** What stands at an offset; the innermost thing that has something to say. */
export function spotAt(reading: DocumentReading, offset: number): Spot | undefined {
  const wanted = reading.imports.find(one => touches(one.place, offset));
  if (wanted) return { kind: 'import', wanted };
  for (const entry of reading.entries) {
    if (!touches(entry.whole, offset)) continue;
    if (touches(entry.namePlace, offset)) return { kind: 'entry', entry, on: 'name' };
    const fact = inBlock(entry.facts, offset, { entry });
    if (fact) return fact;
    if (offset <= entry.whole.start + entry.kind.length) return { kind: 'entry', entry, on: 'kind' };
    return undefined;
  }
  const vessel = reading.vessels.find(one => touches(one.whole, offset));
  return vessel && inVessel(vessel, offset);
}

function inVessel(vessel: VesselReading, offset: number): Spot | undefined {
  if (touches(vessel.namePlace, offset)) return { kind: 'vessel', vessel };
  for (const block of Object.values(vessel.settings)) {
    const fact = inBlock(block, offset, { vessel });
    if (fact) return fact;
  }
  for (const arrangement of vessel.arrangements) {
    if (touches(arrangement.whole, offset)) return inArrangement(vessel, arrangement, offset);
  }
  const requirement = vessel.requirements.find(one => touches(one.place, offset));
  if (requirement) return { kind: 'requirement', sentence: requirement, vessel };
  const assumption = vessel.assumptions.find(one => touches(one.place, offset));
  if (assumption) return { kind: 'assumption', sentence: assumption, vessel };
  const acceptance = vessel.acceptances.find(one => touches(one.place, offset));
  if (acceptance) return { kind: 'acceptance', acceptance, vessel };
  return offset <= vessel.whole.start + 'vessel'.length ? { kind: 'vessel', vessel } : undefined;
}

function inArrangement(
  vessel: VesselReading,
  arrangement: ArrangementReading,
  offset: number,
): Spot | undefined {
  if (touches(arrangement.namePlace, offset)) return { kind: 'arrangement', vessel, arrangement };
  if (arrangement.revises?.name && touches(arrangement.revises.place, offset))
    return { kind: 'base', vessel, arrangement };
  for (const line of arrangement.lines) {
    if (!touches(line.whole, offset)) continue;
    const here = { vessel, arrangement, line };
    if (touches(line.namePlace, offset)) return { kind: 'line', ...here };
    if (line.mirrors?.name && touches(line.mirrors.place, offset)) return { kind: 'mirrored', ...here };
    for (const part of line.parts) if (touches(part.whole, offset)) return inPart(part, here, offset);
    for (const mode of line.modes) {
      const fact = touches(mode.whole, offset) && inBlock(mode.facts, offset, here);
      if (fact) return fact;
    }
    return inBlock(line.facts, offset, here) ?? { kind: 'line', ...here };
  }
  return undefined;
}

function inPart(part: PartReading, here: InLine, offset: number): Spot {
  if (touches(part.namePlace, offset)) return { kind: 'part', part, on: 'name', ...here };
  return inBlock(part.facts, offset, { ...here, part }) ?? { kind: 'part', part, on: 'role', ...here };
}

function inBlock(outer: BlockReading, offset: number, owner: Owner): Spot | undefined {
  let nestedSpot: Spot | undefined;
  for (const block of withNested(outer)) {
    for (const fact of block.facts) {
      for (const on of ['value', 'evidence', 'words'] as const) {
        if (touches(fact[on], offset)) return { kind: 'fact', on, fact, block, owner };
      }
    }
    for (const nested of block.nested) {
      if (touches(nested.head?.value, offset) || touches(nested.words, offset))
        nestedSpot ??= { kind: 'nested', nested, owner };
    }
  }
  return nestedSpot;
}
