import {
  listed,
  percent,
  shaftServiceFactors,
  smallCraftSafetyFactor,
  type Value,
} from '@tailshaft/mechanics';
import { allowing } from '../../analysis/allowing.js';
import { changedOf, fieldWords, keptOf, missChanged } from '../../analysis/kept.js';
import type { LineAnalysis } from '../../analysis/line.js';
import type { Load } from '../../analysis/loads.js';
import { beforeWords } from '../../analysis/mode-before.js';
import { comparedWith } from '../../analysis/same-stages.js';
import { sizesWithEnds, weakestInTorsion } from '../../analysis/shaft-sections.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Shaft } from '../../model/shafting.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, REPOWER } from '../example-specs.js';
import { examples } from '../examples.js';
import { gearEdits } from '../gear-edits.js';
import { ratioTolerance } from '../planned.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { findOffered } from './offered-ratios.js';
import { DEFER } from './sources.js';

const INFO: RuleInfo = {
  id: 'capacity/retained-shaft-torque',
  title: 'A retained shaft carries no more torque than before',
  mistakes: ['T04'],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion:
    'greatest torque of the propeller shaft after the change against before, at rated power and at peak torque',
  source: {
    title: 'torque × ratio × efficiency, before and after; small-craft shaft formula for the factor',
    confidence: 'derived',
  },
  manual:
    'Shafts break by torque, not by power. A deeper ratio on an engine of the same power and speed raises shaft ' +
    'torque in proportion, and so does an engine with more torque on the old gear, while the retained shaft was ' +
    'chosen for the old torque. A deeper ratio on an engine that turns faster in the same proportion changes ' +
    'nothing; both are computed. Where grade and diameter are known, the factor against torsional yield is shown ' +
    'before and after. Fit a larger or stronger shaft or a shallower ratio, or accept the finding with the proof ' +
    'that the shaft holds.',
  caution:
    `${DEFER} Pits, keyway cracks and earlier strikes are not in any factor: draw and crack-test a shaft before ` +
    'it is retained.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(REPOWER, ['peak torque 1530 N.m', 'peak torque 1300 N.m']),
    passing: REPOWER,
    cannotTell: changed(REPOWER, ['    power 300 kW at 2300 rpm', '    power unknown']),
  })),
};

export const retainedShaftTorque: Rule = { ...INFO, scope: 'line', check };

/** Facts of the shaft that decide what torque it carries. */
const STRENGTH_RESTS_ON = [
  'diameter',
  'boreDiameter',
  'sections',
  'taperLargeEnd',
  'couplingEnd',
  'material',
] as const;

/** The least factor that any published use of the small-craft formula allows. */
const LEAST_FACTOR = Math.min(...shaftServiceFactors.map(one => one.low));

function check(context: LineContext): Verdict | undefined {
  const { line, analysis, analysisOf, vessel } = context;
  const shaft = line.shafts.find(one => keptOf(one, line, vessel));
  const kept = shaft && keptOf(shaft, line, vessel);
  if (!kept) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const held = comparedWith(analysis, analysisOf(kept.line), vessel);
  const { cancels = false } = held;
  const now = greatestLoad(held.now, needs);
  const then = greatestLoad(held.before, needs);
  const what = `${line.name}: whether the retained shaft carries more torque than before`;
  if (!now || !then) {
    const half = now ?? then;
    const known =
      half &&
      `the shaft carries ${analysis.tell(half.rated.torque)} at rated power ${now ? 'now' : 'before'}`;
    return waits(say, needs, shaft.origin, what, known ? { known } : {});
  }
  const same = isSameEngine(line, kept.line);
  const compared = comparable(now, then, same);
  if (!compared || compared.open) {
    noteOpenPeaks(context, kept.line, needs);
    const { share } = ratioTolerance(vessel);
    const fails =
      compared !== undefined && compared.after.torque.si > tolerated(compared.before.torque, share).si;
    if (!fails) {
      const known = `at rated power it goes from ${analysis.tell(then.rated.torque)} to ${analysis.tell(now.rated.torque)}`;
      const { share } = ratioTolerance(vessel);
      const most = [mostOf(then), mostOf(now)] as const;
      const factors = cancels ? [] : [factorOf(kept.was, most[0]), factorOf(shaft, most[1])];
      return waits(say, needs, shaft.origin, what, {
        known,
        workings: [
          ...[then.rated.torque, now.rated.torque],
          ...[tolerated(most[0].torque, share), most[1].torque],
          ...factors.flatMap(one => one ?? []),
        ],
      });
    }
  }
  const { before, after } = compared;
  const changed = changedOf(kept, STRENGTH_RESTS_ON);
  const both = now.peak !== undefined && then.peak !== undefined;
  // What the numbers are, where they are not the greatest of both.
  const point = both ? '' : compared.open ? ', the new engine at rated power alone' : ', at rated power';
  const at = cancels ? `${point}, before the ratio that stays and is not known: it takes itself out` : point;
  const rise = after.torque.si / before.torque.si - 1;
  const factors = [factorOf(kept.was, before), factorOf(shaft, after)] as const;
  const said = {
    place: shaft.origin,
    capacity: tolerated(before.torque, ratioTolerance(vessel).share),
    demand: after.torque,
    workings: [before.torque, after.torque, ...(cancels ? [] : factors.flatMap(one => one ?? []))],
  };
  if (changed.length > 0) return judgeModified(context, shaft, changed, factors, { ...said, cancels });
  const words = beforeWords(line, kept.line);
  const numbers = `${analysis.tell(before.torque)}${words === 'before' ? '' : ` (${words})`} to ${analysis.tell(after.torque)}`;
  if (rise <= ratioTolerance(vessel).share) {
    return say.holds({
      ...said,
      message: `${line.name}: torque of the retained shaft goes from ${numbers}${at}: it does not rise.`,
    });
  }
  const [was, is] = factors;
  const margin = cancels
    ? 'what that leaves of its strength cannot be said without the ratio'
    : was && is
      ? `its factor against torsional yield falls from ${was.si.toFixed(1)} to ${is.si.toFixed(1)}`
      : 'its capacity is unknown without its diameter and the torsional yield of its grade';
  const weak = !cancels && is !== undefined && is.si < LEAST_FACTOR;
  return say.fails({
    ...said,
    severity: weak ? 'error' : 'warning',
    message:
      `${line.name}: torque of the retained shaft rises ${percent(rise)}, from ${numbers}${at}; ${margin}. ` +
      (weak
        ? `No published use of the small-craft formula allows less than ${LEAST_FACTOR}: fit a larger or stronger shaft.`
        : 'Prove that it is strong enough, fit a larger or stronger shaft, or choose a shallower ratio.'),
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
      }).map(({ ratio, gear, change, other }) => ({
        title: `Use ${ratio}: shaft torque does not rise, ${change}${factorWords(shaft, other)}`,
        edits: gearEdits(line.gear!, gear),
      })),
  });
}

