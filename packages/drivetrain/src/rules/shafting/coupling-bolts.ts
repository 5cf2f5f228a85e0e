import {
  boltStrengthOf,
  classFittedBoltByPower,
  classFittedBoltByShaft,
  given,
  outsideRange,
  percent,
  renamed,
  STEEL_BOLT_CLASSES,
  type Value,
} from '@tailshaft/mechanics';
import {
  type BoltStrength,
  boltStrength,
  boltTensileOf,
  saysHowBoltsCarry,
} from '../../analysis/bolt-strength.js';
import { outputBefore, shaftBehind } from '../../analysis/couplings.js';
import { ratedShaftLoad, shaftStrength } from '../../analysis/shaft-strength.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import { marginOf, type Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { type Apart, apart, each } from '../../model/reads.js';
import type { Coupling, Shaft } from '../../model/shafting.js';
import { atLeast, greatestTorqueAt } from '../capacity/greatest-torque.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { judgeKnown } from '../known-half.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { boltRoutes } from './bolt-routes.js';
import { WITH_HALF_COUPLING } from './coupling-flange.js';
import { DEFER } from './sources.js';

const FITTED = changed(WITH_HALF_COUPLING, [
  'pilot 63.5 mm male }',
  'pilot 63.5 mm male  bolt class 8.8  bolt fit fitted }',
]);

const INFO: RuleInfo = {
  id: 'shafting/coupling-bolts',
  title: 'The coupling bolts carry the shaft torque',
  mistakes: [],
  severity: 'error',
  estimate: USUAL_ESTIMATE,
  criterion: 'torque capacity of the coupling bolts against the greatest torque in the coupling',
  source: {
    author: 'Sadhu Singh',
    title: 'Design of machine elements',
    clause: 'rigid flange couplings; yield in shear by distortion energy; friction by statics',
    confidence: 'published',
  },
  manual:
    'Fitted bolts in reamed holes carry the torque in shear of their shanks; bolts with clearance only clamp the ' +
    'faces, which slip when friction is used up. Where the coupling states the class of its bolts, or how they ' +
    'fit, their capacity is computed: in shear at the yield of their class, or by friction with the declared ' +
    'preload. The factor is 2 unless the criteria say "bolt factor at least". Where the class formula judges the ' +
    'shaft, the fitted bolt that class rules require is compared as well. Fit bolts of a stronger class, or more ' +
    'or larger bolts where both flanges have the metal for them.',
  caution:
    `${DEFER} Bolts with clearance must not carry torque in shear. Bending by misalignment, shock and reversing ` +
    'are covered by the factor only; the factor of 2 and friction of 0.15 are common practice without a source.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(FITTED, ['bolt class 8.8', 'bolt class 4.6']),
    passing: FITTED,
    cannotTell: changed(FITTED, ['  bolt fit fitted', '']),
  })),
};

export const couplingBolts: Rule = { ...INFO, scope: 'line', check };

/** Where the criteria choose none; common practice. */
const DEFAULT_FACTOR = 2;

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line } = context;
  if (!(line.engine || line.motor)) return undefined;
  return each(line.couplings, one => (saysHowBoltsCarry(one) ? judge(context, one) : undefined));
}

