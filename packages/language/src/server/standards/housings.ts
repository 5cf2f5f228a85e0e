import { type FlywheelHousing, flywheelHousings, listed } from '@tailshaft/mechanics';
import { inches, inchLimits, millimetres } from './figures.js';
import type { StandardTable } from './table.js';

/** Flywheel housings as SAE J617 prints them. */
export const HOUSINGS: StandardTable<FlywheelHousing> = {
  title: 'flywheel housing',
  nameOf: row => `SAE-${row.size}`,
  rows: flywheelHousings,
  columns: [
    { head: 'pilot bore', cell: row => inchLimits(row.pilotBore) },
    { head: 'outside diameter', cell: row => inches(row.outsideDiameter) },
    { head: 'bolt circle', cell: row => inches(row.boltCircle) },
    { head: 'holes', cell: row => String(row.holes) },
    {
      head: 'thread',
      cell: row =>
        listed(
          [row.inchThread, row.metricThread].filter(one => one !== undefined),
          'or',
        ),
    },
    { head: 'depth to crankshaft flange', cell: row => inches(row.depth) },
    {
      head: 'bore run-out',
      cell: row => (row.boreRunOut === undefined ? undefined : millimetres(row.boreRunOut)),
    },
  ],
  sourcesOf: row => [{ source: row.source }],
};
