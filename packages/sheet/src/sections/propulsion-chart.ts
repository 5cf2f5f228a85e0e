import {
  type Arrangement,
  type LineAnalysis,
  type Propulsion,
  predictedPoints,
  type ShaftLine,
} from '@tailshaft/drivetrain';
import { findUnit, fromSI, listed, percent, type Value } from '@tailshaft/mechanics';
import { type Block, paragraph, section } from '../document/blocks.js';
import { quiet, separated, warning } from '../document/text.js';
import { chart, type Series, type XY } from '../drawing/chart.js';
import type { Sheet } from '../sheet.js';
import { moverOf } from './mover-of.js';

/**
 * Speed of the vessel over the speed of engine or motor, or why it is not known. An arrangement that another one revises
 * is only asked for what it gives.
 */
export function propulsionSection(sheet: Sheet, arrangement: Arrangement): Block | undefined {
  const planned = !sheet.vessel.arrangements.some(one => one.revises === arrangement.name);
  const groups = new Map<
    string,
    { readonly lines: ShaftLine[]; readonly blocks: (names: string) => Block[] }
  >();
  for (const line of arrangement.lines) {
    const found = ofLine(sheet, line, planned);
    if (!found) continue;
    const had = groups.get(found.key);
    if (had) had.lines.push(line);
    else groups.set(found.key, { lines: [line], blocks: found.blocks });
  }
  const blocks = [...groups.values()].flatMap(({ lines, blocks }) =>
    blocks(listed(lines.map(line => line.name))),
  );
  return blocks.length > 0 ? section(`propulsion-${arrangement.path}`, 'Propulsion', blocks) : undefined;
}

interface Told {
  /** Lines of the same key share their blocks. */
  readonly key: string;
  readonly blocks: (names: string) => Block[];
}

function ofLine(sheet: Sheet, line: ShaftLine, planned: boolean): Told | undefined {
  const analysis = sheet.analysis(line);
  const result = analysis.propulsion;
  if (!result) return undefined;
  if (!result.value) {
    if (!planned) return undefined;
    const gaps = result.missing.map(one => one.what).join('; ');
    return {
      key: `${result.refusal ?? ''} ${gaps}`,
      blocks: names => [
        paragraph(
          separated(
            ' ',
            warning(`? ${names}: speed and load cannot be predicted.`),
            result.refusal,
            gaps ? separated(' ', quiet('Needs'), gaps) : undefined,
          ),
        ),
      ],
    };
  }
  const points = speedPoints(analysis);
  const words = ratedWords(result.value, analysis);
  return {
    key: JSON.stringify([points, words]),
    blocks: names =>
      points.length < 2 ? [paragraph(`${names}: ${words}`)] : [figure(line, names, points, words, analysis)],
  };
}

function figure(
  line: ShaftLine,
  names: string,
  points: readonly XY[],
  words: string,
  analysis: LineAnalysis,
): Block {
  const mover = moverOf(line);
  const full = analysis.propulsion?.value?.full;
  const series: Series[] = [
    { name: 'predicted speed', kind: 'solid', points },
    { name: 'points of the engine data', kind: 'rings', points },
    ...(full?.applies
      ? [
          {
            name: 'lever right forward',
            kind: 'marks' as const,
            points: [[rpm(full.engineSpeed), knots(full.vesselSpeed)]] as XY[],
          },
        ]
      : []),
  ];
  return {
    block: 'figure',
    svg: chart({
      id: `speed-${line.path}`,
      title: `${names}: speed of the vessel over ${mover} speed`,
      xTitle: `${mover} speed, rpm`,
      yTitle: 'speed, kn',
      series,
    }),
    caption: `${names}: ${words} Predicted in calm water, deep and wide; it does not replace a trial.`,
  };
}

/** The method, and what it says at rated speed. */
function ratedWords({ method, estimate, rated, demand }: Propulsion, analysis: LineAnalysis): string {
  const by = method.startsWith('given') ? `from the ${method}` : `by the ${method} method`;
  const share = percent(demand.si);
  return `${by}${estimate ? ', an estimate for a first look only' : ''}, ${analysis.tell(rated.vesselSpeed)} at rated speed, where the propeller absorbs ${share} of the power delivered to it.`;
}

function speedPoints(analysis: LineAnalysis): XY[] {
  return predictedPoints(analysis).flatMap(({ run }): XY[] =>
    run.applies ? [[rpm(run.engineSpeed), knots(run.vesselSpeed)]] : [],
  );
}

const RPM = findUnit('rpm')!;
const KNOT = findUnit('kn')!;
const rpm = (value: Value<'rotational speed'>) => fromSI(value.si, RPM);
const knots = (value: Value<'speed'>) => fromSI(value.si, KNOT);
