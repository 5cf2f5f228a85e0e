import { given, renamed, spanDiameterGuide, spanInDiameters, type Value } from '@tailshaft/mechanics';
import { sizesOf, thinnest } from '../../analysis/shaft-sections.js';
import { hasSupports, type Span, sizesOfSpan, spansOf } from '../../analysis/shaft-supports.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Quantity } from '../../model/fact.js';
import { type Apart, each } from '../../model/reads.js';
import type { Shaft } from '../../model/shafting.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_BEARINGS } from './bearing-specs.js';
import { DEFER } from './sources.js';

const INFO: RuleInfo = {
  id: 'shafting/span-guide',
  title: 'Spans between bearings are 20 to 40 diameters',
  mistakes: ['L06'],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion: 'each span between bearing centres, in shaft diameters, against the guide of 20 to 40',
  source: spanDiameterGuide.source,
  manual:
    'Shops keep spans between 20 and 40 shaft diameters. Longer spans whip and sag; with shorter ones the ' +
    'bearings work against each other when the hull flexes, and alignment does not last. It is a rule of thumb: ' +
    'the whirling check decides on long spans, and an acceptance that names its result is the usual answer here. ' +
    'Add, move or leave out a bearing, or accept the finding with the reason.',
  caution: `${DEFER} Class guidance quotes 30 diameters; a span outside the guide may be right.`,
  examples: examples(() => ({
    failing: changed(WITH_BEARINGS, ['at 1.45 m', 'at 2.2 m']),
    passing: WITH_BEARINGS,
    cannotTell: changed(WITH_BEARINGS, ['        diameter 65 mm [drawing]\n', '']),
  })),
};

export const spanGuide: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> {
  const { line } = context;
  return each(line.shafts, (shaft, index) => {
    if (!hasSupports(shaft)) return undefined;
    const needs = new Needs();
    const spans = spansOf(shaft, line.shafts[index - 1], needs);
    if (spans.length === 0) sizesOf(shaft, needs);
    const sizes = spans.map(span => sizesOfSpan(shaft, span, needs));
    if (!needs.any)
      return each(spans, (span, at) =>
        judge(context, shaft, span, thinnest(sizes[at]!).size.outsideDiameter),
      );
    const what = `${line.name}: how many diameters the spans are`;
    return waits(sayFor(INFO, line.path), needs, shaft.origin, what);
  });
}

function judge(context: LineContext, shaft: Shaft, span: Span, outside: Value<'length'>): Verdict {
  const { line, analysis, vessel } = context;
  const say = sayFor(INFO, line.path);
  const { spanLeast, spanMost } = vessel.criteria ?? {};
  const needs = new Needs();
  const bound = (fact: Quantity<'number'> | undefined, usual: number, property: string) =>
    fact
      ? needs.fact(fact, { what: 'span that the criteria want', host: vessel.criteria!.origin, property })?.si
      : usual;
  const least = bound(spanLeast, spanDiameterGuide.least, 'span diameters at least');
  const most = bound(spanMost, spanDiameterGuide.most, 'span diameters at most');
  const count = spanInDiameters({ span: span.length, diameter: renamed(outside, 'shaft diameter', 'd') });
  const place = span.to?.bearing?.position?.origin ?? shaft.bearingSpan?.origin ?? shaft.origin;
  if (least === undefined || most === undefined)
    return waits(say, needs, place, `${line.name}: whether the span from ${span.name} suits the criteria`);
  const said = {
    place,
    workings: [count],
    ...(spanLeast || spanMost
      ? {
          criterion: {
            said: `each span between bearing centres, in shaft diameters, against ${least} to ${most} of the criteria`,
            chosenBy: 'author' as const,
          },
        }
      : {}),
  };
  const numbers = `the span from ${span.name} is ${analysis.tell(span.length)}, ${count.si.toFixed(count.si < 10 ? 1 : 0)} diameters; the guide is ${least} to ${most}`;
  if (count.si > most) {
    return say.fails({
      ...said,
      over: count.si / most,
      balance: { more: given('guide for the span', 'n', 'ratio', most), less: count },
      message: `${line.name}: ${numbers}. Add a bearing, or accept it with the margin of the whirling check.`,
    });
  }
  if (count.si < least) {
    return say.fails({
      ...said,
      over: least / count.si,
      balance: { more: count, less: given('guide for the span', 'n', 'ratio', least) },
      severity: 'note',
      message: `${line.name}: ${numbers}. Bearings so close together work against each other: leave one out, or accept it.`,
    });
  }
  const over = Math.max(count.si / most, least / count.si);
  const balance = { more: given('guide for the span', 'n', 'ratio', most), less: count };
  return say.holds({ ...said, over, balance, message: `${line.name}: ${numbers}.` });
}
