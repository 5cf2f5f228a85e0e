import { given, overhungPropellerMoment, percent, renamed, type Value } from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import { home, nameOf } from '../model/part.js';
import { isSaid } from '../model/reads.js';
import type { Bearing, Propeller, Shaft } from '../model/shafting.js';
import {
  isStepped,
  type ShaftSize,
  type SizedSection,
  sizesAft,
  sizesBetween,
  sizesForward,
  sizesOf,
  thinnest,
  weakestInTorsion,
} from './shaft-sections.js';

/** A place along the propeller shaft where its stress is worked out. */
export interface ShaftStation {
  readonly name: string;
  readonly size: ShaftSize;
  /** Bending moment from the weight of the propeller. */
  readonly moment: Value<'torque'>;
  readonly keyway: boolean;
  /** An end that is made for a coupling, of which nothing says whether it is keyed: then `keyway` is false. */
  readonly keyOpen?: true;
  /** Which of its diameters it is of. */
  readonly of: SizedSection;
  /** False at ends that are turned down: a thicker bar does not thicken them. */
  readonly fullDiameter: boolean;
}

/** Lengths that stand in where none is declared, in shaft diameters. */
const HUB_DIAMETERS = 2.5;
const BEARING_DIAMETERS = 4;

/**
 * The stations that can be the most loaded: the aftmost bearing, where the overhung propeller bends most; each section; the
 * large end of the taper and the coupling end, which are turned down and keyed.
 */
export function shaftStations(shaft: Shaft, propeller: Propeller, needs: Needs): ShaftStation[] | undefined {
  const mass = needs.fact(propeller.mass, {
    what: `mass of ${nameOf(propeller)}`,
    host: home(propeller),
    property: 'mass',
  });
  const overhang = needs.fact(shaft.overhang, {
    what: 'overhang of the propeller',
    host: shaft.origin,
    property: 'overhang',
  });
  const all = sizesOf(shaft, needs);
  const aft = sizesAft(shaft, needs);
  const forward = sizesForward(shaft, needs);
  if (!all || !aft || !forward) return undefined;
  const end = weakestInTorsion(aft);
  const bearing = aftmostBearing(shaft);
  const arm = overhang && armOf(shaft, propeller, bearing, overhang.si, end.size.outsideDiameter.si);
  // Without the one or the other no bending is counted, which is the least that there can be.
  const bendingBy = (lever: Value<'length'> | undefined) =>
    mass && lever
      ? overhungPropellerMoment({ propellerMass: renamed(mass, 'propeller mass', 'm'), overhang: lever })
      : UNBENT;
  const moment = bendingBy(arm);
  const at = isStepped(shaft) ? bearing?.position?.value?.si : undefined;
  // Behind the middle of the bearing the moment is no greater, before it no greater either.
  const there = at === undefined ? all : sizesBetween(shaft, at - NEAR, at + NEAR, needs);
  const keyed = (name: 'propeller' | 'coupling') => (shaft.keys ?? []).some(one => one.name === name);
  if (!there) return undefined;
  const worst = weakestInTorsion(there);
  const stations: ShaftStation[] = [
    { name: 'the aftmost bearing', size: worst.size, moment, keyway: false, of: worst, fullDiameter: true },
  ];
  for (const one of all.filter(other => other.section?.origin !== worst.section?.origin)) {
    stations.push({
      name: `the ${one.name}`,
      size: one.size,
      moment: momentOn(shaft, one, moment, bearing),
      keyway: false,
      of: one,
      fullDiameter: true,
    });
  }
  const tapers = [() => shaft.taper, () => shaft.taperLength, () => shaft.taperLargeEnd].some(isSaid);
  const taperLength =
    tapers &&
    needs.fact(shaft.taperLength, {
      what: `taper length of ${nameOf(shaft)}`,
      host: shaft.origin,
      property: 'taper length',
    });
  if (taperLength) {
    const half = taperLength.si / 2;
    const lever = given(
      'propeller behind the large end of the taper',
      'a',
      'length',
      arm ? Math.min(half, arm.si) : half,
      {
        assumed: 'half the taper: the propeller weighs at its middle',
      },
    );
    stations.push({
      name: 'the large end of the taper',
      size: turned(end.size, shaft.taperLargeEnd?.value, 'taper large end'),
      moment: bendingBy(lever),
      keyway: shaft.keywayWidth !== undefined || keyed('propeller'),
      of: end,
      fullDiameter: !shaft.taperLargeEnd,
    });
  }
  const first = weakestInTorsion(forward);
  const couplingKey = shaft.couplingKeyWidth !== undefined || keyed('coupling');
  if (couplingKey || shaft.couplingEnd) {
    stations.push({
      name: 'the coupling end',
      size: turned(first.size, shaft.couplingEnd?.value, 'coupling end diameter'),
      moment: given('bending moment of the overhung propeller', 'M', 'torque', 0, {
        assumed: 'none at the coupling end: the bearings carry it',
      }),
      keyway: couplingKey,
      ...(couplingKey ? {} : { keyOpen: true }),
      of: first,
      fullDiameter: !shaft.couplingEnd,
    });
  }
  return stations;
}

