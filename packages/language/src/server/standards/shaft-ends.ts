import {
  type InchShaftEnd,
  inchShaftEndOf,
  inchShaftEnds,
  largeInchTaper,
  type MetricShaftEnd,
  metricShaftEndOf,
  metricShaftEnds,
} from '@tailshaft/mechanics';
import { paragraphs } from '../hover/markdown.js';
import { inches, inchLimits, millimetres } from './figures.js';
import { rowsMarkdown, type StandardTable, sizeMarkdown } from './table.js';

/** Tapered propeller ends of the inch series as SAE J755 prints them. */
export const INCH_ENDS: StandardTable<InchShaftEnd> = {
  title: 'propeller end of a shaft of',
  nameOf: row => `${row.size} in`,
  rows: inchShaftEnds,
  columns: [
    { head: 'diameter', cell: row => millimetres(row.diameter) },
    { head: 'taper', cell: row => taper(row.taper) },
    { head: 'small end', cell: row => inchLimits(row.smallEnd) },
    { head: 'taper length', cell: row => inches(row.taperLength) },
    { head: 'hub bore, small end', cell: row => inches(row.hubBoreSmallEnd) },
    { head: 'keyway width', cell: row => inchLimits(row.keywayWidth) },
    {
      head: 'keyway depth at its side',
      cell: row => (row.keywaySideDepth ? inchLimits(row.keywaySideDepth) : undefined),
    },
    { head: 'thread', cell: row => row.thread },
  ],
  sourcesOf: row => [
    { source: row.source },
    ...(row.threadSource === row.source ? [] : [{ figures: 'the thread', source: row.threadSource }]),
  ],
};

/** Tapered propeller ends of the metric series, of which little is at hand. */
export const METRIC_ENDS: StandardTable<MetricShaftEnd> = {
  title: 'propeller end of a shaft of',
  nameOf: row => millimetres(row.diameter),
  rows: metricShaftEnds,
  columns: [
    { head: 'taper', cell: row => taper(row.taper) },
    {
      head: 'taper length',
      cell: row => `${millimetres(row.taperLength.min)} to ${millimetres(row.taperLength.max)}`,
    },
    { head: 'key', cell: row => `${millimetres(row.key.width)} x ${millimetres(row.key.height)}` },
    { head: 'thread', cell: row => row.thread },
  ],
  sourcesOf: row => [{ source: row.source }],
};

/** The standard end of a shaft diameter in metres, or the standard sizes on either side of it. */
export function shaftEndMarkdown(diameter: number): string | undefined {
  const inch = inchShaftEndOf(diameter);
  if (inch) return sizeMarkdown(INCH_ENDS, inch);
  const metric = metricShaftEndOf(diameter);
  if (metric) return sizeMarkdown(METRIC_ENDS, metric);
  const below = inchShaftEnds.findLast(row => row.diameter < diameter);
  const above = inchShaftEnds.find(row => row.diameter > diameter);
  if (!below && !above) return undefined;
  const beyond = diameter >= largeInchTaper.from && diameter <= largeInchTaper.to;
  return paragraphs(
    `${millimetres(diameter)} is not a standard shaft size in the tables at hand. The nearest inch sizes:`,
    rowsMarkdown(
      INCH_ENDS,
      [below, above].filter(row => row !== undefined),
    ),
    beyond && `For shafts of 6 to 8 in only the taper is known: ${taper(largeInchTaper.taper)}.`,
  );
}

/** `1:16`. */
export function taper(change: number): string {
  return `1:${Number((1 / change).toFixed(2))}`;
}
