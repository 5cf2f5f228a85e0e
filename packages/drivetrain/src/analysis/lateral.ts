import {
  criticalSpeed,
  given,
  LATERAL_ENTRAINED_WATER,
  massPerLength,
  type OverhungFrequencies,
  overhungBracket,
  propellerInertiaInWater,
  propellerMassInWater,
  renamed,
  shaftSecondMomentOfArea,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import { home, nameOf } from '../model/part.js';
import type { Shaft } from '../model/shafting.js';
import type { ShaftLine } from '../model/vessel.js';
import { missPair } from './pair.js';
import { heaviest, type SizedSection, sizesBetween, sizesOf, thinnest } from './shaft-sections.js';
import { gradeOf, wantedOf } from './shaft-strength.js';
import { type Span, spansOf } from './shaft-supports.js';

/** Lateral criticals of the propeller behind its last bearing, bracketed by how the forward end of the span is held. */
export interface PropellerWhirl {
  readonly pinned: OverhungFrequencies;
  readonly fixed: OverhungFrequencies;
  /** Shaft speed of the first critical: least, forward end pinned and the mass of the shaft in it; and greatest. */
  readonly least: Value<'rotational speed'>;
  readonly greatest: Value<'rotational speed'>;
  /** The same at blade rate, least. */
  readonly bladeRate: Value<'rotational speed'> | undefined;
}

/** First lateral criticals of the aftmost span with the overhung propeller. */
export function propellerWhirl(line: ShaftLine, needs: Needs): PropellerWhirl | undefined {
  const shaft = line.shafts.at(-1);
  const { propeller } = line;
  if (!shaft || !propeller) return undefined;
  const spans = spansOf(shaft, line.shafts.at(-2), needs);
  const last = spans.at(-1);
  const bearing = last?.to?.bearing;
  const length =
    bearing &&
    needs.fact(bearing.length, {
      what: `length of bearing ${bearing.name}`,
      host: bearing.origin,
      property: 'length',
    });
  const overhang = needs.fact(shaft.overhang, {
    what: 'overhang of the propeller',
    host: shaft.origin,
    property: 'overhang',
  });
  const sizes = sizesBehind(shaft, last, needs);
  const grade = gradeOf(shaft, needs);
  const modulus = grade && needs.fact(grade.youngsModulus, wantedOf(grade, 'elastic modulus'));
  const density = grade && needs.fact(grade.density, wantedOf(grade, 'density'));
  const wanted = (what: string) => ({
    what: `${what} of ${nameOf(propeller)}`,
    host: home(propeller),
    property: what,
  });
  missPair(propeller, 'mass and overhang', needs);
  const mass = needs.fact(propeller.mass, wanted('mass'));
  const inertia = needs.fact(propeller.inertia, wanted('inertia'));
  if (!last || !length || !overhang || !sizes || !modulus || !density || !mass || !inertia) return undefined;
  // A stepped end counts as bending like its thinnest diameter and weighing like its heaviest, which is the least it can be.
  const { outsideDiameter, bore } = thinnest(sizes).size;
  const hub = propeller.hubLength?.value?.si ?? 0;
  const arm = given(
    'propeller behind the middle of its bearing',
    'b',
    'length',
    length.si / 2 + overhang.si + hub / 2,
    {
      assumed: `half the bearing, the overhang${hub > 0 ? ' and half the hub' : '; the hub is left out: its length is not declared'}`,
    },
  );
  const diametral = given('diametral inertia of the propeller', 'I_d', 'moment of inertia', inertia.si / 2, {
    assumed: 'half the polar inertia, as for a thin disc',
  });
  const w = LATERAL_ENTRAINED_WATER;
  const bracket = overhungBracket({
    span: last.length,
    overhang: arm,
    modulus: renamed(modulus, 'elastic modulus', 'E'),
    section: shaftSecondMomentOfArea({ d: outsideDiameter, di: bore }),
    massPerLength: massPerLength({ density, ...heaviest(sizes).size }),
    mass: propellerMassInWater({ m: renamed(mass, 'propeller mass', 'm'), w }),
    diametralInertia: propellerInertiaInWater({ I: diametral, w }),
  });
  const once = given('order', 'q', 'number', 1, { assumed: 'once per turn' });
  const blades = propeller.blades?.value;
  return {
    ...bracket,
    least: criticalSpeed({ f: bracket.pinned.withShaftMass, q: once }),
    greatest: criticalSpeed({ f: bracket.fixed.lower, q: once }),
    bladeRate:
      blades && criticalSpeed({ f: bracket.pinned.withShaftMass, q: renamed(blades, 'blades', 'q') }),
  };
}

/** The diameters from the forward end of the last span to the propeller. */
function sizesBehind(shaft: Shaft, last: Span | undefined, needs: Needs): SizedSection[] | undefined {
  return last?.from
    ? sizesBetween(shaft, last.from.at, Number.POSITIVE_INFINITY, needs)
    : sizesOf(shaft, needs);
}
