import { barredRangeStart, percent, type Value } from '@tailshaft/mechanics';
import { inUnit, type NewValue, numberIn, spell } from '@tailshaft/vocabulary';
import { BARRED_BELOW, type BarredRange, barredRanges, isForbidden } from '../../analysis/barred-range.js';
import type { LineAnalysis } from '../../analysis/line.js';
import { continuousMargin } from '../../analysis/torsional-clearance.js';
import {
  hasStressData,
  stressValue,
  type TorsionalStress,
  torsionalStressOf,
} from '../../analysis/torsional-stress.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Span } from '../../model/fact.js';
import { type Apart, each } from '../../model/reads.js';
import type { Shaft } from '../../model/shafting.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER } from './sources.js';
import { softerRoutes } from './torsional-routes.js';
import { WITH_EXCITATION, WITH_INERTIAS } from './torsional-specs.js';

/** A short shaft behind a stiff damper: the firing order meets the first mode in the lower half of the running range. */
const STIFF = changed(
  WITH_EXCITATION,
  ['  vibratory torque at most 480 N.m\n', ''],
  ['torsional stiffness 8200 N.m/rad', 'torsional stiffness 400000 N.m/rad'],
  ['order 3 torque 620 N.m', 'order 3 torque 900 N.m'],
  ['length 4.8 m', 'length 1.2 m'],
);
const BARRED = 'length 1.2 m  barred range 410 .. 510 rpm';

const INFO: RuleInfo = {
  id: 'interface/barred-range',
  title: 'Barred speeds are declared, wide enough, and clear of idle and rated speed',
  mistakes: [],
  severity: 'warning',
  criterion:
    'speeds with a vibratory stress over τ_C, by IACS UR M68, against the barred ranges declared, idle and rated ' +
    'speed',
  source: barredRangeStart.spec.source,
  manual:
    'Where the vibratory stress lies between τ_C and τ_T of IACS UR M68, the shaft may pass through these speeds quickly but not run at them. They are barred from 16 n_c/(18 − λ) to (18 − λ) n_c/16 around the critical ' +
    'n_c, and wider where the stress is too high beyond. A barred range is marked on the tachometers and on a ' +
    'plate at the controls; write it in the shaft as "barred range 410 .. 510 rpm". A range at idle, or at and ' +
    'above 0.8 of rated speed (from memory), is not allowed. A coupling of another stiffness or another ratio ' +
    'may remove it.',
  caution: `${DEFER} The crew passes through a barred range every time: keep it clear of manoeuvring speeds.`,
  limitOf: 'the range that the rules of class require',
  noFigure: 'a system of masses and springs, calculated anew for each way out',
  examples: examples(() => ({
    failing: STIFF,
    passing: changed(STIFF, ['length 1.2 m', BARRED]),
    cannotTell: changed(WITH_INERTIAS, ['length 4.8 m', 'length 4.8 m  barred range 410 .. 510 rpm']),
  })),
};

export const barredRangeRule: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | Apart<Verdict> | undefined {
  const { line, analysis } = context;
  if (!(line.engine || line.motor) || !line.propeller) return undefined;
  const declared = line.shafts.some(one => (one.barredRanges ?? []).length > 0);
  if (!declared && !hasStressData(analysis)) return undefined;
  const needs = new Needs();
  const stress = needs.take(torsionalStressOf(analysis));
  const plates = line.shafts.map(shaft => ({ shaft, plates: platesOf(shaft, needs) }));
  if (!stress) {
    if (!declared || !needs.any) return undefined;
    const say = sayFor(INFO, line.path);
    return waits(
      say,
      needs,
      line.nameOrigin,
      `${line.name}: whether the barred range is as wide as it must be`,
    );
  }
  // Where the stress may not even be passed, bars are no answer: the rule on the stress speaks.
  const needed = barredRanges(stress).filter(
    one => !stress.points.some(point => point.section.shaft === one.shaft && isForbidden(point)),
  );
  return each(plates, one =>
    judge(
      context,
      stress,
      one.shaft,
      one.plates,
      needed.filter(range => range.shaft === one.shaft),
      needs,
    ),
  );
}

interface Plate extends Span<'rotational speed'> {
  readonly origin: object;
}

function platesOf(shaft: Shaft, needs: Needs): Plate[] {
  return (shaft.barredRanges ?? []).flatMap(fact => {
    const span = needs.fact(fact, {
      what: 'the barred range of the shaft',
      host: shaft.origin,
      property: 'barred range',
    });
    return span ? [{ ...span, origin: fact.origin }] : [];
  });
}

