import type { Arrangement, LineAnalysis, ShaftLine } from '@tailshaft/drivetrain';
import { turnFromAft } from '@tailshaft/mechanics';
import { type Block, section, type Table, table } from '../document/blocks.js';
import { quiet, separated, type Text, together, warning } from '../document/text.js';
import type { Sheet } from '../sheet.js';
import { turnWords } from '../words.js';
import { modesTable } from './ways-of-running.js';

/** Which way everything turns, ahead and astern: side by side for the lines, then station by station. */
export function rotationSection(sheet: Sheet, arrangement: Arrangement): Block {
  return section(`rotation-${arrangement.path}`, 'Rotation', [
    linesTable(sheet, arrangement),
    modesTable(sheet, arrangement),
    ...arrangement.lines.map(line => stationsTable(sheet, line)),
  ]);
}

/** One column a line: what its sides must agree in, and where they differ. */
export function linesTable(sheet: Sheet, arrangement: Arrangement): Table {
  const lines = arrangement.lines;
  return table(
    'The lines side by side; every turn is seen from aft, looking forward',
    [{ title: '' }, ...lines.map(line => ({ title: line.name, wide: true }))],
    ROWS.map(([title, tell]) => [title, ...lines.map(line => tell(sheet.analysis(line), line))]),
  );
}

type Tell = (analysis: LineAnalysis, line: ShaftLine) => Text;

const ROWS: readonly (readonly [string, Tell])[] = [
  ['Side', (_, line) => line.side?.value ?? unknown('side not declared')],
  [
    'Engine or motor, as declared',
    (_, line) => (line.engine ?? line.motor)?.rotation?.written ?? unknown('rotation not declared'),
  ],
  [
    'Engine or motor, from aft',
    ({ rotation }) =>
      rotation.either ? 'either way' : turnWords(rotation.source && turnFromAft(rotation.source)),
  ],
  ['Clutch ahead', ({ rotation }, line) => clutchWords(rotation.clutch, line)],
  ['Shaft, lever ahead', ({ rotation }) => turnWords(rotation.ahead && turnFromAft(rotation.ahead))],
  ['Shaft, lever astern', ({ rotation }) => turnWords(rotation.astern && turnFromAft(rotation.astern))],
  [
    'Hand that drives ahead',
    ({ rotation, hand }) =>
      hand?.state === 'either' ? 'either' : (rotation.neededHand ?? unknown('cannot tell')),
  ],
  ['Propeller fitted', ({ hand }, line) => fittedHand(hand, line)],
  [
    'Turning',
    ({ rotation }, line) =>
      rotation.turning ?? (line.side?.value === 'centre' ? 'on the centre line' : unknown('cannot tell')),
  ],
  [
    'Pump must be set for',
    ({ rotation }, line) =>
      line.gear?.inputRotation?.value?.word === 'either by pump index'
        ? (rotation.neededPump ?? unknown('cannot tell'))
        : line.gear
          ? 'no setting declared'
          : 'no gear',
  ],
  ['Pump is set for', (_, line) => line.gear?.pumpIndex?.written ?? quiet('not stated')],
];

function clutchWords(clutch: LineAnalysis['rotation']['clutch'], line: ShaftLine): Text {
  if (!line.gear) return 'no gear';
  if (!clutch) return unknown('cannot tell');
  const may = clutch.ahead?.value;
  return separated(
    ', ',
    `clutch ${clutch.name}`,
    clutch.output && `output ${clutch.output.written}`,
    may === 'continuous'
      ? 'may run ahead continuously'
      : may === 'never'
        ? warning('must never carry full power ahead')
        : unknown('whether it may run ahead is not stated'),
  );
}

function fittedHand(hand: LineAnalysis['hand'], line: ShaftLine): Text {
  if (!line.propeller) return 'no propeller';
  if (!hand?.hand) return unknown('hand not known');
  const words = `${hand.hand}-hand`;
  if (hand.state === 'wrong') return warning(`${words}: drives ASTERN with the lever ahead`);
  return hand.state === 'cannot tell'
    ? [words, ', ', unknown('cannot tell whether it fits')]
    : `${words}, fits`;
}

function stationsTable(sheet: Sheet, line: ShaftLine): Table {
  const { rotation } = sheet.analysis(line);
  return table(
    `${line.name}, station by station`,
    [
      { title: 'Station' },
      { title: 'Ahead' },
      { title: 'Astern' },
      { title: 'Reason', wide: true },
      { title: 'Declared' },
    ],
    rotation.steps.map((step, index) => [
      step.station,
      together(turnWords(step.turn)),
      rotation.asternSteps.length > 0
        ? together(turnWords(rotation.asternSteps[index]?.turn))
        : quiet('not known'),
      step.text.replace(`${step.station}: `, ''),
      sheet.place(step.at) ?? '',
    ]),
  );
}

const unknown = (text: string): Text => warning(`? ${text}`);