const UNBENT = given('bending moment of the overhung propeller', 'M', 'torque', 0, {
  assumed: 'none counted: its mass or its overhang is not known',
});

/** Half a millimetre. */
const NEAR = 5e-4;

/** Lever of the propeller about the middle of its bearing. */
function armOf(
  shaft: Shaft,
  propeller: Propeller,
  bearing: Bearing | undefined,
  overhang: number,
  diameter: number,
): Value<'length'> {
  const taper = isSaid(() => shaft.taperLength) ? shaft.taperLength?.value?.si : undefined;
  const hub = propeller.hubLength?.value?.si ?? taper;
  const length = bearing?.length?.value?.si;
  const words = [
    length === undefined ? `half a bearing of ${BEARING_DIAMETERS} diameters` : 'half the bearing',
    'the overhang',
    hub === undefined
      ? `half a hub of ${HUB_DIAMETERS} diameters (its length is not declared)`
      : 'half the hub',
  ];
  return given(
    'propeller behind the middle of its bearing',
    'a',
    'length',
    (length ?? BEARING_DIAMETERS * diameter) / 2 + overhang + (hub ?? HUB_DIAMETERS * diameter) / 2,
    { assumed: `${words[0]}, ${words[1]} and ${words[2]}` },
  );
}

function aftmostBearing(shaft: Shaft): Bearing | undefined {
  const place = (one: Bearing) => one.position?.value?.si ?? Number.POSITIVE_INFINITY;
  return (shaft.bearings ?? []).reduce<Bearing | undefined>(
    (last, one) => (last && place(last) > place(one) ? last : one),
    undefined,
  );
}

/**
 * The greatest moment on a section. Before the aftmost bearing it falls evenly to nothing at the support before; where
 * the places are not known, and outside the sections, the whole moment counts.
 */
function momentOn(
  shaft: Shaft,
  { name, section }: SizedSection,
  whole: Value<'torque'>,
  bearing: Bearing | undefined,
): Value<'torque'> {
  const places = (shaft.bearings ?? []).map(other => other.position?.value?.si);
  const at = bearing?.position?.value?.si;
  const [from, length] = [section?.from?.value?.si, section?.length?.value?.si];
  const unknown = at === undefined || places.some(other => other === undefined);
  if (unknown || from === undefined || length === undefined || from + length > at) return whole;
  const before = Math.max(0, ...places.map(other => other!).filter(other => other < at));
  const share = Math.max(0, (from + length - before) / (at - before));
  return given(`bending moment on the ${name}`, 'M', 'torque', whole.si * share, {
    assumed: `${percent(share)} of that at the aftmost bearing: it falls evenly to the support before`,
  });
}

function turned(size: ShaftSize, diameter: Value<'length'> | undefined, label: string): ShaftSize {
  return diameter ? { ...size, outsideDiameter: renamed(diameter, label, 'd') } : size;
}

/** The stiffness that the thrust bows: the thinnest diameter of the shaft. */
export function bowingSize(shaft: Shaft, needs: Needs): ShaftSize | undefined {
  const sizes = sizesOf(shaft, needs);
  return sizes && thinnest(sizes).size;
}
