import type { Arrangement, ShaftLine } from '@tailshaft/drivetrain';
import type { Value } from '@tailshaft/mechanics';
import { inBoth } from '../both-units.js';
import { type Block, list, paragraph, section, type Table, table } from '../document/blocks.js';
import { quiet, type Text } from '../document/text.js';
import { linesFromAft } from '../drawing/lines-from-aft.js';
import { trialsSection } from '../sections/trials.js';
import { shaftTurn, waysOfRunning } from '../sections/ways-of-running.js';
import type { Sheet } from '../sheet.js';
import { closing } from './closing.js';
import { arrangementWords, lastArrangements } from './proposals.js';
import { standsSection } from './stands.js';

/** For the trial crew: blank where it is to be read, with what to expect and where to stop beside it. */
export function trialFormBlocks(sheet: Sheet): Block[] {
  return [
    standsSection(sheet, 'trial-form'),
    stateForm(),
    ...lastArrangements(sheet.vessel).flatMap(after => [
      dockTest(sheet, after),
      ...after.lines.flatMap(waysOfRunning).map(line => runForm(sheet, line)),
    ]),
    drills(),
    ...[trialsSection(sheet)].filter(one => one !== undefined),
    ...closing(sheet, 'trial-form', ['Trial leader', 'Coxswain', 'Owner', 'Class or flag']),
  ];
}

const form = (shown: Table): Table => ({ ...shown, form: true });
const cells = (...titles: string[]) => titles.map(title => ({ title, wide: true }));

function stateForm(): Block {
  const rows = [
    'Date, place, persons aboard',
    'Displacement, tanks, ballast, draft forward and aft',
    'Depth of water, current, wind and sea',
    'Hull and propellers: clean or foul, last docked',
    'Tachometers and instruments: checked against',
    'Fuel, temperature of air, sea and engine room',
  ];
  return section('state', 'State of the vessel', [
    form(
      table(
        'Written down before the first run',
        cells('What', 'As run'),
        rows.map(row => [row, '']),
      ),
    ),
  ]);
}

/** Each side alone, made fast, at low power, from every station. */
function dockTest(sheet: Sheet, after: Arrangement): Block {
  const declared = (sheet.vessel.helm?.stations ?? []).map(one => one.name);
  const stations = declared.length > 0 ? declared : ['station 1', 'station 2'];
  // A motor may turn the shaft the other way than the engine does: every mode is seen.
  const rows = after.lines.flatMap(waysOfRunning).flatMap(line => {
    const { rotation } = sheet.analysis(line);
    return stations.flatMap(station =>
      (['ahead', 'astern'] as const).map((lever): Text[] => [
        `${line.name}, ${station}`,
        lever,
        shaftTurn(rotation, lever),
        lever,
        '',
        '',
      ]),
    );
  });
  return section(`dock-${after.path}`, `Direction at the dock: ${arrangementWords(after)}`, [
    paragraph(
      'Made fast, everybody clear of shafts, low power, one side at a time, the other in neutral. Somebody watches the shaft and says which way it turns, seen from aft looking forward. Stop at the first line that does not agree.',
    ),
    {
      block: 'figure',
      svg: linesFromAft(sheet, after),
      caption: 'What is expected with the lever ahead, seen from aft, looking forward.',
    },
    form(
      table(
        'Every side from every control station; write further stations below',
        [
          {
            title: after.lines.some(one => one.modes?.length) ? 'Line, mode and station' : 'Line and station',
          },
          { title: 'Lever' },
          { title: 'Shaft, expected' },
          { title: 'Push, expected' },
          { title: 'Shaft, seen', wide: true },
          { title: 'Push, seen; initials', wide: true },
        ],
        [...rows, ['', '', '', '', '', ''], ['', '', '', '', '', '']],
      ),
    ),
  ]);
}

/** What each run should read, and what must not be passed. */
function runForm(sheet: Sheet, line: ShaftLine): Block {
  const analysis = sheet.analysis(line);
  const points = analysis.operatingPoints.filter(
    one => one.name !== 'full load' && one.name !== 'peak torque',
  );
  const full = analysis.propulsion?.value?.full;
  const mover = line.engine || !line.motor ? 'Engine' : 'Motor';
  const rows: Text[][] = points.map(point => {
    const shaft = point.stations.at(-1);
    const speed = point.name === 'idle ahead' ? analysis.idleVesselSpeed.value : undefined;
    return [point.name, said(point.engineSpeed), '', said(shaft?.speed), '', said(speed), ''];
  });
  if (full?.applies)
    rows.push([
      'full throttle, predicted',
      said(full.engineSpeed),
      '',
      quiet('—'),
      '',
      said(full.vesselSpeed),
      '',
    ]);
  for (const name of ['no load, lever neutral', 'part throttle', 'full throttle, reciprocal run'])
    rows.push([name, '', '', '', '', '', '']);
  return section(`runs-${line.path}${line.mode ? `-${line.mode.name}` : ''}`, `Runs: ${line.name}`, [
    form(
      table(
        `${line.name}: expected beside what is read`,
        [
          { title: 'Run', wide: true },
          { title: `${mover}, expected`, numeric: true },
          { title: `${mover}, read` },
          { title: 'Shaft, expected', numeric: true },
          { title: 'Shaft, read' },
          { title: 'Speed, expected', numeric: true },
          { title: 'Speed, read' },
        ],
        rows,
      ),
    ),
    form(table(`${line.name}: limits not to be passed`, cells('Limit', 'Declared', 'Read'), limits(line))),
  ]);
}

function limits(line: ShaftLine): Text[][] {
  const rows: (readonly [string, Value | undefined])[] = [
    ...(line.engine || !line.motor
      ? ([
          ['Engine speed, governed no-load', line.engine?.highIdle?.value],
          ['Engine speed, low idle', line.engine?.lowIdle?.value],
        ] as const)
      : []),
    ...(line.motor ? ([['Motor speed, at most', line.motor.topSpeed?.value]] as const) : []),
    ['Gear input speed, at most', line.gear?.inputSpeedMax?.value],
    ['Gear input speed, at least', line.gear?.inputSpeedMin?.value],
    ['Gear oil pressure, low', line.gear?.oilPressure?.value?.low],
    ['Gear oil pressure, high', line.gear?.oilPressure?.value?.high],
  ];
  return [
    ...rows.map(([what, value]): Text[] => [what, said(value), '']),
    ['Coolant, gear oil and exhaust temperature', quiet('as the makers say'), ''],
  ];
}

function said(value: Value | undefined): Text {
  return value ? inBoth(value) : quiet('not known');
}

/** Common practice, no source: what a crew has to have seen before the vessel is handed over. */
function drills(): Block {
  return section('drills', 'Drills', [
    list(
      [
        'Full ahead to stop, and to full astern: time, distance, engine did not stall',
        'Full astern to full ahead: time, engine did not stall',
        'Loss of control of one side: thrust taken off from the other station, then by the engine stop',
        'Control passed between stations, in neutral and in gear',
        'Indication at the helm: direction of thrust, gear oil pressure and temperature, alarms tried',
        'Engine stop works apart from the speed lever, from every station',
        'Start is blocked in gear',
        'Smoke at full throttle: none, light, heavy; air cleaner and back pressure read',
      ],
      'boxes',
    ),
  ]);
}
