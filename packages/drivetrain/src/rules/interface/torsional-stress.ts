import { continuousTorsionalLimit, given, percent } from '@tailshaft/mechanics';
import { BARRED_BELOW, isForbidden } from '../../analysis/barred-range.js';
import type { LineAnalysis } from '../../analysis/line.js';
import { hasTorsionalData, torsionalSystem } from '../../analysis/torsional.js';
import { continuousMargin } from '../../analysis/torsional-clearance.js';
import { limitValues } from '../../analysis/torsional-limits.js';
import {
  hasStressData,
  type StressPoint,
  stressValue,
  type TorsionalStress,
  torsionalStressOf,
} from '../../analysis/torsional-stress.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER } from './sources.js';
import { softerRoutes } from './torsional-routes.js';
import { WITH_EXCITATION } from './torsional-specs.js';

const INFO: RuleInfo = {
  id: 'interface/torsional-stress',
  title: 'Vibratory stress of the shaft is within the class limits',
  mistakes: [],
  severity: 'error',
  criterion:
    'amplitude of torsional vibration stress against τ_C for continuous running, or τ_T where the speeds may be ' +
    'barred, of IACS UR M68',
  source: continuousTorsionalLimit.spec.source,
  manual:
    'A shaft thick enough for its mean torque can break by the vibratory torque on top of it. State the stresses of the torsional calculation in the shaft ("vibratory stress 18 MPa at 265 rpm", ' +
    'one for each critical). Or state the excitation: the torque of the firing order at the engine ' +
    '("excitation order 3 torque 420 N.m"), that of the blade rate at the propeller, and the damping of ' +
    'the coupling ("dynamic magnifier 6"). The damped response is then computed over the running range. Above τ_T the line must not run at all; between τ_C ' +
    'and τ_T the speeds are barred, which is allowed below 0.8 of rated speed only (that bound from memory). ' +
    'Amplitudes of the orders are added; only declared damping counts.',
  caution:
    `${DEFER} Even firing of all cylinders: class also requires one misfiring cylinder. Speeds above 1.05 ` +
    'times rated speed are outside the formula. A keyed shaft end counts where its diameter or key is ' +
    'declared.',
  limitOf: 'the stress that the rules of class allow',
  noFigure: 'a system of masses and springs, calculated anew for each way out',
  examples: examples(() => ({
    failing: changed(
      WITH_EXCITATION,
      ['  vibratory torque at most 480 N.m\n', ''],
      ['torsional stiffness 8200 N.m/rad', 'torsional stiffness 400000 N.m/rad'],
      ['length 4.8 m', 'length 1.2 m'],
      ['  damping factor 30', ''],
    ),
    passing: WITH_EXCITATION,
    cannotTell: changed(WITH_EXCITATION, ['  excitation order 3 torque 620 N.m\n', '']),
  })),
};

export const torsionalStressRule: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, analysis } = context;
  if (!(line.engine || line.motor) || !line.propeller) return undefined;
  if (!hasStressData(analysis) && !classAsks(context)) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const stress = needs.take(torsionalStressOf(analysis));
  const shaft = line.shafts.at(-1);
  if (!shaft) return undefined;
  const place = shaft.nameOrigin ?? shaft.origin;
  const what = `${line.name}: whether the vibratory stress of the shaft stays within the class limits`;
  if (!stress) return needs.any ? waits(say, needs, place, what) : undefined;
  const forbidden = worstOf(stress.points.filter(isForbidden), one => one.stress / limitOf(one));
  if (forbidden) {
    const told = tellPoint(analysis, stress, forbidden);
    return say.compare({
      ...told.values,
      place,
      message: told.words,
      failMessage: `${line.name}: ${told.words}. ${why(forbidden)} Fit another coupling, ratio or shaft, or obtain the engine maker’s calculation with better figures.`,
      routes: () => softerRoutes(context, within),
    });
  }
  if (stress.open.length > 0) {
    needs.take({ value: undefined, missing: stress.open });
    return waits(say, needs, place, what);
  }
  const worst = worstOf(stress.points, one => one.stress / limitOf(one));
  if (!worst) return undefined;
  const { words, values } = tellPoint(analysis, stress, worst);
  const message = `${line.name}: ${words}, nearest to its limit of all speeds from idle up.${basis(stress)}`;
  return say.compare({ ...values, place, message, failMessage: message });
}

/** Class is asked to judge the shaft, and a critical lies where the vessel runs. */
function classAsks({ line, vessel, analysis }: LineContext): boolean {
  const chosen = vessel.criteria?.shaftDiameter?.some(one => one.value?.formula === 'class');
  if (!chosen || !hasTorsionalData(line)) return false;
  const system = torsionalSystem(analysis, new Needs());
  return !!system?.criticals.some(one => one.place?.position === 'inside');
}

/** What a point is held against: speeds between the limits may be barred, which another rule asks for. */
function limitOf(point: StressPoint): number {
  const barred = point.stress > point.continuous && point.share < BARRED_BELOW;
  return barred ? point.transient : point.continuous;
}

function worstOf(
  points: readonly StressPoint[],
  size: (one: StressPoint) => number,
): StressPoint | undefined {
  return points.reduce<StressPoint | undefined>(
    (worst, one) => (worst && size(worst) >= size(one) ? worst : one),
    undefined,
  );
}

function tellPoint(analysis: LineAnalysis, stress: TorsionalStress, point: StressPoint) {
  const { section } = point;
  const speed = given('shaft speed', 'n', 'rotational speed', point.speed, {
    assumed: 'a speed of the running range',
  });
  const limits = limitValues(section, speed, stress.rated(section.shaft));
  const demand = stressValue(point, stress);
  const barred = limitOf(point) === point.transient;
  const capacity = barred ? limits.transient : limits.continuous;
  const running = barred ? 'passing only (τ_T)' : 'continuous running (τ_C)';
  return {
    values: { capacity, demand, workings: [demand, limits.continuous, limits.transient] },
    words: `vibratory stress of ${section.name} is ${analysis.tell(demand, 3)} at ${analysis.tell(speed, 3)} of the shaft${point.declared ? ', as declared' : ''}; IACS UR M68 allows ${analysis.tell(capacity, 3)} for ${running}`,
  };
}

function why(point: StressPoint): string {
  return point.stress > point.transient
    ? 'The speed may not even be passed through.'
    : `At ${percent(point.share)} of rated speed no barred range is allowed.`;
}

function basis({ excited }: TorsionalStress): string {
  return excited
    ? ` Orders ${excited.orders.map(one => one.label).join(', ')}; damped by ${excited.dampedBy.join(', ')}.`
    : ' Stresses as declared.';
}

function within(after: LineAnalysis) {
  const margin = continuousMargin(after);
  return margin === undefined || margin < 0
    ? undefined
    : { margin, words: `vibratory stress then ${percent(margin)} under the limit for continuous running` };
}
