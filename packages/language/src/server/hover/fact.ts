import type { Rotation } from '@tailshaft/drivetrain';
import { describeUnit, findUnit, relabel, turnAtFlywheel } from '@tailshaft/mechanics';
import type { FactReading } from '../../reading/block.js';
import type { Place } from '../../reading/place.js';
import type { JudgedLine } from '../lines.js';
import { drivenBy } from './driven.js';
import { bullets, paragraphs, plain } from './markdown.js';
import { conversionLine, evidenceLine, quantitiesIn } from './quantities.js';

/** A declared value: as written, in other units, how it is known, and what it drives. */
export function valueHover(
  fact: FactReading,
  place: Place,
  lines: readonly JudgedLine[],
): string | undefined {
  const { row, fact: said } = fact;
  if (!said) return undefined;
  const title = `**${row.words}**`;
  if (said.value === undefined)
    return paragraphs(
      title,
      'An open question: it is listed on the sheet, with the checks that wait for it. No check takes it for a value.',
      row.doc,
    );
  const quantities = quantitiesIn(said.value);
  return paragraphs(
    `${title} · ${row.doc}`,
    quantities.length > 0 ? bullets(quantities.map(conversionLine)) : `\`${said.written}\``,
    row.kind.form === 'rotation' && rotationWords(said.value as Rotation),
    evidenceLine(said.evidence) ?? (quantities.length > 0 ? 'Known how: not stated here.' : undefined),
    drivenBy(place, lines),
  );
}

/** A unit in a value: what it is, and the value in others. */
export function unitHover(symbol: string, fact: FactReading | undefined): string | undefined {
  const unit = findUnit(symbol);
  if (!unit) return undefined;
  const value = fact && quantitiesIn(fact.fact?.value).find(one => one.written?.endsWith(symbol));
  return paragraphs(`**${unit.name}**`, plain(describeUnit(unit)), value && bullets([conversionLine(value)]));
}

/** The same crankshaft rotation in the words of every convention. */
function rotationWords(rotation: Rotation): string | undefined {
  if (!rotation.viewedFrom || rotation.word.startsWith('either')) {
    return rotation.viewedFrom
      ? undefined
      : 'From where it is viewed is not stated: no check takes the word alone for a fact.';
  }
  const told = turnAtFlywheel({ word: rotation.word as 'standard', view: rotation.viewedFrom });
  if (!told.known) return told.why;
  return paragraphs(
    'The same rotation elsewhere:',
    bullets(relabel(told.value).map(one => `${one.convention}, viewed from ${one.view}: ${one.label}`)),
  );
}
