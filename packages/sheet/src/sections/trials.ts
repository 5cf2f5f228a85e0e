import {
  bareReadings,
  differenceWords,
  type PlacedRun,
  runsOf,
  type Trial,
  type TrialReading,
  trialReadings,
} from '@tailshaft/drivetrain';
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
  ];
}

const STATE = [
  ['displacement', 'displacement'],
  ['hull and propeller', 'bottom'],
  ['tachometers', 'tachometers'],
  ['depth of water', 'waterDepth'],
  ['weather', 'weather'],
  ['direction at the dock', 'dockDirection'],
  ['astern and stop', 'sternAndStop'],
] as const;

function rowsOf(sheet: Sheet, { run, line }: PlacedRun): Text[][] {
  const name: Text = separated(', ', strong(run.line), run.at?.written ?? warning('? point not stated'));
  if (!line) return [[name, warning('? no line of that name'), '', '', '']];
  const analysis = sheet.analysis(line);
  const computed = trialReadings(run, analysis).map(one => [
    name,
    one.what,
    one.measured?.written ?? warning('? open'),
    predictedText(sheet, one, line.path, analysis.tell),
    one.difference ? differenceWords(one.difference.si) : quiet('—'),
  ]);
  const bare = bareReadings(run).map(one => [
    name,
    one.what,
    one.written,
    quiet('not predicted'),
    quiet('—'),
  ]);
  return [...computed, ...bare];
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
