import { type Arrangement, criticalsOf, type LineCriticals, type ShaftLine } from '@tailshaft/drivetrain';
import { capital, findUnit, fromSI, percent } from '@tailshaft/mechanics';
import { type Block, paragraph, section, table } from '../document/blocks.js';
import { quiet, separated, strong, type Text, warning } from '../document/text.js';
import { chart, type Series } from '../drawing/chart.js';
import { type SpeedRow, speedsPicture } from '../drawing/speeds-picture.js';
import type { Sheet } from '../sheet.js';
import { spanWords } from './check-parts.js';
import { modeShapes } from './mode-shapes.js';
import { barredOf, stressBlocks, stressKey } from './torsional-stress.js';

/**
 * Torsional and lateral criticals against the running range, or what is missing to tell. An arrangement that another one
 * revises is only asked for what it gives.
 */
export function criticalsSection(sheet: Sheet, arrangement: Arrangement): Block | undefined {
  const planned = !sheet.vessel.arrangements.some(one => one.revises === arrangement.name);
  const groups = new Map<string, Alike>();
  for (const line of arrangement.lines) {
    if (!line.propeller || !(line.engine || line.motor)) continue;
    const criticals = criticalsOf(sheet.analysis(line));
    const key = keyOf(criticals) + stressKey(sheet, line);
    const had = groups.get(key);
    if (had) groups.set(key, { ...had, name: `${had.name} and ${line.name}` });
    else groups.set(key, { line, name: line.name, criticals });
  }
  const found = [...groups.values()].flatMap(alike => {
    const blocks = [...torsional(sheet, alike, planned), ...lateral(sheet, alike, planned)];
    return blocks.length > 0 ? [blocks] : [];
  });
  if (found.length === 0) return undefined;
  return section(`criticals-${arrangement.path}`, 'Critical speeds', [
    ...found.flat(),
    paragraph(
      'Frequencies undamped, from the declared inertias, stiffnesses and places. A critical in the range does not prove damage, and none in the range does not prove safety: class, engine maker and gear maker calculate with their own data.',
      'quiet',
    ),
  ]);
}

/** Lines that vibrate alike share their pictures. */
interface Alike {
  readonly line: ShaftLine;
  readonly name: string;
  readonly criticals: LineCriticals;
}

/** What tells one line from another: its numbers, or what is missing without its own name. */
function keyOf({
  torsional: system,
  spans,
  propeller,
  torsionalMissing,
  lateralMissing,
  shaftTo,
}: LineCriticals) {
  return JSON.stringify([
    system?.criticals.map(one => one.speed.si),
    spans.map(one => one.whirling.si),
    [propeller?.least.si, propeller?.greatest.si, shaftTo?.si],
    [...torsionalMissing, ...lateralMissing].map(one => one.what),
  ]);
}

/** Frequencies over engine speed, with the orders that cross them. */
function torsional(sheet: Sheet, { line, name, criticals }: Alike, planned: boolean): Block[] {
  const system = criticals.torsional;
  if (!system) {
    if (!planned) return [];
    return missing(name, 'torsional criticals', criticals.torsionalMissing, NO_TORSIONAL_MODEL);
  }
  const { frequencyLines, orderLines, crossings, running, highestSpeed } = system.chart;
  const end = rpm(highestSpeed);
  const points = (inside: boolean): Series[] => {
    const some = crossings.filter(one => one.insideRange === inside);
    return some.length === 0
      ? []
      : [
          {
            name: inside ? 'meets in the running range' : 'meets outside it',
            kind: inside ? 'marks' : 'rings',
            points: some.map(one => [rpm(one.speed), one.frequency]),
          },
        ];
  };
  const svg = chart({
    id: `torsional-${line.path}`,
    title: `${name}: torsional frequencies over engine speed`,
    xTitle: 'engine speed, rpm',
    yTitle: 'frequency, Hz',
    band: { from: rpm(running.from), to: rpm(running.to), name: 'running range' },
    barred: barredOf(sheet, line, 'engine'),
    series: [
      ...frequencyLines.map(
        ({ mode, frequency }): Series => ({
          name: `mode ${mode}, ${frequency.toFixed(1)} Hz`,
          kind: 'level',
          points: [
            [0, frequency],
            [end, frequency],
          ],
        }),
      ),
      ...orderLines.map(
        ({ order, end: tip }): Series => ({
          name: order.label,
          kind: order.kind === 'propeller blade' ? 'dashed' : 'solid',
          points: [
            [0, 0],
            [rpm(tip.speed), tip.frequency],
          ],
        }),
      ),
      ...points(true),
      ...points(false),
    ],
  });
  const rows = system.criticals.map((one): Text[] => [
    capital(one.order.label),
    `mode ${one.mode}`,
    sheet.number(one.speed, line.path, sheet.analysis(line).tell(one.speed)),
    one.place === undefined
      ? warning('? cannot tell')
      : one.place.position === 'inside'
        ? strong('in the running range')
        : `${one.place.position} it by ${percent(one.place.margin)}`,
  ]);
  return [
    {
      block: 'figure',
      svg,
      caption: `${name}: natural frequencies of engine, coupling, gear, shaft and propeller in water are horizontal lines; orders rise with speed. A crossing is a critical.`,
    },
    table(
      `${name}: torsional criticals at engine speed`,
      [
        { title: 'Order' },
        { title: 'Mode' },
        { title: 'Engine speed', numeric: true },
        { title: 'Running range', wide: true },
      ],
      rows,
    ),
    modeShapes(name, system),
    ...stressBlocks(sheet, line, name),
  ];
}

