import { type FlywheelSize, flywheelSizes } from '@tailshaft/mechanics';
import { inches, millimetres } from './figures.js';
import type { StandardTable } from './table.js';

/** Flywheels for a clutch or flexible coupling as SAE J620 prints them. */
export const FLYWHEELS: StandardTable<FlywheelSize> = {
  title: 'flywheel size',
  nameOf: row => row.size,
  rows: flywheelSizes,
  columns: [
    { head: 'metric name', cell: row => String(row.metricSize) },
    { head: 'pilot', cell: row => inches(row.pilot) },
    { head: 'bolt circle', cell: row => inches(row.boltCircle) },
    { head: 'clear of the recess', cell: row => inches(row.innerClearance) },
    { head: 'housing depth', cell: row => inches(row.housingDepth) },
    {
      head: 'face to housing face',
      cell: row => (row.couplingReach === undefined ? undefined : inches(row.couplingReach)),
    },
    {
      head: 'pilot bearing bore',
      cell: row => (row.pilotBearingBore === undefined ? undefined : millimetres(row.pilotBearingBore)),
    },
    { head: 'holes', cell: row => String(row.holes) },
    { head: 'thread', cell: row => row.thread },
  ],
  sourcesOf: row => [
    { source: row.source },
    ...(row.holesSource === row.source ? [] : [{ figures: 'holes and thread', source: row.holesSource }]),
  ],
};
