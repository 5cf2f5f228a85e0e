import type { Evidence, Point, Span } from '@tailshaft/drivetrain';
import {
  type Dimension,
  formatNumber,
  formatQuantity,
  formatValue,
  fromSI,
  SI_UNIT,
  unitsOf,
  type Value,
  writtenUnit,
} from '@tailshaft/mechanics';
import { plain } from './markdown.js';

/** The quantities that a declared value consists of: one, or the two of a range or a point. */
export function quantitiesIn(value: unknown): Value[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('si' in value) return [value as Value];
  if ('low' in value) return [(value as Span).low, (value as Span).high];
  if ('y' in value) return [(value as Point).y, (value as Point).x];
  return Object.values(value).flatMap(part =>
    typeof part === 'object' && part !== null && 'si' in part ? [part as Value] : [],
  );
}

/** `300 kW = 300000 W; 402.3 hp, 407.9 PS`. */
export function conversionLine(value: Value): string {
  const written = value.written ?? formatValue(value);
  const si = inSI(value);
  const others = conversions(value).join(', ');
  const same = si === written ? '' : ` = ${si}`;
  return `**${written}**${same}${others ? `; ${others}` : ''}`;
}

/** The same quantity in the other units that people know, best known first. */
function conversions(value: Value, most = 4): string[] {
  if (value.dimension === 'number') return [];
  // Slopes are ratios too, but nobody wants a margin in inches a foot.
  if (value.dimension === 'ratio') return value.unit === '%' ? [] : [`${formatNumber(value.si * 100)} %`];
  const written = writtenUnit(value);
  const found: string[] = [];
  for (const unit of unitsOf(value.dimension)) {
    const number = Math.abs(fromSI(value.si, unit));
    const awkward = number !== 0 && (number < 0.05 || number > 1e5);
    if (unit === written || unit.display === SI_UNIT[value.dimension] || awkward) continue;
    found.push(formatQuantity(value.si, unit));
    if (found.length === most) break;
  }
  return found;
}

function inSI({ si, dimension }: { si: number; dimension: Dimension }): string {
  const unit = SI_UNIT[dimension];
  return unit === '1' ? formatNumber(si, 5) : `${formatNumber(si, 5)} ${unit}`;
}

const EVIDENCE: Readonly<Record<Evidence['kind'], string>> = {
  measured: 'measured on board',
  plate: 'read from the plate',
  drawing: 'taken from a drawing',
  sheet: 'taken from a data sheet',
  'sister vessel': 'taken from a sister vessel',
  hearsay: 'hearsay: no rotation check passes on it',
  assumed: 'assumed: no rotation check passes on it',
};

export function evidenceLine(evidence: Evidence | undefined): string | undefined {
  if (!evidence) return undefined;
  const dated = evidence.dated ? `, ${plain(evidence.dated)}` : '';
  const note = evidence.note ? `, ${plain(evidence.note)}` : '';
  return `Known how: ${EVIDENCE[evidence.kind]}${note}${dated}.`;
}