/** First whirling speeds beside the speeds of the shaft. */
function lateral(sheet: Sheet, { line, name, criticals }: Alike, planned: boolean): Block[] {
  const { spans, propeller, shaftFrom, shaftTo, lateralMissing } = criticals;
  const open = planned
    ? missing(name, 'lateral critical with the propeller', propeller ? [] : lateralMissing)
    : [];
  if (!shaftTo || (spans.length === 0 && !propeller)) return open;
  const rows: SpeedRow[] = [
    ...(propeller
      ? [
          {
            name: 'aftmost span with propeller',
            from: rpm(propeller.least.si),
            to: rpm(propeller.greatest.si),
          },
          ...(propeller.bladeRate
            ? [
                {
                  name: 'the same at blade rate, from',
                  from: rpm(propeller.bladeRate.si),
                  to: rpm(propeller.bladeRate.si),
                  told: true,
                },
              ]
            : []),
        ]
      : []),
    ...spans.map(one => ({
      name: spanWords(one.span.name),
      from: rpm(one.whirling.si),
      to: rpm(one.whirling.si),
    })),
  ];
  const tell = sheet.analysis(line).tell;
  const range = `${shaftFrom ? `${tell(shaftFrom)} to ` : 'up to '}${tell(shaftTo)}`;
  return [
    {
      block: 'figure',
      svg: speedsPicture({
        id: `lateral-${line.path}`,
        title: `${name}: whirling speeds of the shaft`,
        running: { from: rpm(shaftFrom?.si ?? 0), to: rpm(shaftTo.si) },
        rows,
      }),
      caption: `${name}: first whirling speeds, in rpm of the propeller shaft, which runs at ${range}.${propeller ? ' With the propeller the speed lies between those with the forward end of the span free and held; blade rate is shown only.' : ' Plain spans: the propeller lowers the speed of the aftmost one.'}`,
    },
    table(
      `${name}: first whirling speeds of the propeller shaft`,
      [
        { title: 'Span' },
        { title: 'Whirling speed', numeric: true },
        { title: 'Margin to greatest shaft speed', numeric: true },
      ],
      [
        ...(propeller
          ? [
              [
                'Aftmost with propeller, least',
                sheet.number(propeller.least, line.path),
                over(propeller.least, shaftTo),
              ],
              [
                'Aftmost with propeller, greatest',
                sheet.number(propeller.greatest, line.path),
                over(propeller.greatest, shaftTo),
              ],
            ]
          : []),
        ...spans.map(one => [
          capital(one.span.name),
          sheet.number(one.whirling, line.path),
          over(one.whirling, shaftTo),
        ]),
      ],
    ),
    ...open,
  ];
}

const NO_TORSIONAL_MODEL =
  'are computed only for a line of engine or motor, coupling, gear, shafts and propeller; this line is different.';

function missing(
  name: string,
  what: string,
  gaps: readonly { readonly what: string }[],
  otherwise?: string,
): Block[] {
  if (gaps.length === 0) return otherwise ? [paragraph(quiet(`${name}: ${what} ${otherwise}`))] : [];
  return [
    paragraph(
      separated(
        ' ',
        warning(`? ${name}: cannot tell the ${what}.`),
        quiet('Needs'),
        gaps.map(one => one.what).join('; '),
      ),
    ),
  ];
}

function over(one: { readonly si: number }, most: { readonly si: number }): string {
  return percent(one.si / most.si - 1);
}

const RPM = findUnit('rpm')!;
const rpm = (si: number) => fromSI(si, RPM);
