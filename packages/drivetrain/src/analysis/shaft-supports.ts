import {
  given,
  massPerLength,
  ratioInSeries,
  renamed,
  type Source,
  shaftSpeedThroughGear,
  steppedSpanWhirlingLeast,
  steppedSpanWhirlingMost,
  type Value,
  whirlingSpeedOfSpan,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Bearing, Shaft } from '../model/shafting.js';
import type { LineAnalysis } from './line.js';
import {
  heaviest,
  lightest,
  type SizedSection,
  sizesBetween,
  sizesOf,
  thickest,
  thinnest,
} from './shaft-sections.js';
import { gradeOf, wantedOf } from './shaft-strength.js';
import { gearRatio, transferRatio } from './speeds.js';

const PLACES: Source = { title: 'difference of the declared places', confidence: 'common practice' };

/** A place that holds the shaft, measured aft from its own forward coupling face. */
export interface Support {
  readonly name: string;
  readonly at: number;
  readonly bearing?: Bearing;
}

/** The distance between two neighbouring supports. */
export interface Span {
  readonly name: string;
  readonly length: Value<'length'>;
  readonly from?: Support;
  readonly to?: Support;
}

export interface SpanWhirl {
  readonly span: Span;
  /** First whirling speed of the plain span; the propeller behind it is not in it. Of a stepped span the least it can be. */
  readonly whirling: Value<'rotational speed'>;
  /** Diameter that the span is counted in: the thinnest in it. */
  readonly thin: SizedSection;
  /** Of a span with several diameters. */
  readonly stepped?: {
    /** The most that its whirling speed can be. */
    readonly most: Value<'rotational speed'>;
    readonly heavy: SizedSection;
  };
}

/** Whether the spec says anything of how a shaft is held. */
export function hasSupports(shaft: Shaft): boolean {
  return (shaft.bearings ?? []).length > 0 || shaft.bearingSpan !== undefined;
}

/**
 * Spans between centres. The forward coupling counts as a place that holds the shaft: behind a gear its output bearing
 * does, and a flexible coupling at least keeps the end where it is. Behind another shaft it is the last bearing of that one.
 */
export function spansOf(shaft: Shaft, before: Shaft | undefined, needs: Needs): Span[] {
  const bearings = shaft.bearings ?? [];
  if (bearings.length === 0) {
    const span = shaft.bearingSpan && needs.fact(shaft.bearingSpan, wanted(shaft, 'bearing span'));
    return span ? [{ name: 'greatest span', length: renamed(span, 'bearing span', 'L') }] : [];
  }
  const supports: Support[] = [];
  const forward = forwardEnd(before, needs);
  if (forward) supports.push(forward);
  for (const bearing of bearings) {
    const at = needs.fact(bearing.position, {
      what: `place of bearing ${bearing.name}`,
      host: bearing.origin,
      property: 'at',
    });
    if (at) supports.push({ name: `bearing ${bearing.name}`, at: at.si, bearing });
  }
  if (supports.length < bearings.length + 1) return [];
  supports.sort((one, other) => one.at - other.at);
  return supports.slice(1).map((to, index) => {
    const from = supports[index]!;
    const name = `${from.name} to ${to.name}`;
    const length: Value<'length'> = {
      label: `span from ${name}`,
      symbol: 'L',
      dimension: 'length',
      si: to.at - from.at,
      working: {
        name: 'span between two places',
        text: 'L = place further aft - place before it',
        inputs: [from, to].flatMap(one => one.bearing?.position?.value ?? []),
        source: PLACES,
        range: [],
        ...(from.bearing?.position?.value && to.bearing?.position?.value
          ? { again: ([fore = Number.NaN, aft = Number.NaN]) => aft - fore }
          : from.at === 0
            ? { again: ([aft = Number.NaN]) => aft }
            : {}),
      },
    };
    return { name, length, from, to };
  });
}

function forwardEnd(before: Shaft | undefined, needs: Needs): Support | undefined {
  if (!before) return { name: 'forward coupling', at: 0 };
  const length = needs.fact(before.length, wanted(before, 'length'));
  const places = (before.bearings ?? []).flatMap(one => one.position?.value?.si ?? []);
  if (places.length === 0) {
    return needs.miss({
      what: 'places of the bearings of the shaft before it',
      host: before.origin,
      property: 'bearing',
    });
  }
  if (!length) return undefined;
  return { name: 'last bearing of the shaft before', at: Math.max(...places) - length.si };
}

