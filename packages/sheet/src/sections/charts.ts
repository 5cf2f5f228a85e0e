import {
  type Arrangement,
  type LineAnalysis,
  predictedPoints,
  type ShaftLine,
  scaledDemand,
} from '@tailshaft/drivetrain';
import { findUnit, fromSI, given, listed, torqueFromPower, type Value } from '@tailshaft/mechanics';
import { type Block, type Figure, section } from '../document/blocks.js';
import { type ChartSpec, chart, type Series, type XY } from '../drawing/chart.js';
import type { Sheet } from '../sheet.js';
import { motorCurve } from './motor-curve.js';
import { moverOf } from './mover-of.js';

/** Power and torque over the speed of engine or motor. Lines whose charts are the same share one. */
export function chartsSection(sheet: Sheet, arrangement: Arrangement): Block | undefined {
  const drawn = new Map<string, { lines: ShaftLine[]; series: ChartSeries }>();
  for (const line of arrangement.lines) {
    const series = seriesOf(sheet, line);
    if (!series) continue;
    const key = JSON.stringify(series);
    const had = drawn.get(key);
    if (had) had.lines.push(line);
    else drawn.set(key, { lines: [line], series });
  }
  if (drawn.size === 0) return undefined;
  return section(
    `charts-${arrangement.path}`,
    'Power and torque',
    [...drawn.values()].map(({ lines, series }) => ({ block: 'row', figures: figures(lines, series) })),
  );
}

interface ChartSeries {
  readonly power: readonly Series[];
  readonly torque: readonly Series[];
}

function figures(lines: readonly ShaftLine[], { power, torque }: ChartSeries): Figure[] {
  const names = listed(lines.map(line => line.name));
  const first = lines[0]!.path;
  const figure = (spec: ChartSpec, caption: string): Figure => ({
    block: 'figure',
    svg: chart(spec),
    caption,
  });
  const mover = moverOf(lines[0]!);
  const where = mover === 'engine' ? 'at the crankshaft' : 'at the shaft of the motor';
  const predicted = power.some(one => one.name === PREDICTED)
    ? ' The propeller fitted is drawn as the propulsion method predicts it for this hull.'
    : ' It is not a prediction of the propeller fitted.';
  const xTitle = `${mover} speed, rpm`;
  return [
    figure(
      {
        id: `power-${first}`,
        title: `${names}: power over ${mover} speed`,
        xTitle,
        yTitle: 'power, kW',
        series: power,
      },
      `${names}: power ${where}. The propeller law is scaled through the rated point: the demand of a propeller that just loads the ${mover} there.${predicted}`,
    ),
    figure(
      {
        id: `torque-${first}`,
        title: `${names}: torque over ${mover} speed`,
        xTitle,
        yTitle: 'torque, N·m',
        series: torque,
      },
      `${names}: torque ${where}${torque.some(one => one.name === GEAR) ? ', with what the gear may carry at its input' : ''}.`,
    ),
  ];
}

