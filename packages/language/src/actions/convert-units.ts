import type { Span } from '@tailshaft/drivetrain';
import {
  type Dimension,
  fromSI,
  plainNumber,
  type Unit,
  type Value,
  writtenUnit,
} from '@tailshaft/mechanics';
import { unitsRead } from '@tailshaft/vocabulary';
import { blocksOf, withNested } from '../elaborate/vessel.js';
import type { FileCheck } from '../project/project.js';
import type { DocumentReading } from '../reading/document.js';
import { placeOf } from '../reading/place.js';
import type { Offer } from './offer.js';

/** How many other units are offered. */
const MOST_UNITS = 6;
const NO_UNIT: readonly Dimension[] = ['number', 'ratio'];

interface Written {
  readonly start: number;
  readonly end: number;
  readonly dimension: Dimension;
  readonly words: string;
  readonly unit: Unit;
  /** One number, or the two ends of a range. */
  readonly values: readonly Value[];
}

/** The quantity under the cursor in the other units of its kind. */
export function convertUnits(reading: DocumentReading, check: FileCheck, offset: number): Offer[] {
  const found = quantityAt(reading, check, offset);
  if (!found) return [];
  const { start, end, dimension, unit } = found;
  return unitsRead(dimension)
    .filter(one => one.symbol !== unit.symbol && found.values.every(value => isHandy(fromSI(value.si, one))))
    .slice(0, MOST_UNITS)
    .map(other => {
      const text = `${found.values.map(value => inUnit(value, other)).join(' .. ')}${other.symbol === '1' ? '' : ` ${other.symbol}`}`;
      return {
        title: `Write ${found.words} as ${text}`,
        kind: 'refactor.rewrite',
        edits: [{ uri: reading.uri, start, end, text }],
      };
    });
}

/** People write numbers of a few digits: nobody says 300000 W. */
function isHandy(number: number): boolean {
  return Math.abs(number) >= 0.05 && Math.abs(number) < 20_000;
}

/** The number in another unit, with as many digits as were written and at least four. */
function inUnit(value: Value, unit: Unit): string {
  return plainNumber(fromSI(value.si, unit), Math.max(4, value.figure?.digits ?? 0));
}

function quantityAt(reading: DocumentReading, check: FileCheck, offset: number): Written | undefined {
  for (const top of [...reading.entries.map(entry => entry.facts), ...reading.vessels.flatMap(blocksOf)]) {
    for (const block of withNested(top)) {
      for (const { value, fact } of block.facts) {
        if (!fact || !value || offset < value.start || offset > value.end) continue;
        return writtenIn(fact.value, reading.uri, offset);
      }
    }
  }
  const sentences = check.vessels.flatMap(one => [...one.vessel.requirements, ...one.vessel.assumptions]);
  for (const { quantity } of sentences) {
    const found = writtenIn(quantity?.value, reading.uri, offset);
    if (found) return found;
  }
  return undefined;
}

/** The quantity inside a value of any form that stands at this offset. */
function writtenIn(value: unknown, uri: string, offset: number): Written | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  if ('low' in value && 'high' in value) {
    const { low, high } = value as Span;
    return written([low, high], uri, offset);
  }
  if ('si' in value) return written([value as Value], uri, offset);
  for (const part of Object.values(value)) {
    const found = writtenIn(part, uri, offset);
    if (found) return found;
  }
  return undefined;
}

function written(values: readonly Value[], uri: string, offset: number): Written | undefined {
  const [first, last] = [values[0]!, values.at(-1)!];
  if (!first.origin || !last.origin || NO_UNIT.includes(first.dimension)) return undefined;
  const { start } = placeOf(first.origin);
  const { end, uri: file } = placeOf(last.origin);
  const unit = writtenUnit(last);
  if (!unit || file !== uri || offset < start || offset > end) return undefined;
  const words = values.length === 1 ? (last.written ?? '') : `${first.figure?.text ?? ''} .. ${last.written}`;
  return { start, end, dimension: first.dimension, words, unit, values };
}
