import {
  LATERAL_SEPARATION,
  percent,
  spanDiameterGuide,
  type Value,
  whirlingMargin,
} from '@tailshaft/mechanics';
import { amount, inUnit, newWord, spell } from '@tailshaft/vocabulary';
import {
  greatestKnownShaftSpeed,
  hasSupports,
  type SpanWhirl,
  spanWhirls,
} from '../../analysis/shaft-supports.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import { type Criterion, marginOf, type Verdict } from '../../judge/verdict.js';
import { type Apart, each } from '../../model/reads.js';
import type { Shaft } from '../../model/shafting.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { judgeKnown } from '../known-half.js';
import { addBlock } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_BEARINGS } from './bearing-specs.js';
import { diameterOf, nextDiameter } from './shaft-routes.js';
import { DEFER, WHIRLING } from './sources.js';

const INFO: RuleInfo = {
  id: 'shafting/bearing-span',
  title: 'No span between bearings whirls within the running range',
  mistakes: ['L05'],
  severity: 'error',
  estimate: USUAL_ESTIMATE,
  criterion: 'first whirling speed of each span against the greatest shaft speed',
  source: WHIRLING,
  manual:
    'A shaft bows and whips when it turns at the natural frequency of the span between two bearings. The ' +
    'handbook formula for bearing spacing gives exactly that speed, without a margin, so this check requires ' +
    'one: 20 % unless the criteria say "bearing span margin at least". Every span between the declared bearings ' +
    'is compared with governed engine speed through the ratio; the forward coupling counts as a support and a ' +
    'flexible seal does not. Fit a bearing in the span, a thicker shaft, or reduce shaft speed.',
  caution:
    `${DEFER} A plain span on supports that do not restrain slope; the propeller behind the last bearing, worn ` +
    'bearings and soft struts lower the speed. The default margin is from memory.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(
      WITH_BEARINGS,
      ['at 1.45 m', 'at 2.0 m'],
      ['at 2.95 m', 'at 4.8 m'],
      ['length 3.4 m', 'length 5.2 m'],
      ['length 260 mm', 'length 400 mm'],
      ['length 260 mm', 'length 400 mm'],
    ),
    passing: WITH_BEARINGS,
    cannotTell: changed(WITH_BEARINGS, ['          at 1.45 m\n', '']),
  })),
};

export const bearingSpan: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line } = context;
  if (!(line.engine || line.motor)) return undefined;
  return each(line.shafts, (shaft, index) =>
    hasSupports(shaft) ? judgeShaft(context, shaft, line.shafts[index - 1]) : undefined,
  );
}

function judgeShaft(context: LineContext, shaft: Shaft, before: Shaft | undefined): Verdict | Apart<Verdict> {
  const { line, analysis } = context;
  const needs = new Needs();
  const whirls = spanWhirls(shaft, before, needs);
  const fastest = greatestKnownShaftSpeed(analysis, shaft, needs);
  if (fastest && whirls.length > 0)
    return each(whirls, whirl => judge(context, shaft, whirl, fastest, needs));
  if (fastest) needs.found(fastest);
  const known = fastest
    ? `the shaft turns up to ${analysis.tell(fastest)}`
    : whirls
        .map(({ span, whirling }) => `the span from ${span.name} whirls at ${analysis.tell(whirling)}`)
        .join(', ');
  return waits(sayFor(INFO, line.path), needs, shaft.origin, whatOf(context), {
    criterion: wantedMargin(context).criterion,
    workings: whirls.map(one => one.whirling),
    ...(known ? { known } : {}),
  });
}

function whatOf({ line }: LineContext): string {
  return `${line.name}: whether a span of the shaft whirls in the running range`;
}

