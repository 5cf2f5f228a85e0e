import { percent, powerAllowed, renamed } from '@tailshaft/mechanics';
import type { LineAnalysis } from '../../analysis/line.js';
import type { Load } from '../../analysis/loads.js';
import {
  type AppliedCriterion,
  mildestCriterion,
  shaftCriteria,
  smallCraftDefault,
} from '../../analysis/shaft-criteria.js';
import { endsTakenFor, sizesOf } from '../../analysis/shaft-sections.js';
import { gradeOf, ratedShaftLoad, type ShaftStrength, shaftStrength } from '../../analysis/shaft-strength.js';
import type { LineContext } from '../../judge/context.js';
import { atLeastWords } from '../../judge/needed.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import { marginOf, type Verdict } from '../../judge/verdict.js';
import { type Apart, apart, aside, each } from '../../model/reads.js';
import type { Shaft } from '../../model/shafting.js';
import type { ShaftLine, Vessel } from '../../model/vessel.js';
import { findOffered } from '../capacity/offered-ratios.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { gearEdits } from '../gear-edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { diameterOf, strongerShafts } from './shaft-routes.js';
import { DEFER, SHAFT_DIAMETER } from './sources.js';

const CHOSEN = changed(SINGLE_LINE, [
  '  arrangement proposed {',
  '  criteria { shaft diameter by small-craft formula factor 5.0 "pilot service" }\n\n  arrangement proposed {',
]);

const INFO: RuleInfo = {
  id: 'shafting/diameter',
  title: 'Shaft diameter meets the chosen criterion',
  mistakes: ['L01'],
  severity: 'error',
  estimate: USUAL_ESTIMATE,
  criterion: 'power per speed that the fitted shaft may carry against its load at rated power',
  source: SHAFT_DIAMETER,
  manual:
    'The small-craft formula is torsion at the torsional yield divided by a safety factor: it depends on power ' +
    'per speed, so the same bar carries twice the power at twice the speed. The class formula uses tensile ' +
    'strength and gives thicker shafts. Both are solved here for what the fitted shaft may carry. Choose one in ' +
    'the criteria: "shaft diameter by small-craft formula factor 5.0", "shaft diameter by class formula". With none chosen, the small-craft formula judges with the ' +
    'published factor for duty and passengers; where the class formula can be computed and disagrees, ' +
    'both are shown. Fit a thicker bar, a stronger grade, or a ' +
    'shallower ratio, which lowers the torque. Every section of a stepped shaft is judged and the weakest named; ' +
    'a bore is counted.',
  caution:
    `${DEFER} Neither formula covers fatigue, corrosion, bending by an overhung propeller, ice or grounding; ` +
    'unprotected shafts in sea water are outside the class formula.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(CHOSEN, ['diameter 65 mm', 'diameter 45 mm']),
    passing: CHOSEN,
    cannotTell: changed(CHOSEN, ['  torsional yield 70000 psi\n', '']),
  })),
};

export const diameter: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line } = context;
  if (!(line.engine || line.motor)) return undefined;
  return each(line.shafts, shaft => judgeShaft(context, shaft));
}

function judgeShaft(context: LineContext, shaft: Shaft): Apart<Verdict> {
  const { line, analysis, vessel } = context;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const criteria = shaftCriteria(vessel, needs);
  const load = ratedShaftLoad(analysis, shaft, needs);
  if (!load || criteria.length === 0) {
    sizesOf(shaft, needs);
    gradeOf(shaft, needs);
  }
  const least =
    load && criteria.length === 0 && !chooses(vessel)
      ? shaftStrength(shaft, load, mildestCriterion(vessel), isLast(line, shaft), needs)
      : undefined;
  if (least && least.capacity.si < least.demand.si)
    return each([least], one => judge(context, shaft, load!, one));
  const strengths = load
    ? criteria.flatMap(one => shaftStrength(shaft, load, one, isLast(line, shaft), needs) ?? [])
    : [];
  const verdicts = each(strengths, one => judge(context, shaft, load!, one));
  if (!needs.any) return verdicts;
  const criterion = criteria.map(one => one.said).join('; ') || INFO.criterion;
  return apart(
    () => verdicts,
    () =>
      waits(say, needs, shaft.origin, `${line.name}: whether the shaft is thick enough`, {
        criterion,
        ...(least ? knownOf(context, least) : {}),
      }),
  );
}

/** What is known of a shaft of which the factor that it must have is not. */
function knownOf(
  { analysis }: LineContext,
  { weakest, demand, needed, fittedFactor, criterion }: ShaftStrength,
) {
  const factor = fittedFactor && `factor ${fittedFactor.si.toFixed(1)} against torsional yield`;
  return {
    known: `under ${analysis.tell(demand, 3)} the ${weakest.written} ${weakest.name} has ${factor}, and meets the ${criterion.said}, by which ${analysis.tell(needed, 3)} would do`,
    workings: [needed, ...(fittedFactor ? [fittedFactor] : [])],
  };
}

