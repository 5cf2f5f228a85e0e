import { type Arrangement, type LineAnalysis, type ShaftLine, scaledDemand } from '@tailshaft/drivetrain';
import { findUnit, fromSI, given, torqueFromPower, type Value } from '@tailshaft/mechanics';
import { type Block, type Figure, section } from '../document/blocks.js';
import { type ChartSpec, chart, type Series, type XY } from '../drawing/chart.js';
import type { Sheet } from '../sheet.js';

/** Power and torque over engine speed. Lines whose charts are the same share one. */
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
  const names = lines.map(line => line.name).join(' and ');
  const first = lines[0]!.path;
  const figure = (spec: ChartSpec, caption: string): Figure => ({
    block: 'figure',
    svg: chart(spec),
    caption,
  });
  const xTitle = 'engine speed, rpm';
  return [
    figure(
      {
        id: `power-${first}`,
        title: `${names}: power over engine speed`,
        xTitle,
        yTitle: 'power, kW',
        series: power,
      },
      `${names}: power at the crankshaft. The propeller curve is the propeller law scaled through the rated point: what a propeller that just loads the engine there would ask. It is no prediction of the one fitted.`,
    ),
    figure(
      {
        id: `torque-${first}`,
        title: `${names}: torque over engine speed`,
        xTitle,
        yTitle: 'torque, N·m',
        series: torque,
      },
      `${names}: torque at the crankshaft, with what the gear may carry at its input where that was judged.`,
    ),
  ];
}

function seriesOf(sheet: Sheet, line: ShaftLine): ChartSeries | undefined {
  const analysis = sheet.analysis(line);
  const rated = analysis.rated.value;
  const curve = analysis.fullLoad;
  const points = [...curve, ...(rated ? [rated] : [])].filter(one =>
    usable(one.speed, one.power, one.torque),
  );
  if (!rated || points.length === 0 || !usable(rated.speed, rated.power, rated.torque)) return undefined;
  const sorted = onePerSpeed(points.sort((one, other) => one.speed.si - other.speed.si));
  const demand = demandCurve(sheet, analysis);
  const operating = [rated, analysis.peakTorque.value].filter(one => one !== undefined);
  const capacity = gearCapacity(sheet, line);
  const fastest = Math.max(
    rated.speed.si,
    analysis.governedSpeed.value?.si ?? 0,
    ...sorted.map(one => one.speed.si),
  );
  return {
    power: [
      {
        name: 'engine, full load',
        kind: 'solid',
        points: sorted.map(one => [rpm(one.speed), kW(one.power)]),
      },
      {
        name: 'propeller law through rated point',
        kind: 'dashed',
        points: demand.map(([speed, power]) => [rpm(speed), kW(power)]),
      },
      {
        name: 'rated power, peak torque',
        kind: 'marks',
        points: operating.map(one => [rpm(one.speed), kW(one.power)]),
      },
      ...idleMark(analysis, demand),
    ],
    torque: [
      {
        name: 'engine, full load',
        kind: 'solid',
        points: sorted.map(one => [rpm(one.speed), Nm(one.torque)]),
      },
      {
        name: 'propeller law through rated point',
        kind: 'dashed',
        points: demand.map(([speed, power]) => [rpm(speed), Nm(torqueFromPower({ power, speed }))]),
      },
      {
        name: 'rated power, peak torque',
        kind: 'marks',
        points: operating.map(one => [rpm(one.speed), Nm(one.torque)]),
      },
      ...(capacity === undefined
        ? []
        : [
            {
              name: 'gear may carry',
              kind: 'level' as const,
              points: [
                [0, capacity],
                [rpmOf(fastest), capacity],
              ] as XY[],
            },
          ]),
    ],
  };
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
