import {
  bearingClearance,
  given,
  renamed,
  strutBearingOutside,
  thickestShaftInTube,
  type Value,
  wallInTube,
} from '@tailshaft/mechanics';
import { type SizedSection, sizesAtBearing, sizesOf, thickest } from '../../analysis/shaft-sections.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import { type Apart, apart, each, isSaid } from '../../model/reads.js';
import type { Bearing, Shaft } from '../../model/shafting.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_BEARINGS } from './bearing-specs.js';
import { diameterOf } from './shaft-routes.js';
import { DEFER } from './sources.js';

const WITH_BORES = changed(
  WITH_BEARINGS,
  ['kind stern tube\n', 'kind stern tube\n          bore 65.2 mm\n          housing bore 100 mm\n'],
  ['kind strut\n', 'kind strut\n          bore 65.2 mm\n          housing bore 100 mm\n'],
);

const INFO: RuleInfo = {
  id: 'shafting/tube-bore',
  title: 'The shaft passes through tube, strut and bearings',
  mistakes: ['L09'],
  severity: 'error',
  criterion:
    'bore of bearing against the shaft; bore of tube or strut against shaft with a bearing wall of d/4 on each ' +
    'side',
  source: strutBearingOutside.spec.source,
  manual:
    'A thicker shaft needs thicker bearings in the same tube or strut. The wall of a water-lubricated bearing is ' +
    'about a quarter of the shaft diameter, so the housing must be bored to one and a half diameters. Where the ' +
    'tube does not allow it, a thicker shaft also costs a new tube, strut and seal; a stronger grade at the old ' +
    'diameter avoids this. State the bore of each bearing and of its housing.',
  caution: `${DEFER} Thin-walled bearings exist; their maker states the shaft size.`,
  limitOf: 'the clear opening, as measured',
  examples: examples(() => ({
    failing: changed(WITH_BORES, ['housing bore 100 mm', 'housing bore 85 mm']),
    passing: WITH_BORES,
    cannotTell: changed(WITH_BORES, ['housing bore 100 mm', 'housing bore unknown']),
  })),
};

export const tubeBore: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> {
  return each(context.line.shafts, shaft => {
    const where = { host: shaft.origin, property: 'tube bore' };
    return apart(
      () =>
        shaft.tubeBore &&
        judge(context, shaft, 'tube', shaft.tubeBore, where, needs => sizesOf(shaft, needs)),
      () => each(shaft.bearings ?? [], bearing => judgeBearing(context, shaft, bearing)),
    );
  });
}

/** Whether a bearing stands in something bored, of which another bore of the shaft is declared already. */
function isLeftOut(shaft: Shaft, bearing: Bearing): boolean {
  const kind = bearing.kind?.value;
  if (kind === 'thrust' || kind === 'intermediate') return false;
  const others = (shaft.bearings ?? []).filter(one => one !== bearing);
  return shaft.tubeBore !== undefined || others.some(one => one.bore ?? one.housingBore);
}

function judgeBearing(
  context: LineContext,
  shaft: Shaft,
  bearing: Bearing,
): Verdict | Apart<Verdict> | undefined {
  const name = `bearing ${bearing.name}`;
  const [hasBore, hasHousing] = [isSaid(() => bearing.bore), isSaid(() => bearing.housingBore)];
  if (!hasBore && !hasHousing) {
    if (!isLeftOut(shaft, bearing)) return undefined;
    const needs = new Needs();
    for (const property of ['bore', 'housing bore'])
      needs.miss({ what: `${property} of ${name}`, host: bearing.origin, property });
    const say = sayFor(INFO, `${shaft.path}.${bearing.name}`);
    return waits(say, needs, bearing.origin, `${context.line.name}: whether the shaft passes ${name}`);
  }
  const sizes = (needs: Needs) => sizesAtBearing(shaft, bearing, needs);
  const bore = { host: bearing.origin, property: 'bore' };
  const housing = { host: bearing.origin, property: 'housing bore' };
  return apart(
    () => (hasBore ? judge(context, shaft, name, bearing.bore!, bore, sizes) : undefined),
    () =>
      hasHousing
        ? judge(context, shaft, `the housing of ${name}`, bearing.housingBore!, housing, sizes, true)
        : undefined,
  );
}

function judge(
  { line, analysis }: LineContext,
  shaft: Shaft,
  name: string,
  fact: Quantity<'length'>,
  where: { host: object; property: string },
  sizesThere: (needs: Needs) => SizedSection[] | undefined,
  holdsBearing = false,
): Verdict {
  const say = sayFor(
    INFO,
    `${shaft.path}.${name.replace('the housing of bearing', 'housing').replace('bearing ', '').replace(' ', '-')}`,
  );
  const needs = new Needs();
  const bore = needs.fact(fact, {
    what: holdsBearing ? name.replace('the housing', 'bore of the housing') : `${where.property} of ${name}`,
    ...where,
  });
  const sizes = sizesThere(needs);
  const share = given('wall of the bearing', 'w/d', 'ratio', 0.25, { assumed: 'a quarter of the shaft' });
  const neededBy = (d: Value<'length'>): Value<'length'> =>
    holdsBearing ? needs.found(strutBearingOutside({ diameter: renamed(d, 'shaft diameter', 'd') })) : d;
  const mostIn = (tubeBore: Value<'length'>) =>
    holdsBearing ? needs.found(thickestShaftInTube({ tubeBore, wallShare: share })) : tubeBore;
  const most = bore && mostIn(bore);
  const widest = sizes && thickest(sizes);
  const d = widest?.size.outsideDiameter;
  const needed = d && neededBy(d);
  if (!bore || !most || !widest || !d || !needed)
    return waits(say, needs, fact.origin, `${line.name}: whether the shaft passes ${name}`);
  const clearance = bearingClearance({ bearingBore: bore, shaftDiameter: d });
  const said = {
    place: fact.origin,
    capacity: bore,
    demand: needed,
    workings: holdsBearing
      ? [needed, most, wallInTube({ tubeBore: bore, shaftDiameter: renamed(d, 'shaft diameter', 'd') })]
      : [clearance],
    related: [{ at: diameterOf(shaft, widest).origin, message: `diameter of the ${widest.name}` }],
  };
  const numbers = holdsBearing
    ? `${name} is bored ${analysis.tell(bore)}; a ${analysis.tell(d)} shaft with its bearing needs ${analysis.tell(needed)}`
    : `${name} is bored ${analysis.tell(bore)}, the shaft is ${analysis.tell(d)}`;
  return say.compare({
    ...said,
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}. ${
      holdsBearing
        ? `It takes a shaft of ${analysis.tell(most, 3)} at most: bore or renew it, or choose a stronger grade at a smaller diameter.`
        : 'The shaft does not fit: renew the bearing or tube, or choose a stronger grade at a smaller diameter.'
    }`,
  });
}