/** Whether the criteria name a formula with what it takes; only a factor by duty is told by the duty. */
function chooses({ criteria }: Vessel): boolean {
  return (criteria?.shaftDiameter ?? []).some(
    ({ value }) => value?.formula !== 'small-craft' || value.factor !== undefined,
  );
}

function judge(context: LineContext, shaft: Shaft, load: Load, strength: ShaftStrength): Verdict {
  const { line, analysis } = context;
  const say = sayFor(INFO, line.path);
  const { capacity, demand, needed, fittedFactor, criterion, weakest, judged } = strength;
  const carried = renamed(powerAllowed({ capacity, speed: load.speed }), 'power that the shaft takes');
  const factor = fittedFactor ? `; its factor against torsional yield is ${fittedFactor.si.toFixed(1)}` : '';
  const hollow = weakest.size.bore.si > 0;
  const place = `${weakest.written}${hollow ? ` hollow (bore ${analysis.tell(weakest.size.bore, 3)})` : ''} ${weakest.name}`;
  const numbers =
    `the ${place}${judged > 1 ? `, the weakest of ${judged} diameters,` : ''} carries ${analysis.tell(carried)} at its ${analysis.tell(load.speed)} (${analysis.tell(capacity, 3)}) ` +
    `by the ${criterion.said}; its load is ${analysis.tell(load.power)}${factor}`;
  const other = otherFormula(context, shaft, load, strength);
  return say.compare({
    place: diameterOf(shaft, weakest).origin,
    criterion,
    capacity,
    demand,
    // What a kept shaft bears more than before is the same shaft, too thin: one of another diameter is fitted once.
    explains:
      line.shafts.length === 1 ? [{ rule: 'capacity/retained-shaft-torque', subject: line.path }] : [],
    workings: [carried, needed, ...(fittedFactor ? [fittedFactor] : []), ...endsTakenFor(shaft)],
    message: `${line.name}: ${numbers}.${other}`,
    failMessage: `${line.name}: ${numbers}. Fit ${atLeastWords(diameterOf(shaft, weakest).value ?? needed, needed.si)} ${hollow && criterion.formula === 'small-craft' ? 'of solid bar ' : ''}of this grade${weakest.end ? ' there' : ''}, a stronger grade, or less ratio.${other}`,
    related: [
      { at: shaft.material!.origin, message: `its grade: ${shaft.grade!.name}` },
      ...(line.gear
        ? [{ at: line.gear.ratioUsed?.origin ?? line.gear.origin, message: 'the ratio before it' }]
        : []),
    ],
    routes: () => routes(context, shaft, load, strength),
  });
}

/** What the formula that was not chosen says, where it can be worked out and disagrees. */
function otherFormula(
  { line, vessel }: LineContext,
  shaft: Shaft,
  load: Load,
  judged: ShaftStrength,
): string {
  if ((vessel.criteria?.shaftDiameter ?? []).length > 1) return '';
  const needs = new Needs();
  const criterion: AppliedCriterion | undefined =
    judged.criterion.formula === 'small-craft'
      ? { formula: 'class', said: 'class formula', chosenBy: 'default' }
      : smallCraftDefault(vessel, needs);
  // A remark beside the verdict, which does not rest on it.
  const other = criterion && aside(() => shaftStrength(shaft, load, criterion, isLast(line, shaft), needs));
  if (!other) return '';
  const [own, its] = [marginOf(judged.capacity, judged.demand), marginOf(other.capacity, other.demand)];
  if (own === undefined || its === undefined || own >= 0 === its >= 0) return '';
  return ` The ${other.criterion.said} disagrees: by it the margin is ${percent(its)}.`;
}

function routes(context: LineContext, shaft: Shaft, load: Load, judged: ShaftStrength): Route[] {
  const { criterion, weakest } = judged;
  const { line } = context;
  const all = shaftCriteria(context.vessel, new Needs());
  const worst = (other: Shaft, under: Load): number | undefined => {
    const margins = (all.length > 0 ? all : [criterion]).map(one => {
      const strength = shaftStrength(other, under, one, isLast(line, shaft), new Needs());
      return strength && marginOf(strength.capacity, strength.demand);
    });
    return margins.some(one => one === undefined) ? undefined : Math.min(...margins.map(one => one!));
  };
  const marginWith = (other: LineAnalysis) => {
    const under = ratedShaftLoad(other, shaft, new Needs());
    return under && worst(shaft, under);
  };
  return [
    ...strongerShafts(context, shaft, other => worst(other, load), 'margin', weakest.section),
    ...findOffered(context, other => (marginWith(other) ?? -1) >= 0).map(
      ({ ratio, gear, change, other }) => ({
        title: `Use ${ratio}: shaft margin ${percent(marginWith(other)!)}, ${change}`,
        edits: gearEdits(line.gear!, gear),
      }),
    ),
  ];
}

/** The aftmost shaft carries the propeller. */
function isLast(line: ShaftLine, shaft: Shaft): boolean {
  return shaft === line.shafts.at(-1);
}
