import { listed, PROPELLER_TOLERANCES, percent, type ToleranceClass } from '@tailshaft/mechanics';
import { asStated } from '@tailshaft/vocabulary';
import { pairOf } from '../../analysis/twin.js';
import type { ArrangementContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Criterion, Verdict } from '../../judge/verdict.js';
import { home } from '../../model/part.js';
import type { Propeller } from '../../model/shafting.js';
import type { ShaftLine } from '../../model/vessel.js';
import { changed, TWIN_LINES } from '../example-specs.js';
import { examples } from '../examples.js';
import { ratioTolerance } from '../planned.js';
import { writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';

const INFO: RuleInfo = {
  id: 'propeller/pair-pitch',
  title: 'The propellers of a pair have equal pitch',
  mistakes: ['P07'],
  severity: 'warning',
  criterion:
    'pitch of port against starboard, within the sum of their tolerance classes (class II where none is stated), ' +
    'or as the criteria say',
  source: {
    title: 'ISO 484-2:1981, mean pitch of the propeller; two trade pages',
    year: 1981,
    confidence: 'published',
  },
  manual:
    'Two propellers of one stamp that were repaired separately are often no longer a pair: at equal levers ' +
    'one engine works harder and runs slower, and the fault is looked for in cables and injectors. Pitches ' +
    'are compared where both shafts turn alike; a measured pitch is compared only with a measured one. Have ' +
    'the two pitched as a pair, with one gauge.',
  caution: 'Mean pitch is one figure of many: cup, diameter and blade form count too.',
  examples: examples(() => ({
    failing: changed(TWIN_LINES, ['pitch 24 in', 'pitch 22.5 in']),
    passing: TWIN_LINES,
    cannotTell: changed(TWIN_LINES, ['pitch 24 in', 'pitch unknown']),
  })),
};

export const pairPitch: Rule = { ...INFO, scope: 'arrangement', check };

/** Taken where no class is stated. */
const USUAL_CLASS: ToleranceClass = 'II';

function check(context: ArrangementContext): Verdict | undefined {
  const { arrangement, vessel, analysisOf } = context;
  const pair = pairOf(arrangement);
  const [one, other] = [pair?.port.propeller, pair?.starboard.propeller];
  if (!pair || !one || !other || !(one.pitch || other.pitch)) return undefined;
  const say = sayFor(INFO, arrangement.path);
  const place = (other.pitch ?? other).origin;
  const needs = new Needs();
  const ratios = [pair.port, pair.starboard].map(
    line => needs.take(analysisOf(line).overallRatio('ahead'))?.si,
  );
  if (ratios[0] && ratios[1] && Math.abs(ratios[0] / ratios[1] - 1) > ratioTolerance(vessel).share) {
    return say.doesNotApply({
      place,
      message: `${arrangement.path}: the ratios of the two sides differ, so the pitches need not agree.`,
    });
  }
  const measured = [one, other].some(isMeasured);
  const port = pitchOf(pair.port, one, measured, needs);
  const starboard = pitchOf(pair.starboard, other, measured, needs);
  const related = one.pitch
    ? [{ at: one.pitch.origin, message: `${one.pitch.written} on the port side` }]
    : [];
  // Whether they need agree at all rests on the ratios.
  if (!port || !starboard || needs.any) {
    return waits(say, needs, place, `${arrangement.path}: whether the two propellers are a pair`, {
      related,
    });
  }
  const { share, criterion } = allowed(context, one, other);
  const off = Math.max(port.si, starboard.si) / Math.min(port.si, starboard.si) - 1;
  const both = `port ${one.pitch!.written}, starboard ${other.pitch!.written} of pitch`;
  if (off <= share) {
    return say.holds({
      place,
      related,
      criterion,
      message: `${arrangement.path}: ${both}: a pair${off > 1e-6 ? ` to ${percent(off)}` : ''}.`,
    });
  }
  const take = (to: Propeller, from: Propeller, side: string) => ({
    title: `Repitch the ${side} propeller to ${from.pitch!.written}, to match the other: both engines then carry the same load`,
    edits: [writeInPlace(to, 'pitch', asStated(from.pitch!))],
  });
  return say.fails({
    place,
    related,
    criterion,
    balance: { same: [port, starboard], within: share * Math.min(port.si, starboard.si) },
    message: `${arrangement.path}: ${both} differ by ${percent(off)}: not a pair; ${criterion.said}. At equal levers one engine works harder. Have them pitched as a pair, measured with one gauge.`,
    routes: () => [take(one, other, 'port'), take(other, one, 'starboard')],
  });
}

function isMeasured(propeller: Propeller): boolean {
  return propeller.pitch?.value !== undefined && propeller.pitch.evidence?.kind === 'measured';
}

/** The pitch of one side; a bare or stamped one does not stand beside one that was measured. */
function pitchOf(line: ShaftLine, propeller: Propeller, measured: boolean, needs: Needs) {
  const wanted = {
    what: `${measured ? 'measured ' : ''}pitch of the propeller of ${line.path}`,
    host: home(propeller),
    property: 'pitch',
  };
  const value = needs.fact(propeller.pitch, wanted);
  if (value && measured && !isMeasured(propeller)) return needs.miss(wanted, propeller.pitch!.origin);
  return value;
}

function allowed(
  { vessel }: ArrangementContext,
  one: Propeller,
  other: Propeller,
): { share: number; criterion: Criterion } {
  const own = vessel.criteria?.pitchDifference?.value;
  if (own) {
    const said = `pitch difference at most ${own.written ?? percent(own.si)}`;
    return { share: own.si, criterion: { said, chosenBy: 'author' } };
  }
  const classes = [one, other].map(propeller => propeller.toleranceClass?.value);
  const limit = (quality: ToleranceClass) => (PROPELLER_TOLERANCES.pitch.limit[quality] ?? 0) / 100;
  const share = classes.reduce((sum, quality) => sum + limit(quality ?? USUAL_CLASS), 0);
  const stated = classes.every(quality => quality !== undefined);
  const names = listed([...new Set(classes.map(quality => quality ?? USUAL_CLASS))]);
  return {
    share,
    criterion: {
      said: `at most ${percent(share)} between two propellers of class ${names}${stated ? '' : ' (assumed where none is stated)'}`,
      chosenBy: stated ? 'author' : 'default',
    },
  };
}