/** First whirling speed of each span of a shaft. */
export function spanWhirls(shaft: Shaft, before: Shaft | undefined, needs: Needs): SpanWhirl[] {
  const spans = spansOf(shaft, before, needs);
  const grade = gradeOf(shaft, needs);
  const modulus = grade && needs.fact(grade.youngsModulus, wantedOf(grade, 'elastic modulus'));
  const density = grade && needs.fact(grade.density, wantedOf(grade, 'density'));
  const sizes = spans.map(span => sizesOfSpan(shaft, span, needs));
  if (spans.length === 0) sizesOf(shaft, needs);
  if (!modulus || !density || needs.any) return [];
  const bar = {
    youngsModulus: renamed(modulus, 'elastic modulus', 'E'),
    density: renamed(density, 'density', 'ρ'),
  };
  return spans.map((span, index) => whirlOf(span, sizes[index]!, bar));
}

/** The diameters within a span; all of the shaft where its place is not known. */
export function sizesOfSpan(shaft: Shaft, { from, to }: Span, needs: Needs): SizedSection[] | undefined {
  return from && to ? sizesBetween(shaft, from.at, to.at, needs) : sizesOf(shaft, needs);
}

interface Bar {
  readonly youngsModulus: Value<'pressure'>;
  readonly density: Value<'density'>;
}

function whirlOf(span: Span, sizes: readonly SizedSection[], bar: Bar): SpanWhirl {
  const plain = ({ size }: SizedSection) => whirlingSpeedOfSpan({ ...size, ...bar, span: span.length });
  if (sizes.length === 1) return { span, whirling: plain(sizes[0]!), thin: sizes[0]! };
  const mass = ({ size }: SizedSection) => massPerLength({ ...size, density: bar.density });
  const [thin, heavy, thick] = [thinnest(sizes), heaviest(sizes), thickest(sizes)];
  return {
    span,
    thin,
    whirling: steppedSpanWhirlingLeast({
      whirlingSpeed: plain(thin),
      massPerLength: mass(thin),
      countedMassPerLength: mass(heavy),
    }),
    stepped: {
      most: steppedSpanWhirlingMost({
        whirlingSpeed: plain(thick),
        massPerLength: mass(thick),
        countedMassPerLength: mass(lightest(sizes)),
      }),
      heavy,
    },
  };
}

/** Engine speed over the speed of a part, by the stages before it. */
function ratioBefore(analysis: LineAnalysis, shaft: Shaft, needs: Needs): Value<'ratio'> | undefined {
  const { line } = analysis;
  const ratios: (Value<'ratio'> | undefined)[] = [];
  for (const part of line.chain) {
    if (part === shaft) break;
    const transfer = line.transfers.find(one => one === part);
    if (line.gear && part === line.gear) ratios.push(needs.take(gearRatio(line.gear, 'ahead'))?.value);
    if (transfer) ratios.push(needs.take(transferRatio(transfer))?.value);
  }
  if (ratios.some(one => one === undefined)) return undefined;
  return ratios.map(one => one!).reduce((first, second) => ratioInSeries({ first, second }), DIRECT);
}

const DIRECT = given('ratio', 'i', 'ratio', 1, { assumed: 'the engine’s own speed' });

/** The fastest that a shaft turns: the governed maximum of the engine, or the top speed of the motor. */
export function greatestShaftSpeed(
  analysis: LineAnalysis,
  shaft: Shaft,
  needs: Needs,
): Value<'rotational speed'> | undefined {
  const engineSpeed = needs.take(analysis.governedSpeed);
  const ratio = ratioBefore(analysis, shaft, needs);
  if (!engineSpeed || !ratio) return undefined;
  return renamed(shaftSpeedThroughGear({ engineSpeed, ratio }), 'greatest shaft speed', 'ω');
}

/** The same where the governed maximum is not known: at least at rated speed, and the gap is noted. */
export function greatestKnownShaftSpeed(
  analysis: LineAnalysis,
  shaft: Shaft,
  needs: Needs,
): Value<'rotational speed'> | undefined {
  const governed = needs.take(analysis.governedSpeed);
  const engineSpeed = governed ?? needs.take(analysis.rated)?.speed;
  const ratio = ratioBefore(analysis, shaft, needs);
  if (!engineSpeed || !ratio) return undefined;
  const name = governed ? 'greatest shaft speed' : 'rated shaft speed';
  return renamed(shaftSpeedThroughGear({ engineSpeed, ratio }), name, 'ω');
}

function wanted(shaft: Shaft, property: string) {
  return { what: `${property} of the shaft`, host: shaft.origin, property };
}