function judge(context: LineContext, coupling: Coupling): Verdict | Apart<Verdict> {
  const { line, analysis, vessel } = context;
  const say = sayFor(INFO, coupling.path);
  const name = nameOf(coupling);
  const needs = new Needs();
  const bolts = boltStrength(coupling, vessel, needs);
  if (bolts) needs.found(bolts.torque);
  const torque = greatestTorqueAt(analysis, coupling, needs);
  const place = coupling.flange!.bolts?.origin ?? coupling.flange!.origin;
  const what = `${line.name}: whether the bolts of ${name} carry its torque`;
  if (!bolts || !torque) {
    const known = torque
      ? `${atLeast(analysis)}${analysis.tell(torque)} pass`
      : bolts && `they take ${analysis.tell(bolts.torque)} ${HOW[bolts.by]}`;
    return waits(say, needs, place, what, known ? { known } : {});
  }
  const strained = bolts.by === 'friction' ? preloadTooGreat(context, coupling) : undefined;
  if (strained) return strained;
  const factor = vessel.criteria?.boltFactor?.value?.si ?? DEFAULT_FACTOR;
  const own = vessel.criteria?.boltFactor?.written;
  const said = own ?? `${DEFAULT_FACTOR} (common practice, no source)`;
  const verdict = judgeKnown(say, needs, {
    place,
    capacity: bolts.torque,
    demand: torque,
    wanted: factor - 1,
    criterion: { said: `${INFO.criterion}, factor ${said}`, chosenBy: own ? 'author' : 'default' },
    what,
    numbers:
      `the ${coupling.flange!.bolts!.written} bolts of ${name} carry ${analysis.tell(bolts.torque)} ${HOW[bolts.by]}; ` +
      `shaft torque is ${atLeast(analysis)}${analysis.tell(torque)}: factor ${(bolts.torque.si / torque.si).toFixed(2)}, ${factor} required`,
    remedy: `. Fit bolts that carry ${analysis.tell({ ...torque, si: torque.si * factor })}: stronger, more or larger${bolts.by === 'friction' ? ', more preload, or fitted bolts' : ''}.`,
    routes: () => routes(context, coupling, torque, factor, bolts),
  });
  return apart(
    () => verdict,
    () => (bolts.by === 'shear' ? byClass(context, coupling) : undefined),
  );
}

/**
 * Bolts that the preload would stretch for good: no friction can be counted on then. Where their class is not said, the
 * strongest that there is stands for it.
 */
function preloadTooGreat({ line, analysis }: LineContext, coupling: Coupling): Verdict | undefined {
  const flange = coupling.flange!;
  const preload = flange.boltPreload?.value;
  const size = flange.bolts?.value?.size;
  if (!preload || !size) return undefined;
  const grade = flange.boltClass?.value ?? STEEL_BOLT_CLASSES.at(-1)!;
  const yields = flange.boltYield?.value?.si ?? boltStrengthOf(grade)?.tensileYield;
  if (yields === undefined) return undefined;
  const borne = ((STRESS_AREA * Math.PI) / 4) * size.si ** 2 * yields;
  if (preload.si <= borne) return undefined;
  const most = given('preload at which the bolts yield', 'F_y', 'force', borne, {
    assumed: `yield over ${percent(STRESS_AREA)} of the shank area, about the thread of a coarse bolt`,
  });
  const of = flange.boltYield?.value
    ? 'their yield'
    : `the yield of class ${grade}${flange.boltClass ? '' : ', the strongest'}`;
  return sayFor(INFO, coupling.path).fails({
    place: flange.boltPreload!.origin,
    capacity: most,
    demand: renamed(preload, 'preload of a bolt', 'F'),
    message:
      `${line.name}: a preload of ${analysis.tell(preload)} stretches the ${flange.bolts!.written} bolts of ${nameOf(coupling)} past ${of}, about ` +
      `${analysis.tell(most, 3)}. One of the two is wrong: write the preload of the drawing, or fit larger or stronger bolts.`,
    disputes: [flange.boltPreload!, flange.bolts!],
    related: [{ at: flange.bolts!.origin, message: 'size of the bolts' }],
  });
}

/** Thread of coarse bolts over their shank: 0.71 for M6, 0.78 for M20 by the stress areas of ISO 898-1. */
const STRESS_AREA = 0.75;

const HOW = { shear: 'in shear at their yield', friction: 'by friction before the faces slip' } as const;

function routes(
  context: LineContext,
  coupling: Coupling,
  torque: Value<'torque'>,
  factor: number,
  bolts: BoltStrength,
): Route[] {
  const mating = outputBefore(context.line, coupling)?.flange;
  return boltRoutes(coupling, {
    classes: bolts.by === 'shear' ? STEEL_BOLT_CLASSES : [],
    // The other flange is drilled already.
    drilled: mating?.bolts !== undefined,
    words: 'factor',
    passes: other => {
      const strength = boltStrength(other, context.vessel, new Needs());
      const reached = strength && strength.torque.si / torque.si;
      return reached !== undefined && reached >= factor ? reached.toFixed(2) : undefined;
    },
  });
}

