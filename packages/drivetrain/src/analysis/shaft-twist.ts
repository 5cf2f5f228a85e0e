import {
  given,
  lumpedInertia,
  massPerLength,
  renamed,
  seriesStiffness,
  shaftPolarInertia,
  shaftTorsionalStiffness,
  shearModulus,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import { nameOf } from '../model/part.js';
import type { Shaft } from '../model/shafting.js';
import { type ShaftSize, sizesOf } from './shaft-sections.js';
import { gradeOf, wantedOf } from './shaft-strength.js';

/** How a shaft gives and turns in torsion over its whole length. */
export interface ShaftTwist {
  readonly stiffness: Value<'torsional stiffness'>;
  readonly inertia: Value<'moment of inertia'>;
}

/** The twist of a shaft: one piece, or its sections in series, each with its own inertia. */
export function shaftTwist(shaft: Shaft, needs: Needs): ShaftTwist | undefined {
  const pieces = piecesOf(shaft, needs);
  const G = modulusOfRigidity(shaft, needs);
  const grade = gradeOf(shaft, needs);
  const rho = grade && needs.fact(grade.density, wantedOf(grade, 'density'));
  if (!pieces || !G || !rho) return undefined;
  const springs = pieces.map(({ size, L }) =>
    shaftTorsionalStiffness({ G, d: size.outsideDiameter, di: size.bore, L: renamed(L, L.label, 'L') }),
  );
  const [first, ...others] = springs;
  const inertias = pieces.map(({ size, L }) =>
    shaftPolarInertia({ d: size.outsideDiameter, di: size.bore, L: renamed(L, L.label, 'L'), rho }),
  );
  return first && { stiffness: seriesStiffness(first, ...others), inertia: lumpedInertia(inertias) };
}

/** Mass of a shaft by its sizes and the density of its material. */
export function shaftMass(shaft: Shaft, needs: Needs): Value<'mass'> | undefined {
  const pieces = piecesOf(shaft, needs);
  const grade = gradeOf(shaft, needs);
  const density = grade && needs.fact(grade.density, wantedOf(grade, 'density'));
  if (!pieces || !density) return undefined;
  const si = pieces.reduce((sum, { size, L }) => sum + massPerLength({ ...size, density }).si * L.si, 0);
  return given('mass of the shaft', 'm', 'mass', si, { assumed: 'its sizes, length and density' });
}

interface Piece {
  readonly size: ShaftSize;
  readonly L: Value<'length'>;
}

/** The shaft over its whole length: one piece, or its sections and what lies outside them. */
function piecesOf(shaft: Shaft, needs: Needs): readonly Piece[] | undefined {
  const sizes = sizesOf(shaft, needs);
  const length = needs.fact(shaft.length, {
    what: `length of ${nameOf(shaft)}`,
    host: shaft.origin,
    property: 'length',
  });
  if (!sizes || !length) return undefined;
  const pieces: Piece[] = [];
  let rest = length.si;
  for (const { section, size } of sizes) {
    if (!section) continue;
    const L = needs.fact(section.length, {
      what: `length of section ${section.name} of the shaft`,
      host: section.origin,
      property: 'length',
    });
    if (!L) return undefined;
    rest -= L.si;
    pieces.push({ size, L });
  }
  if (rest < -SLACK) {
    return needs.miss(
      {
        what: `length of ${nameOf(shaft)} that its sections fit into`,
        host: shaft.origin,
        property: 'length',
      },
      shaft.length?.origin,
    );
  }
  const main = sizes.find(one => !one.section);
  if (main && rest > SLACK) {
    const L =
      pieces.length === 0
        ? length
        : given('length outside the sections', 'L', 'length', rest, {
            assumed: 'length of the shaft less that of its sections',
          });
    pieces.unshift({ size: main.size, L });
  }
  return pieces;
}

const SLACK = 1e-4;

function modulusOfRigidity(shaft: Shaft, needs: Needs): Value<'pressure'> | undefined {
  const grade = gradeOf(shaft, needs);
  if (!grade) return undefined;
  if (grade.shearModulus?.value) return grade.shearModulus.value;
  const youngsModulus = needs.fact(grade.youngsModulus, wantedOf(grade, 'elastic modulus'));
  return (
    youngsModulus &&
    shearModulus({
      youngsModulus,
      poissonRatio: given('Poisson’s ratio', 'ν', 'number', 0.3, {
        assumed: 'as for steel',
        replaceWith: 'shear modulus',
      }),
    })
  );
}
