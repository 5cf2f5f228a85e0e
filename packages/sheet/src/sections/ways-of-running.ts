import { type Arrangement, type LineAnalysis, runningLines, type ShaftLine } from '@tailshaft/drivetrain';
import { percent, turnFromAft, type Value } from '@tailshaft/mechanics';
import { inBoth } from '../both-units.js';
import { type Table, table } from '../document/blocks.js';
import { quiet, type Text, together, warning } from '../document/text.js';
import type { Sheet } from '../sheet.js';
import { turnWords } from '../words.js';

/** A line once for each of its modes, as far as they can be told; the line itself where it says none. */
export function waysOfRunning(line: ShaftLine): readonly ShaftLine[] {
  const running = runningLines(line);
  return running && 'lines' in running ? running.lines : [line];
}

/** What each mode of the lines of an arrangement gives; nothing where no line has modes. */
export function modesTable(sheet: Sheet, { lines }: Arrangement): Table | undefined {
  const rows = lines.flatMap(line => {
    const running = runningLines(line);
    if (!running) return [];
    if ('unclear' in running)
      return [[line.name, warning(`cannot tell ${running.unclear.what}`), ...COLUMNS.map(() => '')]];
    return running.lines.map(one => [
      one.name,
      one.mode?.drivenBy?.written ?? quiet('not stated'),
      ...COLUMNS.map(({ tell }) => tell(sheet, one)),
    ]);
  });
  if (rows.length === 0) return undefined;
  const charging = lines.some(line => line.modes?.some(one => one.generatorLoad));
  return table(
    `Modes: what drives in each, and what it gives; every other table shows the line in the first of them${charging ? '; the torque is that with the generator off' : ''}`,
    [
      { title: 'Mode', wide: true },
      { title: 'Driven by' },
      ...COLUMNS.map(({ title, words }) => ({ title, ...(words ? {} : { numeric: true }) })),
    ],
    rows,
  );
}

interface Column {
  readonly title: string;
  readonly words?: true;
  readonly tell: (sheet: Sheet, line: ShaftLine) => Text;
}

const COLUMNS: readonly Column[] = [
  {
    title: 'Shaft ahead',
    words: true,
    tell: (sheet, line) => shaftTurn(sheet.analysis(line).rotation, 'ahead'),
  },
  {
    title: 'Shaft, rated',
    tell: (sheet, line) => figure(atRated(sheet, line)?.shaft?.speed),
  },
  {
    title: 'Torque, rated',
    tell: (sheet, line) => figure(atRated(sheet, line)?.shaft?.torque),
  },
  {
    title: 'Propeller load',
    tell: (sheet, line) => {
      const demand = sheet.analysis(line).propulsion?.value?.demand;
      return demand ? percent(demand.si) : quiet('not known');
    },
  },
  {
    title: 'Speed, full',
    tell: (sheet, line) => {
      const full = sheet.analysis(line).propulsion?.value?.full;
      return figure(full?.applies ? full.vesselSpeed : undefined);
    },
  },
];

/** A shaft that a motor of no fixed rotation drives turns as the drive is set. */
export function shaftTurn(rotation: LineAnalysis['rotation'], lever: 'ahead' | 'astern'): Text {
  const sense = rotation[lever];
  if (sense) return together(turnWords(turnFromAft(sense)));
  return rotation.either ? 'as the drive is set' : warning('cannot tell');
}

function atRated(sheet: Sheet, line: ShaftLine) {
  const analysis = sheet.analysis(line);
  return analysis.rated.value && analysis.loads(analysis.rated.value);
}

function figure(value: Value | undefined): Text {
  return value ? inBoth(value) : quiet('not known');
}
