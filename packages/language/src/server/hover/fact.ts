import type { Rotation } from '@tailshaft/drivetrain';
import {
  describeUnit,
  findUnit,
  formatNumber,
  relabel,
  turnAtFlywheel,
  type Value,
} from '@tailshaft/mechanics';
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
      'An open question: the sheet lists it with the checks that need it. No check uses it as a value.',
      row.doc,
    );
  const quantities = quantitiesIn(said.value);
  return paragraphs(
    `${title} · ${row.doc}`,
    row.kind.form === 'ratio'
      ? bullets(quantities.map(one => ratioLine(one, /taper/i.test(row.field))))
      : quantities.length > 0
        ? bullets(quantities.map(conversionLine))
        : `\`${said.written}\``,
    row.kind.form === 'rotation' && rotationWords(said.value as Rotation),
    evidenceLine(said.evidence) ?? (quantities.length > 0 ? 'Evidence: none stated here.' : undefined),
    drivenBy(place, lines),
  );
}

/** A unit in a value: what it is, and the value in others. */
export function unitHover(symbol: string, fact: FactReading | undefined): string | undefined {
  const unit = findUnit(symbol);
  if (!unit) return undefined;
  const value = fact && quantitiesIn(fact.fact?.value).find(one => one.unit === unit.symbol);
  return paragraphs(`**${unit.name}**`, plain(describeUnit(unit)), value && bullets([conversionLine(value)]));
}

/** A ratio of speeds in turns, a taper as people measure it. */
function ratioLine({ si, written }: Value, isTaper: boolean): string {
  const said = `**${plain(written ?? '')}**`;
  if (!isTaper)
    return `${said}: ${formatNumber(si)} turns in for one out; the output turns at ${formatNumber(100 / si)} % of the input speed`;
  const half = (Math.atan(si / 2) * 180) / Math.PI;
  return `${said}: ${formatNumber(si * 12)} in/ft, ${formatNumber(si * 1000)} mm/m on the diameter; ${formatNumber(half)}° to the axis`;
}

/** The same crankshaft rotation in the words of every convention. */
function rotationWords(rotation: Rotation): string | undefined {
  if (!rotation.viewedFrom || rotation.word.startsWith('either')) {
    return rotation.viewedFrom
      ? undefined
      : 'The viewpoint is not stated: no check relies on the word alone.';
  }
  const told = turnAtFlywheel({ word: rotation.word as 'standard', view: rotation.viewedFrom });
  if (!told.known) return told.why;
  return paragraphs(
    'The same rotation elsewhere:',
    bullets(relabel(told.value).map(one => `${one.convention}, viewed from ${one.view}: ${one.label}`)),
  );
}
