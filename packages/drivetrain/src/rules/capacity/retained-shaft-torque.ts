import { shaftServiceFactors, smallCraftSafetyFactor, type Value } from '@tailshaft/mechanics';
import type { LineAnalysis } from '../../analysis/line.js';
import type { Load } from '../../analysis/loads.js';
import { sizesOf, weakestInTorsion } from '../../analysis/shaft-sections.js';
import { percent } from '../../analysis/telling.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Shaft } from '../../model/shafting.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import { gearEdits } from '../gear-edits.js';
import { ratioTolerance } from '../planned.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { findOffered } from './offered-ratios.js';
import { DEFER } from './sources.js';

const INFO: RuleInfo = {
  id: 'capacity/retained-shaft-torque',
  title: 'A retained shaft is not given more torque than before',
  mistakes: ['T04'],
  severity: 'warning',
  criterion:
    'greatest torque of the propeller shaft after the change against before, at rated power and at peak torque',
  source: {
    title: 'torque × ratio × efficiency, before and after; small-craft shaft formula for the factor',
    confidence: 'derived',
  },
  manual:
    'Torque breaks shafts, not power. A deeper ratio on an engine of the same power and speed raises shaft torque in ' +
    'proportion, and so does an engine with more torque on the old gear; the shaft that stays was chosen for the old one. A ' +
    'deeper ratio on an engine that turns faster in the same measure changes nothing, and this rule then says nothing: it ' +
    'computes both. Where grade and diameter of the shaft are known the factor against torsional yield is shown before ' +
    'and after. Put it right with a larger or stronger shaft, a shallower ratio, or accept it with the proof that the shaft holds.',
  caution: `${DEFER} Pits, keyway cracks and earlier strikes are not in any factor: draw and crack-test a shaft before it is kept.`,
  examples: examples(() => ({
    failing: changed(REPOWER, ['peak torque 1530 N.m', 'peak torque 1300 N.m']),
    passing: REPOWER,
    cannotTell: changed(REPOWER, ['    power 300 kW at 2300 rpm', '    power unknown']),
  })),
};

export const retainedShaftTorque: Rule = { ...INFO, scope: 'line', check };

/** The least factor that any published use of the small-craft formula allows. */
const LEAST_FACTOR = Math.min(...shaftServiceFactors.map(one => one.low));

function check(context: LineContext): Verdict | undefined {
  const { line, analysis, analysisOf, vessel } = context;
  const shaft = line.shafts.find(one => one.change === 'retained');
  if (!shaft || !line.before) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const now = greatestLoad(analysis, needs);
  const then = greatestLoad(analysisOf(line.before), needs);
  if (!now || !then) {
    return say.cannotTell(needs, {
      place: shaft.origin,
      message: `${line.name}: whether the retained shaft gets more torque than before cannot be told without ${needs.missing.map(gap => gap.what).join('; ')}.`,
      routes: () => stubRoutes(needs.missing),
    });
  }
  // Compared where both are known: peak torque of one engine against rated torque of the other says nothing.
  const both = now.peak !== undefined && then.peak !== undefined;
  const after = both ? greater(now.rated, now.peak!) : now.rated;
  const before = both ? greater(then.rated, then.peak!) : then.rated;
  const rise = after.torque.si / before.torque.si - 1;
  const factors = [factorOf(shaft, before), factorOf(shaft, after)] as const;
  const said = {
    place: shaft.origin,
    capacity: before.torque,
    demand: after.torque,
    workings: [before.torque, after.torque, ...factors.flatMap(one => (one ? [one] : []))],
  };
  const numbers = `${analysis.tell(before.torque)} to ${analysis.tell(after.torque)}`;
  if (rise <= ratioTolerance(vessel).share) {
    return say.holds({
      ...said,
      message: `${line.name}: torque of the retained shaft goes from ${numbers}${both ? '' : ', at rated power'}: it does not rise.`,
    });
  }
  const [was, is] = factors;
  const margin =
    was && is
      ? `its factor against torsional yield falls from ${was.si.toFixed(1)} to ${is.si.toFixed(1)}`
      : 'what it may carry cannot be said without its diameter and the torsional yield of its grade';
  const weak = is !== undefined && is.si < LEAST_FACTOR;
  return say.fails({
    ...said,
    severity: weak ? 'error' : 'warning',
    message:
      `${line.name}: torque of the retained shaft rises ${percent(rise)}, from ${numbers}${both ? '' : ' at rated power'}; ${margin}. ` +
      (weak
        ? `No published use of the small-craft formula allows less than ${LEAST_FACTOR}: it takes a larger or stronger shaft.`
        : 'Show that it holds, fit a larger or stronger one, or take a shallower ratio.'),
    related: [
      ...(line.gear
        ? [{ at: line.gear.ratioUsed?.origin ?? line.gear.origin, message: 'the ratio now' }]
        : []),
      ...(line.engine ? [{ at: line.engine.origin, message: 'the engine now' }] : []),
    ],
    routes: () =>
      findOffered(context, other => {
        const load = greatestLoad(other, new Needs());
        const torque = load && (both ? greater(load.rated, load.peak ?? load.rated) : load.rated).torque;
        return torque !== undefined && torque.si / before.torque.si - 1 <= ratioTolerance(vessel).share;
      }).map(({ words, change, other }) => ({
        title: `Use ${words.ratio}: shaft torque does not rise, ${change}${factorWords(shaft, other)}`,
        edits: gearEdits(line.gear!, words),
      })),
  });
}

function factorWords(shaft: Shaft, other: LineAnalysis): string {
  const load = greatestLoad(other, new Needs());
  const factor = load && factorOf(shaft, greater(load.rated, load.peak ?? load.rated));
  return factor ? `, factor ${factor.si.toFixed(1)}` : '';
}

interface Loads {
  readonly rated: Load;
  readonly peak: Load | undefined;
}

function greatestLoad(analysis: LineAnalysis, needs: Needs): Loads | undefined {
  const point = needs.take(analysis.rated);
  const loads = point && analysis.loads(point);
  if (!loads?.shaft) {
    needs.take({ value: undefined, missing: loads?.missing ?? [] });
    return undefined;
  }
  const peak = analysis.peakTorque.value;
  return { rated: loads.shaft, peak: peak && analysis.loads(peak).shaft };
}

function greater(one: Load, other: Load): Load {
  return other.torque.si > one.torque.si ? other : one;
}

/** Torsional yield over torsional stress, which is what the small-craft formula calls its safety factor. */
function factorOf(shaft: Shaft, load: Load): Value<'number'> | undefined {
  const sizes = sizesOf(shaft, new Needs());
  const torsionalYield = shaft.grade?.torsionalYield?.value;
  if (!sizes || !torsionalYield) return undefined;
  return smallCraftSafetyFactor({
    ...weakestInTorsion(sizes).size,
    torsionalYield,
    power: load.power,
    speed: load.speed,
  });
}
