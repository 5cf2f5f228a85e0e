import type { LoadLine, LoadLines, LoadPoint, StudyResult } from '@tailshaft/drivetrain';
import { findUnit, fromSI } from '@tailshaft/mechanics';
import type { Block, Figure } from '../document/blocks.js';
import { chart, type Series, type XY } from '../drawing/chart.js';

/** What the candidates ask of the engine, over its curve: one chart for each ratio, one line for each pitch. */
export function loadLineCharts(result: StudyResult): Block | undefined {
  const { loadLines = [] } = result;
  return loadLines.length > 0
    ? { block: 'row', figures: loadLines.map((one, at) => figure(result, one, at)) }
    : undefined;
}

function figure({ study, arrangement }: StudyResult, shown: LoadLines, at: number): Figure {
  const { ratio, varied, line, fullLoad, lines } = shown;
  const full = lines.flatMap(one => (one.full ? [xy(one.full)] : []));
  const series: Series[] = [
    { name: 'full load', kind: fullLoad.length > 1 ? 'solid' : 'rings', points: fullLoad.map(xy) },
    ...lines.map(lineSeries),
    { name: 'lever right forward', kind: 'marks', points: full },
  ];
  const title = `${line}${ratio ? ` at ${ratio}` : ''}: power by ${varied}`;
  return {
    block: 'figure',
    svg: chart({
      id: `load-lines-${study.name}-${at + 1}`,
      title,
      xTitle: 'speed of engine or motor, rpm',
      yTitle: 'power, kW',
      series: series.filter(one => one.points.length > 0),
    }),
    caption: `Study ${study.name} of ${arrangement}, ${title}, at the crankshaft or motor; all else as the best candidate has it. Predicted for calm, deep water. A line that crosses the curve before rated speed overloads the engine there.`,
  };
}

function lineSeries({ option, holds, points }: LoadLine): Series {
  return {
    name: holds ? 'candidate holds' : 'candidate does not hold',
    kind: holds ? 'dashed' : 'dotted',
    end: option,
    points: points.map(xy),
  };
}

const RPM = findUnit('rpm')!;
const xy = ([speed, power]: LoadPoint): XY => [fromSI(speed, RPM), power / 1000];
