import {
  barredRanges,
  limitValues,
  type ShaftLine,
  type StressPoint,
  type StressSection,
  stressValue,
  type TorsionalStress,
  torsionalStressOf,
} from '@tailshaft/drivetrain';
import { capital, findUnit, fromSI, given, percent } from '@tailshaft/mechanics';
import { type Block, table } from '../document/blocks.js';
import type { Text } from '../document/text.js';
import { chart, type Series, type XY } from '../drawing/chart.js';
import type { Sheet } from '../sheet.js';

/** Speeds that may only be passed: as the spec bars them, or as the stress asks for; in rpm of the engine or the shaft. */
export function barredOf(sheet: Sheet, line: ShaftLine, at: 'engine' | 'shaft') {
  const analysis = sheet.analysis(line);
  const stress = torsionalStressOf(analysis).value;
  return line.shafts.flatMap(shaft => {
    const declared = (shaft.barredRanges ?? []).flatMap(one => (one.value ? [one.value] : []));
    const asked = stress ? barredRanges(stress).filter(one => one.shaft === shaft) : [];
    const engine = analysis.rated.value?.speed.si;
    const own = stress?.rated(shaft).si;
    const ratio = at === 'shaft' ? 1 : engine && own ? engine / own : undefined;
    if (ratio === undefined) return [];
    return declared.length > 0
      ? declared.map(one => ({ from: rpm(one.low.si * ratio), to: rpm(one.high.si * ratio), name: 'barred' }))
      : asked.map(one => ({
          from: rpm(one.from.si * ratio),
          to: rpm(one.to.si * ratio),
          name: 'to be barred',
        }));
  });
}

/** What tells the stress of one line from that of another. */
export function stressKey(sheet: Sheet, line: ShaftLine): string {
  const stress = torsionalStressOf(sheet.analysis(line)).value;
  return JSON.stringify([
    stress?.points.map(one => one.stress),
    line.shafts.flatMap(one => (one.barredRanges ?? []).map(range => range.written)),
  ]);
}

/** Vibratory stress of the section nearest to its limit, over shaft speed, beside the limits of class. */
export function stressBlocks(sheet: Sheet, line: ShaftLine, name: string): Block[] {
  const analysis = sheet.analysis(line);
  const stress = torsionalStressOf(analysis).value;
  const points = stress?.points.filter(one => Number.isFinite(one.stress)) ?? [];
  if (!stress || points.length === 0) return [];
  const worst = points.reduce((a, b) => (b.stress / b.continuous > a.stress / a.continuous ? b : a));
  const own = points.filter(one => one.section === worst.section);
  const barred = barredOf(sheet, line, 'shaft');
  const over = own.some(one => one.stress > one.continuous) || barred.length > 0;
  const svg = chart({
    id: `torsional-stress-${line.path}`,
    title: `${name}: vibratory stress over shaft speed`,
    xTitle: 'speed of the shaft, rpm',
    yTitle: `stress of ${worst.section.name}, MPa`,
    barred,
    series: [
      ...curve(own.filter(one => !one.declared)),
      ...marks(own.filter(one => one.declared)),
      ...limits(stress, worst.section, over),
    ],
  });
  return [
    {
      block: 'figure',
      svg,
      caption: `${name}: amplitude of torsional vibration stress from idle up, ${basis(stress)}, beside what IACS UR M68 allows.`,
    },
    table(
      `${name}: vibratory stress nearest to its limit, section by section`,
      [
        { title: 'Section' },
        { title: 'Shaft speed', numeric: true },
        { title: 'Stress', numeric: true },
        { title: 'Continuous (τ_C)', numeric: true },
        { title: 'Passing (τ_T)', numeric: true },
        { title: 'Margin to τ_C', numeric: true },
      ],
      [...new Set(points.map(one => one.section))].map(section => row(sheet, line, stress, section, points)),
    ),
  ];
}

function row(
  sheet: Sheet,
  line: ShaftLine,
  stress: TorsionalStress,
  section: StressSection,
  points: readonly StressPoint[],
): Text[] {
  const worst = points
    .filter(one => one.section === section)
    .reduce((a, b) => (b.stress / b.continuous > a.stress / a.continuous ? b : a));
  const { tell } = sheet.analysis(line);
  const speed = given('shaft speed', 'n', 'rotational speed', worst.speed, {
    assumed: 'where the stress is nearest to its limit',
  });
  const allowed = limitValues(section, speed, stress.rated(section.shaft));
  const number = (value: ReturnType<typeof stressValue>) => sheet.number(value, line.path, tell(value, 3));
  return [
    capital(section.name),
    tell(speed, 3),
    number(stressValue(worst, stress)),
    number(allowed.continuous),
    number(allowed.transient),
    percent(worst.continuous / worst.stress - 1),
  ];
}

function basis({ excited }: TorsionalStress): string {
  return excited
    ? `computed for ${excited.orders.map(one => one.label).join(', ')}, damped by ${excited.dampedBy.join(', ')}`
    : 'as declared';
}

function curve(points: readonly StressPoint[]): Series[] {
  return points.length < 2
    ? []
    : [
        {
          name: 'vibratory stress',
          kind: 'solid',
          points: points.map((one): XY => [rpm(one.speed), one.stress / MPA]),
        },
      ];
}

function marks(points: readonly StressPoint[]): Series[] {
  return points.length === 0
    ? []
    : [
        {
          name: 'as declared',
          kind: 'marks',
          points: points.map((one): XY => [rpm(one.speed), one.stress / MPA]),
        },
      ];
}

/** The limit for passing lies far above, and is drawn only where the one for continuous running is not kept. */
function limits(stress: TorsionalStress, section: StressSection, withTransient: boolean): Series[] {
  const [rated, idle] = [stress.rated(section.shaft), stress.idle(section.shaft)];
  const from = Math.min(idle.si, rated.si);
  const speeds = Array.from({ length: STEPS + 1 }, (_, at) => from + ((rated.si * MOST - from) * at) / STEPS);
  const along = (which: 'continuous' | 'transient') =>
    speeds.map((si): XY => {
      const speed = given('shaft speed', 'n', 'rotational speed', si);
      return [rpm(si), limitValues(section, speed, rated)[which].si / MPA];
    });
  return [
    { name: 'continuous running (τ_C)', kind: 'level', points: along('continuous') },
    ...(withTransient
      ? [{ name: 'passing only (τ_T)', kind: 'dashed', points: along('transient') } as const]
      : []),
  ];
}

/** Up to where the class formula reaches. */
const MOST = 1.049;
const STEPS = 40;

const MPA = 1e6;
const RPM = findUnit('rpm')!;
const rpm = (si: number) => fromSI(si, RPM);