function judge(
  context: LineContext,
  stress: TorsionalStress,
  shaft: Shaft,
  plates: readonly Plate[],
  needed: readonly BarredRange[],
  needs: Needs,
): Verdict | undefined {
  const { line, analysis } = context;
  const say = sayFor(INFO, line.path);
  const place = plates[0]?.origin ?? shaft.origin;
  const workings = needed.flatMap(one => [one.from, one.to]);
  const wrong = [
    ...plates.flatMap(plate => misplaced(analysis, stress, shaft, plate)),
    ...needed.flatMap(range => uncovered(analysis, stress, range, plates)),
  ];
  if (wrong.length > 0) {
    const first = needed.find(one => !coveredBy(one, plates));
    return say.fails({
      place,
      workings,
      message: `${line.name}: ${wrong.join(' ')}`,
      routes: () => [
        ...softerRoutes(context, free),
        ...(first && plates.length === 0 && allowed(stress, first) ? [markIt(shaft, first)] : []),
      ],
    });
  }
  if (stress.open.length > 0 || needs.any) {
    if (plates.length === 0 && !(shaft.barredRanges ?? []).length) return undefined;
    needs.take({ value: undefined, missing: stress.open });
    return waits(say, needs, place, `${line.name}: whether the barred range is as wide as it must be`);
  }
  if (stress.points.some(one => one.section.shaft === shaft && isForbidden(one))) return undefined;
  const marked = plates.map(one => spanWords(analysis, one.low, one.high)).join(', ');
  const most = stress.points
    .filter(one => one.section.shaft === shaft)
    .sort((one, other) => other.stress / other.continuous - one.stress / one.continuous)[0];
  return say.holds({
    place,
    workings: [...workings, ...(most ? [stressValue(most, stress)] : [])],
    message:
      needed.length === 0
        ? `${line.name}: no speed from idle up needs to be barred${marked ? `; the plate bars ${marked} of the shaft` : ''}.`
        : `${line.name}: ${marked} of the shaft is barred; the stress requires ${needed.map(one => spanWords(analysis, one.from, one.to)).join(', ')}.`,
  });
}

/** A plate that bars idle, or speeds where none may be barred. */
function misplaced(analysis: LineAnalysis, stress: TorsionalStress, shaft: Shaft, plate: Plate): string[] {
  const [idle, rated] = [stress.idle(shaft), stress.rated(shaft)];
  const span = spanWords(analysis, plate.low, plate.high);
  if (plate.low.si <= idle.si && plate.high.si >= idle.si)
    return [
      `The barred range ${span} of the shaft includes idle, ${analysis.tell(idle, 3)}: the vessel could not idle in gear.`,
    ];
  if (plate.high.si > BARRED_BELOW * rated.si)
    return [
      `The barred range ${span} of the shaft extends above ${percent(BARRED_BELOW)} of rated speed, ${analysis.tell(rated, 3)}, where none is allowed.`,
    ];
  return [];
}

function uncovered(
  analysis: LineAnalysis,
  stress: TorsionalStress,
  range: BarredRange,
  plates: readonly Plate[],
): string[] {
  if (coveredBy(range, plates)) return [];
  const { worst } = range;
  const over = percent(worst.stress / worst.continuous - 1);
  const idle = stress.idle(range.shaft);
  const span = spanWords(analysis, range.from, range.to);
  const at = allowed(stress, range)
    ? 'They lie in the running range: bar them on the plate, or fit another coupling or ratio.'
    : range.from.si <= idle.si
      ? `They include idle, ${analysis.tell(idle, 3)}, where no speed can be barred: fit another coupling or ratio.`
      : `They extend above ${percent(BARRED_BELOW)} of rated speed, where no speed can be barred: fit another coupling or ratio.`;
  const plate =
    plates.length > 0
      ? ` The plate bars ${plates.map(one => spanWords(analysis, one.low, one.high)).join(', ')} only.`
      : '';
  return [
    `The vibratory stress of ${worst.section.name} exceeds the continuous limit of IACS UR M68 by up to ${over}: ${span} of the shaft must be barred.${plate} ${at}`,
  ];
}

function coveredBy({ from, to }: BarredRange, plates: readonly Plate[]): boolean {
  return plates.some(one => one.low.si <= from.si && one.high.si >= to.si);
}

/** Between idle and 0.8 of rated speed. */
function allowed(stress: TorsionalStress, { shaft, from, to }: BarredRange): boolean {
  return from.si > stress.idle(shaft).si && to.si <= BARRED_BELOW * stress.rated(shaft).si;
}

/** Rounded outward to whole rpm, so that what is written covers what is asked. */
function markIt(shaft: Shaft, { from, to }: BarredRange): Route {
  const whole = (one: Value<'rotational speed'>, round: (number: number) => number) =>
    inUnit('rotational speed', round(numberIn(one, 'rpm')), 'rpm');
  const value: NewValue = { is: 'span', low: whole(from, Math.floor), high: whole(to, Math.ceil) };
  return {
    title: `Bar ${spell(value)} of the shaft, on the plate and in the spec: pass through quickly, never run there`,
    edits: [writeInPlace(shaft, 'barred range', value)],
  };
}

function free(after: LineAnalysis) {
  const margin = continuousMargin(after);
  return margin === undefined || margin < 0
    ? undefined
    : { margin, words: `no speed is barred, ${percent(margin)} under the limit for continuous running` };
}

function spanWords(
  analysis: LineAnalysis,
  from: Value<'rotational speed'>,
  to: Value<'rotational speed'>,
): string {
  return `${analysis.tell(from, 3)} to ${analysis.tell(to, 3)}`;
}
