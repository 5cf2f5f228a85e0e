import {
  type OpenWaterCurve,
  openWater,
  type PropellerGeometry,
  renamed,
  type SeriesName,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../../judge/needs.js';
import { home, nameOf } from '../../model/part.js';
import { isSaid } from '../../model/reads.js';
import type { Propeller } from '../../model/shafting.js';
import type { Vessel } from '../../model/vessel.js';
import { isPair } from '../pair.js';

/** A propeller as a published series sees it. */
export interface Blades {
  readonly curve: OpenWaterCurve;
  /** Whether the spec names the series; otherwise it was chosen because it covers the blade. */
  readonly declared: boolean;
}

/** What a series must know of a propeller; a cup without its effective pitch is a gap, since no series knows cups. */
export function bladeGeometry(propeller: Propeller, needs: Needs): PropellerGeometry | undefined {
  const name = nameOf(propeller);
  const host = home(propeller);
  const wanted = (property: string) => ({ what: `${property} of ${name}`, host, property });
  const diameter = needs.fact(propeller.diameter, wanted('diameter'));
  const blades = needs.fact(propeller.blades, wanted('blades'));
  const area = areaOf(propeller);
  const areaRatio = needs.fact(area.fact, wanted('area ratio'));
  const pitch = loadingPitch(propeller, needs);
  if (isSaid(() => propeller.nozzle))
    needs.fact(propeller.nozzle, { what: `nozzle of ${name}`, host: propeller.origin, property: 'nozzle' });
  if (!diameter || !blades || !areaRatio || !pitch) return undefined;
  return {
    diameter: renamed(diameter, 'propeller diameter', 'D'),
    pitch,
    blades: renamed(blades, 'number of blades', 'Z'),
    areaRatio: renamed(areaRatio, `${area.is} area ratio`, area.is === 'expanded' ? 'AE/A0' : 'AD/A0'),
    areaIs: area.is,
  };
}

/** The pitch that the blade loads with: the effective one of a cupped blade. */
function loadingPitch(propeller: Propeller, needs: Needs): Value<'length'> | undefined {
  const name = nameOf(propeller);
  const host = home(propeller);
  if (isSaid(() => propeller.effectivePitch) && propeller.effectivePitch?.value) {
    return renamed(propeller.effectivePitch.value, 'effective pitch', 'P');
  }
  const cup = needs.fact(propeller.cup, { what: `cup of ${name}`, host, property: 'cup' });
  const pitch = needs.fact(propeller.pitch, { what: `pitch of ${name}`, host, property: 'pitch' });
  if (cup === undefined) return undefined;
  if (cup === 'none') return pitch && renamed(pitch, 'propeller pitch', 'P');
  return needs.miss(
    { what: `effective pitch of ${name}, its ${cup} cup counted`, host, property: 'effective pitch' },
    propeller.effectivePitch?.origin,
  );
}

function areaOf(propeller: Propeller) {
  return propeller.areaRatio || !propeller.developedAreaRatio
    ? ({ fact: propeller.areaRatio, is: 'expanded' } as const)
    : ({ fact: propeller.developedAreaRatio, is: 'developed' } as const);
}

/** Whether the propeller is said to turn in a nozzle, whichever, or in one that is not known. */
export function isDucted(propeller: Propeller): boolean {
  return isSaid(() => propeller.nozzle) && propeller.nozzle?.value !== 'none';
}

/** The curve of the named series, or of the first suitable one that covers the blade; otherwise why none does. */
export function seriesCurve(
  propeller: Propeller,
  geometry: PropellerGeometry,
  vessel: Vessel,
): Blades | { readonly refusal: string } {
  if (isPair(propeller)) return { refusal: PAIR };
  const named = propeller.series?.value;
  const ducted = isDucted(propeller);
  const unfit = ducted ? noDuctedSeries(propeller) : named === 'Ka' && OPEN_KA;
  if (unfit) return { refusal: unfit };
  const refusals: string[] = [];
  for (const series of ducted ? (['Ka'] as const) : named ? [named] : suitable(geometry, vessel)) {
    const curve = openWater(series, geometry);
    if (curve.applies) return { curve, declared: named !== undefined };
    refusals.push(curve.reason);
  }
  return { refusal: refusals[0]! };
}

const PAIR =
  'Of counter-rotating pairs no published series is at hand, and a series of single propellers does not stand for one: take power, speed and thrust from the maker of the leg.';

const OPEN_KA =
  'The Ka series was measured in nozzle 19A, and nothing says that this propeller turns in one.';

/** Why nothing is known of a propeller in its nozzle; nothing where the Ka series may stand for it. */
function noDuctedSeries({ nozzle, series }: Propeller): string | undefined {
  const section = nozzle?.value;
  if (section !== 'N19A')
    return section === 'N37'
      ? 'Of propellers in nozzle 37 no published polynomials are at hand, and those of nozzle 19A do not stand for it.'
      : 'Of this nozzle nothing published is known: the Ka series stands for nozzle 19A alone.';
  if (series?.value && series.value !== 'Ka')
    return `The ${series.value} series is of open propellers, and this one turns in a nozzle.`;
  return undefined;
}

/** Flat-face three-bladers are what fast small craft carry; everything else is nearest to the B-series. */
function suitable(geometry: PropellerGeometry, vessel: Vessel): readonly SeriesName[] {
  const flat = geometry.blades.si === 3 && vessel.hull?.form?.value === 'planing';
  return flat ? ['Gawn-Burrill', 'Gawn', 'Wageningen B'] : ['Wageningen B', 'Gawn-Burrill', 'Gawn'];
}
