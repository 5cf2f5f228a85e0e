import {
  type BackSpan,
  bareReadings,
  differenceWords,
  isOfLine,
  type PlacedRun,
  possibleModes,
  runsOf,
  type ShaftLine,
  type Trial,
  type TrialReading,
  trialReadings,
  workedBack,
} from '@tailshaft/drivetrain';
import type { Value } from '@tailshaft/mechanics';
import { type Block, paragraph, section, table } from '../document/blocks.js';
import { quiet, separated, strong, type Text, warning } from '../document/text.js';
import type { Sheet } from '../sheet.js';

/** Each trial sheet: its state, and its readings beside what the spec predicts. */
export function trialsSection(sheet: Sheet): Block | undefined {
  const trials = sheet.vessel.trials ?? [];
  if (trials.length === 0) return undefined;
  const runs = runsOf({ vessel: sheet.vessel });
  return section(
    'trials',
    'Trials',
    trials.flatMap((trial, index) => trialBlocks(sheet, trial, index, runs)),
  );
}

function trialBlocks(sheet: Sheet, trial: Trial, index: number, runs: readonly PlacedRun[]): Block[] {
  const title = `${trial.name || `Trial ${index + 1}`}${trial.dated ? `, ${trial.dated}` : ''}`;
  const own = runs.filter(one => one.trial === trial);
  return [
    table(
      `${title}: state`,
      [{ title: 'Condition' }, { title: 'As run', wide: true }],
      STATE.map(([what, field]) => [what, trial[field]?.written ?? warning('? not stated')]),
    ),
    own.length > 0
      ? table(
          `${title}: readings and prediction`,
          [
            { title: 'Run', wide: true },
            { title: 'Quantity' },
            { title: 'Reading', numeric: true },
            { title: 'Predicted', numeric: true },
            { title: 'Difference', numeric: true },
          ],
          own.flatMap(one => rowsOf(sheet, one)),
        )
      : paragraph(warning('No run recorded, so there are no readings.')),
    ...stepsOf(trial, title),
    ...backOf(sheet, own, title),
  ];
}

const STATE = [
  ['displacement', 'displacement'],
  ['hull and propeller', 'bottom'],
  ['tachometers', 'tachometers'],
  ['depth of water', 'waterDepth'],
  ['weather', 'weather'],
  ['fuel aboard', 'fuelAboard'],
  ['people aboard', 'people'],
  ['ballast', 'ballast'],
  ['fuel and air', 'fuelAndAir'],
  ['direction at the dock', 'dockDirection'],
  ['astern and stop', 'sternAndStop'],
] as const;

function rowsOf(sheet: Sheet, one: PlacedRun): Text[][] {
  const { run } = one;
  const name: Text = separated(
    ', ',
    strong(run.line),
    ...(run.mode ? [run.mode.written] : []),
    run.at?.written ?? warning('? point not stated'),
  );
  if (!isOfLine(one)) return [[name, warning('? no line of that name'), '', '', '']];
  const line = lineRun(one);
  if (!line) return [...asRead(run, name)];
  const analysis = sheet.analysis(line);
  const computed = trialReadings(run, analysis).map(one => [
    name,
    one.what,
    one.measured?.written ?? warning('? open'),
    predictedText(sheet, one, line.path, analysis.tell),
    one.difference ? differenceWords(one.difference.si) : quiet('—'),
  ]);
  return [...computed, ...bareRows(run, name)];
}

/** The line in the one mode in which it was run; nothing where the run leaves that open. */
function lineRun(one: PlacedRun): ShaftLine | undefined {
  const modes = isOfLine(one) ? possibleModes(one) : [];
  return modes.length === 1 ? modes[0] : undefined;
}

