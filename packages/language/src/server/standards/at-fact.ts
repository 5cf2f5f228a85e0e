import { flywheelHousing, flywheelSize, type Value } from '@tailshaft/mechanics';
import type { BlockReading, FactReading, NestedReading } from '../../reading/block.js';
import { quantitiesIn } from '../hover/quantities.js';
import { FLYWHEELS } from './flywheels.js';
import { HOUSINGS } from './housings.js';
import { outputFlangeMarkdown } from './output-flanges.js';
import { shaftEndMarkdown } from './shaft-ends.js';
import { sizeMarkdown } from './table.js';

/** What a published table says of the size that a fact names; nothing where no table is about it. */
export function standardAt(fact: FactReading, block: BlockReading): string | undefined {
  const { row } = fact;
  const { kind } = row;
  const written = fact.fact?.value === undefined ? undefined : fact.fact.written;
  if (kind.form === 'any word' && kind.what === 'housing size') {
    const found = written && flywheelHousing(written);
    return found ? sizeMarkdown(HOUSINGS, found) : undefined;
  }
  if (kind.form === 'any word' && kind.what === 'flywheel size') {
    const found = written && flywheelSize(written);
    return found ? sizeMarkdown(FLYWHEELS, found) : undefined;
  }
  const { title } = block.host.vocabulary;
  if (title === 'flange') return outputFlangeMarkdown(lengthOf(block, 'outsideDiameter'));
  if (title === 'shaft' && AT_PROPELLER.has(row.field)) {
    const large = lengthOf(block, 'taperLargeEnd') ?? lengthOf(block, 'diameter');
    return large === undefined ? undefined : shaftEndMarkdown(large);
  }
  if (title.startsWith('propeller') && IN_HUB.has(row.field)) {
    const bore = lengthOf(block, 'boreLargeEnd');
    return bore === undefined ? undefined : shaftEndMarkdown(bore);
  }
  return undefined;
}

/** The same for a block as a whole. */
export function standardBlock({ row, host }: NestedReading): string | undefined {
  if (row.block.title !== 'flange') return undefined;
  return outputFlangeMarkdown(host.reading && lengthOf(host.reading, 'outsideDiameter'));
}

/** Facts of a shaft, and of a hub, that the table of shaft ends is about. */
const AT_PROPELLER = new Set(['diameter', 'taper', 'taperLength', 'taperLargeEnd', 'keywayWidth']);
const IN_HUB = new Set(['boreLargeEnd', 'boreTaper', 'keywayWidth', 'hubLength']);

function lengthOf(block: BlockReading, field: string): number | undefined {
  const fact = block.facts.find(one => one.row.field === field)?.fact;
  return quantitiesIn(fact?.value).find((one): one is Value<'length'> => one.dimension === 'length')?.si;
}
