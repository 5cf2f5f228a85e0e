import {
  bearingLengthInDiameters,
  given,
  judgeSternBearing,
  renamed,
  type SternBearingRule,
  sternBearingRules,
  strutBearingLength,
  type Value,
} from '@tailshaft/mechanics';
import { sizesAtBearing, thickest } from '../../analysis/shaft-sections.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Bearing, Shaft } from '../../model/shafting.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_BEARINGS } from './bearing-specs.js';
import { DEFER } from './sources.js';

const INFO: RuleInfo = {
  id: 'shafting/bearing-length',
  title: 'The bearing that carries the propeller is long enough',
  mistakes: [],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion: 'length of the aftmost bearing in shaft diameters against the guide for its lubrication',
  source: sternBearingRules[0]!.source,
  manual:
    'The aftmost bearing carries the propeller. Lubricated by water or grease it is four shaft diameters long, ' +
    'by oil two; a shorter bearing wears oval and lets the shaft tilt. Class allows shorter bearings on ' +
    'conditions: low pressure with oil, approved and tested material with water. State its length and ' +
    'lubrication; fit a longer bearing, or accept the finding with the approval of the material.',
  caution: `${DEFER} Pressure is nominal: an edge that carries alone is loaded far more.`,
  examples: examples(() => ({
    failing: changed(WITH_BEARINGS, [
      'at 2.95 m\n          length 260 mm',
      'at 2.95 m\n          length 120 mm',
    ]),
    passing: WITH_BEARINGS,
    cannotTell: changed(WITH_BEARINGS, [
      'at 2.95 m\n          length 260 mm',
      'at 2.95 m\n          length unknown',
    ]),
  })),
};

export const bearingLength: Rule = { ...INFO, scope: 'line', check };

/** Oil bearings are taken as white metal: the limits of length are the same for approved synthetics. */
const KIND: Readonly<Record<'water' | 'oil' | 'grease', SternBearingRule['kind']>> = {
  water: 'water',
  oil: 'oil, white metal',
  grease: 'grease',
};

function check(context: LineContext): Verdict | undefined {
  const { line } = context;
  const shaft = line.shafts.at(-1);
  if (!shaft || !line.propeller) return undefined;
  const bearings = outer(shaft);
  const bearing = aftmost(bearings);
  if (!bearing) return undefined;
  const asked = bearing.length ?? bearing.lubrication ?? bearings.find(one => one.length);
  return asked && judge(context, shaft, bearing, bearings);
}

function judge(
  { line, analysis }: LineContext,
  shaft: Shaft,
  bearing: Bearing,
  bearings: readonly Bearing[],
): Verdict {
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const name = `bearing ${bearing.name}`;
  const place = bearing.length?.origin ?? bearing.origin;
  const wanted = (property: string) => ({ what: `${property} of ${name}`, host: bearing.origin, property });
  if (bearings.length > 1) {
    for (const one of bearings) {
      const what = `place of bearing ${one.name}`;
      needs.fact(one.position, { what, host: one.origin, property: 'at' });
    }
  }
  needs.fact(bearing.kind, wanted('kind'));
  const length = needs.fact(bearing.length, wanted('length'));
  const by = needs.fact(bearing.lubrication, wanted('lubrication'));
  const sizes = sizesAtBearing(shaft, bearing, needs);
  if (by === 'water' && sizes)
    needs.found(
      strutBearingLength({ diameter: renamed(thickest(sizes).size.outsideDiameter, 'shaft diameter', 'd') }),
    );
  if (!length || !by || !sizes || needs.any)
    return waits(say, needs, place, `${line.name}: whether ${name} is long enough`);
  const diameter = renamed(thickest(sizes).size.outsideDiameter, 'shaft diameter', 'd');
  const count: Value<'ratio'> = bearingLengthInDiameters({ length, diameter });
  const result = judgeSternBearing(KIND[by], count);
  const guide = result.rule.lengthOverDiameter;
  const needed = by === 'water' ? [strutBearingLength({ diameter })] : [];
  const numbers = `${name} is ${analysis.tell(length)} long, ${count.si.toFixed(1)} diameters; ${guide} is the guide for ${by}`;
  const said = { place, workings: [count, ...needed] };
  if (result.result === 'long enough') return say.holds({ ...said, message: `${line.name}: ${numbers}.` });
  const way =
    result.result === 'too short'
      ? ''
      : ` It may be as short as that only with ${result.rule.shorter!.condition}.`;
  return say.fails({
    ...said,
    over: guide / count.si,
    balance: { more: count, less: given('guide for the length', 'n', 'ratio', guide) },
    message: `${line.name}: ${numbers}.${way} Fit a longer one, or accept it with the approval of the material.`,
  });
}

/** Bearings that may carry the propeller: all but those inside the vessel. */
function outer(shaft: Shaft): Bearing[] {
  return (shaft.bearings ?? []).filter(
    one => one.kind?.value !== 'intermediate' && one.kind?.value !== 'thrust',
  );
}

/** The last bearing by place. */
function aftmost(bearings: readonly Bearing[]): Bearing | undefined {
  const place = (one: Bearing) => one.position?.value?.si ?? Number.POSITIVE_INFINITY;
  return bearings.reduce<Bearing | undefined>(
    (last, one) => (last && place(last) > place(one) ? last : one),
    undefined,
  );
}