/** The fitted bolt that class rules want, where the class formula judges the shaft. */
function byClass(context: LineContext, coupling: Coupling): Verdict | undefined {
  const { line, analysis, vessel } = context;
  if (!vessel.criteria?.shaftDiameter?.some(one => one.value?.formula === 'class')) return undefined;
  const shaft = shaftBehind(line, coupling);
  if (!shaft) return undefined;
  const say = sayFor(INFO, coupling.path);
  const needs = new Needs();
  const { bolts, boltCircle } = coupling.flange!;
  const needed = classBolt(context, coupling, shaft, needs);
  const place = bolts!.origin;
  const what = `${line.name}: whether the bolts of ${nameOf(coupling)} are as thick as class rules require`;
  if (!needed) return waits(say, needs, place, what);
  const capacity = renamed(bolts!.value!.size, 'bolt diameter', 'd_b');
  const [own, its] = [marginOf(capacity, needed.byPower)!, marginOf(capacity, needed.byShaft)!];
  const doubt = outsideRange(needed.byShaft).length > 0 ? ', outside its range of bolt strength' : '';
  const second = ` By the form of IACS UR M34 (from memory${doubt}) it is ${analysis.tell(needed.byShaft, 3)}${own >= 0 === its >= 0 ? '' : ', and the two disagree'}.`;
  const numbers = `by class rules fitted bolts on ${analysis.tell(boltCircle!.value!)} need ${analysis.tell(needed.byPower, 3)}; ${nameOf(coupling)} has ${bolts!.written}`;
  return say.compare({
    place,
    capacity,
    demand: needed.byPower,
    criterion: 'diameter of fitted bolts by class rules, by power (one worked sheet)',
    workings: [needed.byShaft],
    message: `${line.name}: ${numbers}.${second}`,
    failMessage: `${line.name}: ${numbers}: stronger, more or larger bolts.${second}`,
    routes: () =>
      boltRoutes(coupling, {
        classes: STEEL_BOLT_CLASSES,
        drilled: outputBefore(line, coupling)?.flange?.bolts !== undefined,
        words: 'margin by class rules',
        passes: other => {
          const anew = classBolt(context, other, shaft, new Needs());
          const margin = anew && marginOf(other.flange!.bolts!.value!.size, anew.byPower);
          return margin !== undefined && margin >= 0 ? percent(margin) : undefined;
        },
      }),
  });
}

function classBolt({ line, analysis }: LineContext, coupling: Coupling, shaft: Shaft, needs: Needs) {
  const flange = coupling.flange!;
  const strength = boltTensileOf(coupling, flange, needs);
  const load = ratedShaftLoad(analysis, shaft, needs);
  const criterion = { formula: 'class', said: 'class formula', chosenBy: 'author' } as const;
  const rule = load && shaftStrength(shaft, load, criterion, shaft === line.shafts.at(-1), needs);
  const [count, circle] = [flange.bolts?.value?.count, flange.boltCircle?.value];
  const tensile = shaft.grade?.tensileStrength?.value;
  if (!strength || !load || !rule || !count || !circle || !tensile) return undefined;
  const bolts = given('number of bolts', 'z', 'number', count, { origin: flange.bolts!.origin });
  const boltCircle = renamed(circle, 'bolt circle', 'D');
  return {
    byPower: classFittedBoltByPower({
      power: load.power,
      speed: load.speed,
      boltCircle,
      bolts,
      tensileStrength: strength,
    }),
    byShaft: classFittedBoltByShaft({
      shaftDiameter: renamed(rule.needed, 'rule diameter', 'd'),
      shaftTensileStrength: renamed(tensile, 'tensile strength of the shaft', 'T'),
      boltCircle,
      bolts,
      boltTensileStrength: renamed(strength, 'tensile strength of the bolts', 'T_b'),
    }),
  };
}