/** Readings of a run of which nobody knows the mode, beside no prediction. */
function asRead(run: PlacedRun['run'], name: Text): Text[][] {
  const read = [
    ['engine speed', run.engineSpeed],
    ['shaft speed', run.shaftSpeed],
    ['speed', run.speed],
    ['shaft power', run.shaftPower],
  ] as const;
  const rows = read.flatMap(([what, fact]): Text[][] =>
    fact ? [[name, what, fact.written, warning('? needs the mode in which it was run'), quiet('—')]] : [],
  );
  return [...rows, ...bareRows(run, name)];
}

function bareRows(run: PlacedRun['run'], name: Text): Text[][] {
  return bareReadings(run).map(one => [name, one.what, one.written, quiet('not predicted'), quiet('—')]);
}

function predictedText(
  sheet: Sheet,
  { predicted, missing }: TrialReading,
  under: string,
  tell: ReturnType<Sheet['analysis']>['tell'],
): Text {
  if (predicted) return sheet.number(predicted, under, tell(predicted));
  if (missing.length > 0) return separated(' ', warning('? needs'), missing.map(one => one.what).join('; '));
  return quiet('not predicted');
}

/** What was tried at the dock and drilled. */
function stepsOf(trial: Trial, title: string): Block[] {
  const steps = (trial.docks ?? []).map((one): Text[] => [
    `dock ${one.line}${one.station ? `, ${one.station.written}` : ''}`,
    [one.ahead && `lever ahead ${one.ahead.written}`, one.astern && `lever astern ${one.astern.written}`]
      .concat(
        one.neutral && `neutral ${one.neutral.written}`,
        one.shaftTurns && `shaft turns ${one.shaftTurns.written}`,
      )
      .filter(Boolean)
      .join('; '),
  ]);
  const drilled = (trial.drills ?? []).map((one): Text[] => [
    `drill ${one.what}`,
    [one.result, one.engineSpeed, one.time, one.distance, one.remark]
      .flatMap(fact => (fact ? [fact.written] : []))
      .join('; '),
  ]);
  const rows = [...steps, ...drilled];
  return rows.length > 0
    ? [table(`${title}: dock steps and drills`, [{ title: 'Step' }, { title: 'As run', wide: true }], rows)]
    : [];
}

const LIMITS =
  'A resistance correlation holds for the displacement, bottom and water of its trial, to about a fifth beyond the speeds that were read, and ' +
  'is no better than the thrust and wake that the series and the method give. Beyond that the prediction says so.';

/** What the readings say when they are worked backwards: no prediction, and good as far as its range says. */
function backOf(sheet: Sheet, own: readonly PlacedRun[], title: string): Block[] {
  const rows = own.flatMap(one => {
    const { run } = one;
    const line = lineRun(one);
    if (!line) return [];
    const back = workedBack(run, sheet.analysis(line));
    const name: Text = separated(', ', strong(run.line), run.at?.written ?? '');
    const value = (what: string, one: Value | undefined): Text[][] =>
      one ? [[name, what, sheet.number(one, line.path)]] : [];
    const span = (what: string, one: BackSpan | undefined): Text[][] =>
      one
        ? [
            [
              name,
              what,
              separated(' to ', sheet.number(one.low, line.path), sheet.number(one.high, line.path)),
            ],
          ]
        : [];
    return [
      ...value('apparent slip', back.slip),
      ...span(`demand at rated speed (${back.range})`, back.demand),
      ...span('ratio for rated speed', back.ratio),
      ...span('pitch for rated speed', back.pitch),
      ...span('diameter for rated speed', back.diameter),
      ...value('resistance met, over that of the method', back.correlation),
      ...value('the same by the power read at the shaft', back.byPower?.correlation),
      ...value('wake fraction by the power read', back.byPower?.wakeFraction),
    ];
  });
  return rows.length > 0
    ? [
        table(
          `${title}: worked back from the readings`,
          [{ title: 'Run' }, { title: 'Figure', wide: true }, { title: 'Value' }],
          rows,
        ),
        ...(own.some(one => one.run.speed) ? [paragraph(quiet(LIMITS))] : []),
      ]
    : [];
}