function judge(
  context: LineContext,
  shaft: Shaft,
  whirl: SpanWhirl,
  fastest: Value<'rotational speed'>,
  needs: Needs,
): Verdict {
  const { span, whirling, thin, stepped } = whirl;
  const { line, analysis } = context;
  const say = sayFor(INFO, line.path);
  const { share, criterion } = wantedMargin(context);
  const margin = whirlingMargin({ whirlingSpeed: whirling, speed: fastest });
  const numbers =
    `the span from ${span.name}, ${analysis.tell(span.length)}, whirls at ${stepped ? 'no less than ' : ''}${analysis.tell(whirling)}; ` +
    `the shaft turns ${needs.any ? 'at least' : 'up to'} ${analysis.tell(fastest)}: margin ${percent(margin.si)}, ${percent(share)} required`;
  // Where the span is stepped, the truth lies between the bounds: only below both does it surely whip.
  const inside = (stepped?.most ?? whirling).si <= fastest.si;
  const bounds = stepped
    ? ` The span has several diameters: it counts as bending like the ${thin.name} and weighing like the ${stepped.heavy.name}, which is the least it can be; the most is ${analysis.tell(stepped.most)}. The speed itself is not computed here: a lateral calculation of the stepped shaft gives it.`
    : '';
  return judgeKnown(say, needs, {
    place: span.to?.bearing?.position?.origin ?? shaft.bearingSpan?.origin ?? shaft.origin,
    criterion: stepped
      ? { ...criterion, said: `${criterion.said}; least whirling speed of a stepped span` }
      : criterion,
    severity: inside ? 'error' : 'warning',
    capacity: whirling,
    demand: fastest,
    wanted: share,
    workings: [whirling, margin, ...(stepped ? [stepped.most] : [])],
    what: whatOf(context),
    numbers: bounds ? `${numbers}.${bounds.slice(0, -1)}` : numbers,
    remedy: `. ${inside ? 'It whips within the running range' : 'The margin is too small'}: add a bearing in the span, or fit a thicker shaft.`,
    related: [{ at: diameterOf(shaft, thin).origin, message: `diameter of the ${thin.name}` }],
    explains: tooLong(whirl) ? [{ rule: 'shafting/span-guide', subject: line.path }] : [],
    routes: () => routes(context, shaft, whirl, fastest),
  });
}

function routes(
  context: LineContext,
  shaft: Shaft,
  { span, whirling, thin }: SpanWhirl,
  fastest: Value<'rotational speed'>,
): Route[] {
  const { share } = wantedMargin(context);
  const result: Route[] = [];
  if (span.from && span.to) {
    // Half the span whirls at four times the speed.
    const middle = (span.from.at + span.to.at) / 2;
    const margin = (whirling.si * 4) / fastest.si - 1;
    const short =
      span.length.si / 2 < spanDiameterGuide.least * thin.size.outsideDiameter.si
        ? `, each under the guide of ${spanDiameterGuide.least} diameters`
        : '';
    if (margin >= share) {
      const place = amount(inUnit('length', Number(middle.toFixed(2)), 'm'));
      result.push({
        title: `Add a bearing at ${spell(place)}, half way: margin of both halves ${percent(margin)}${short}`,
        edits: [
          addBlock(shaft, {
            block: 'bearing',
            name: 'added',
            facts: [
              { property: 'kind', value: newWord('intermediate') },
              { property: 'at', value: place },
            ],
          }),
        ],
      });
    }
  }
  const thicker = nextDiameter(shaft, thin.section, other => {
    const before = context.line.shafts[context.line.shafts.indexOf(shaft) - 1];
    const margins = spanWhirls(other, before, new Needs()).map(one => marginOf(one.whirling, fastest));
    if (margins.length === 0 || margins.some(one => one === undefined)) return undefined;
    const least = Math.min(...margins.map(one => one!));
    return least >= share ? least : undefined;
  });
  if (thicker) {
    result.push({
      title: `${thicker.words}: least margin ${percent(thicker.margin)}; bearings, seal, coupling and propeller bore follow`,
      edits: [thicker.edit],
    });
  }
  return result;
}

/** One that is over the guide as well is one finding, not two. */
function tooLong({ span, thin }: SpanWhirl): boolean {
  return span.length.si > spanDiameterGuide.most * thin.size.outsideDiameter.si;
}

function wantedMargin({ vessel }: LineContext): { share: number; criterion: Criterion } {
  const own = vessel.criteria?.bearingSpanMargin?.value;
  const share = own?.si ?? LATERAL_SEPARATION.si;
  return {
    share,
    criterion: {
      said: `${INFO.criterion}, margin ${percent(share)}${own ? '' : ' (from memory)'}`,
      chosenBy: own ? 'author' : 'default',
    },
  };
}