/** A kept shaft that is modified carries another torque: then its factors are compared, before and after. */
function judgeModified(
  { line }: LineContext,
  shaft: Shaft,
  changed: readonly string[],
  [was, is]: readonly [Value<'number'> | undefined, Value<'number'> | undefined],
  said: { readonly place: Shaft['origin']; readonly workings: readonly Value[]; readonly cancels: boolean },
): Verdict {
  const say = sayFor(INFO, line.path);
  const { place, workings, cancels } = said;
  const words = listed(changed.map(one => fieldWords(shaft, one)));
  if (!was || !is) {
    const needs = new Needs();
    missChanged(needs, shaft, changed, 'strength of the shaft');
    return say.cannotTell(needs, {
      place,
      workings,
      message: `${line.name}: the kept shaft is modified in its ${words}, so its strength must be compared. Needed: its diameter and the torsional yield of its grade, before and after.`,
    });
  }
  const numbers = cancels
    ? `its factor against torsional yield is ${percent(is.si / was.si)} of what it was, whatever the ratio that stays`
    : `its factor against torsional yield goes from ${was.si.toFixed(1)} to ${is.si.toFixed(1)}`;
  return say.compare({
    place,
    capacity: is,
    demand: was,
    workings: [...workings],
    message: `${line.name}: the kept shaft is modified in its ${words}; ${numbers}: it does not fall.`,
    failMessage: `${line.name}: the kept shaft is modified in its ${words}; ${numbers}. Prove that it is strong enough, fit a larger or stronger shaft, or choose a shallower ratio.`,
  });
}

/** What the new torque is held against: equal within what data sheets round, so that the margin says what the verdict says. */
function tolerated(torque: Value<'torque'>, share: number): Value<'torque'> {
  return allowing(
    torque,
    share,
    'torque of the shaft before',
    'within which two data sheets are taken as equal',
  );
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

/**
 * The torques that say whether it rises. Where the peak of the new engine is not known, its rated torque is the least that
 * it gives: it can only show that the torque rises (`open`). Where that of the old one is not known, its rated torque is
 * the least that the shaft was used to: it can only show that it does not. The peak of one and the same engine is in both
 * alike.
 */
function comparable(
  now: Loads,
  then: Loads,
  sameEngine: boolean,
): { readonly before: Load; readonly after: Load; readonly open: boolean } | undefined {
  if (now.peak && then.peak) return { before: mostOf(then), after: mostOf(now), open: false };
  if (sameEngine) return { before: then.rated, after: now.rated, open: false };
  if (then.peak) return { before: mostOf(then), after: now.rated, open: true };
  const after = mostOf(now);
  if (now.peak && after.torque.si <= then.rated.torque.si) return { before: then.rated, after, open: false };
  return undefined;
}

function mostOf({ rated, peak }: Loads): Load {
  return peak ? greater(rated, peak) : rated;
}

/** One entry at one rating gives the same torque, known or not, and so do both with the same beside them. */
function isSameEngine(now: ShaftLine, then: ShaftLine): boolean {
  const [one, other] = [now.engine, then.engine];
  const beside = ({ joined = [] }: ShaftLine) => joined.map(mover => mover.entry?.origin);
  const [some, others] = [beside(now), beside(then)];
  if (some.length !== others.length || some.some((each, at) => !each || each !== others[at])) return false;
  if (!one?.entry || one.entry.origin !== other?.entry?.origin) return false;
  return one.rating?.origin === other.rating?.origin;
}

function noteOpenPeaks({ analysis, analysisOf }: LineContext, before: ShaftLine, needs: Needs): void {
  needs.take(analysis.peakTorque);
  needs.take(analysisOf(before).peakTorque);
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
  const needs = new Needs();
  const sizes = sizesWithEnds(shaft, needs);
  const torsionalYield = shaft.grade?.torsionalYield?.value;
  if (!sizes || needs.any || !torsionalYield) return undefined;
  return smallCraftSafetyFactor({
    ...weakestInTorsion(sizes).size,
    torsionalYield,
    power: load.power,
    speed: load.speed,
  });
}
