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

/** The curve of the named series, or of the first suitable one that covers the blade; otherwise why none does. */
export function seriesCurve(
  propeller: Propeller,
  geometry: PropellerGeometry,
  vessel: Vessel,
): Blades | { readonly refusal: string } {
  const named = propeller.series?.value;
  const refusals: string[] = [];
  for (const series of named ? [named] : suitable(geometry, vessel)) {
    const curve = openWater(series, geometry);
    if (curve.applies) return { curve, declared: named !== undefined };
    refusals.push(curve.reason);
  }
  return { refusal: refusals[0]! };
}

/** Flat-face three-bladers are what fast small craft carry; everything else is nearest to the B-series. */
function suitable(geometry: PropellerGeometry, vessel: Vessel): readonly SeriesName[] {
  const flat = geometry.blades.si === 3 && vessel.hull?.form?.value === 'planing';
  return flat ? ['Gawn-Burrill', 'Gawn', 'Wageningen B'] : ['Wageningen B', 'Gawn-Burrill', 'Gawn'];
}