function seriesOf(sheet: Sheet, line: ShaftLine): ChartSeries | undefined {
  const analysis = sheet.analysis(line);
  const rated = analysis.rated.value;
  const curve = [
    ...analysis.fullLoad,
    ...(moverOf(line) === 'motor' ? motorCurve(line, analysis) : []),
    ...(rated ? [rated] : []),
  ];
  const points = curve.filter(one => usable(one.speed, one.power, one.torque));
  if (!rated || points.length === 0 || !usable(rated.speed, rated.power, rated.torque)) return undefined;
  const sorted = onePerSpeed(points.sort((one, other) => one.speed.si - other.speed.si));
  const demand = demandCurve(sheet, analysis);
  // A motor has one torque up to its base speed: the point of its greatest torque is no point to mark.
  const peak = moverOf(line) === 'motor' ? undefined : analysis.peakTorque.value;
  const operating = [rated, peak].filter(one => one !== undefined);
  const marked = peak ? 'rated power, peak torque' : 'rated power';
  const fullLoad = `${moverOf(line)}, full load`;
  const asked = predictedLoad(analysis);
  const capacity = gearCapacity(sheet, line);
  const fastest = Math.max(
    rated.speed.si,
    analysis.governedSpeed.value?.si ?? 0,
    ...sorted.map(one => one.speed.si),
  );
  return {
    power: [
      {
        name: fullLoad,
        kind: 'solid',
        points: sorted.map(one => [rpm(one.speed), kW(one.power)]),
      },
      {
        name: 'propeller law through rated point',
        kind: 'dashed',
        points: demand.map(([speed, power]) => [rpm(speed), kW(power)]),
      },
      {
        name: marked,
        kind: 'marks',
        points: operating.map(one => [rpm(one.speed), kW(one.power)]),
      },
      ...idleMark(analysis, demand),
      ...predicted(asked.map(one => [one.speed, (one.torque * one.si) / 1000])),
    ],
    torque: [
      {
        name: fullLoad,
        kind: 'solid',
        points: sorted.map(one => [rpm(one.speed), Nm(one.torque)]),
      },
      {
        name: 'propeller law through rated point',
        kind: 'dashed',
        points: demand.map(([speed, power]) => [rpm(speed), Nm(torqueFromPower({ power, speed }))]),
      },
      {
        name: marked,
        kind: 'marks',
        points: operating.map(one => [rpm(one.speed), Nm(one.torque)]),
      },
      ...(capacity === undefined
        ? []
        : [
            {
              name: GEAR,
              kind: 'level' as const,
              points: [
                [0, capacity],
                [rpmOf(fastest), capacity],
              ] as XY[],
            },
          ]),
      ...predicted(asked.map(one => [one.speed, one.torque])),
    ],
  };
}

const PREDICTED = 'propeller fitted, predicted';
const GEAR = 'gear may carry';

/** What the propeller fitted asks of the engine where propulsion is worked out and applies. */
function predictedLoad(analysis: LineAnalysis) {
  return predictedPoints(analysis).flatMap(({ run }) => {
    if (!run.applies || !run.torqueAvailable || !run.loadFraction) return [];
    const torque = run.loadFraction.si * run.torqueAvailable.si;
    return [{ speed: rpm(run.engineSpeed), si: run.engineSpeed.si, torque }];
  });
}

function predicted(points: readonly XY[]): Series[] {
  return points.length < 2 ? [] : [{ name: PREDICTED, kind: 'dotted', points }];
}

/** The low idle, where the propeller law is followed down to. */
function idleMark(
  analysis: LineAnalysis,
  demand: readonly (readonly [Value<'rotational speed'>, Value<'power'>])[],
): Series[] {
  const first = demand[0];
  return analysis.idleSpeed.value && first
    ? [{ name: 'low idle', kind: 'rings', points: [[rpm(first[0]), kW(first[1])]] }]
    : [];
}

/** The propeller law from idle to rated speed. */
function demandCurve(
  sheet: Sheet,
  analysis: LineAnalysis,
): (readonly [Value<'rotational speed'>, Value<'power'>])[] {
  const rated = analysis.rated.value!;
  const from = Math.min(analysis.idleSpeed.value?.si ?? rated.speed.si * 0.25, rated.speed.si * 0.9);
  return Array.from({ length: 15 }, (_, index) => {
    const speed = given(
      'engine speed',
      'ω',
      'rotational speed',
      from + ((rated.speed.si - from) * index) / 14,
    );
    return [speed, scaledDemand(rated.power, rated.speed, speed, sheet.vessel)] as const;
  });
}

/** What the judged rating of the gear allows at its input. */
function gearCapacity(sheet: Sheet, line: ShaftLine): number | undefined {
  const judged = sheet.ofLine(line).find(one => one.rule === 'capacity/gear-input-torque' && one.capacity);
  return judged?.capacity?.dimension === 'torque' ? Nm(judged.capacity as Value<'torque'>) : undefined;
}

function onePerSpeed<P extends { readonly speed: Value }>(points: readonly P[]): P[] {
  return points.filter((one, index) => index === 0 || one.speed.si > points[index - 1]!.speed.si * 1.0001);
}

function usable(...values: readonly Value[]): boolean {
  return values.every(one => Number.isFinite(one.si) && one.si > 0);
}

const RPM = findUnit('rpm')!;
const rpmOf = (si: number) => fromSI(si, RPM);
const rpm = (value: Value<'rotational speed'>) => rpmOf(value.si);
const kW = (value: Value<'power'>) => value.si / 1000;
const Nm = (value: Value<'torque'>) => value.si;
