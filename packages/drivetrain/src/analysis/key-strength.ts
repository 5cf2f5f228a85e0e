import {
  classKeyArea,
  diameterOnTaper,
  given,
  keyLengthInCrushing,
  keyLengthInShear,
  renamed,
  torsionalYieldDistortionEnergy,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Catalogue } from '../model/catalogue.js';
import type { Quantity } from '../model/fact.js';
import type { Shaft } from '../model/shafting.js';
import type { ShaftKey } from '../model/strength.js';
import { sizesAft, sizesForward, weakestInTorsion } from './shaft-sections.js';

/** What a key needs to bear a torque. */
export interface KeyStrength {
  readonly length: Value<'length'>;
  readonly width: Value<'length'>;
  readonly diameter: Value<'length'>;
  readonly inShear: Value<'length'>;
  readonly inCrushing: Value<'length'>;
}

/** The keys of a shaft; of two of one place the upper counts, as when a part is modified. */
export function keysOf(shaft: Shaft): readonly ShaftKey[] {
  const all = shaft.keys ?? [];
  return all.filter((one, index) => all.findIndex(other => other.name === one.name) === index);
}

/** The least lengths of a key in shear and in crushing under a torque, with the factor on its yield. */
export function keyStrength(
  shaft: Shaft,
  key: ShaftKey,
  torque: Value<'torque'> | undefined,
  factor: Value<'number'>,
  catalogue: Catalogue,
  needs: Needs,
): KeyStrength | undefined {
  const name = `the ${key.name} key`;
  const wanted = (property: string) => ({ what: `${property} of ${name}`, host: key.origin, property });
  const length = needs.fact(key.length, wanted('length'));
  const height = needs.fact(key.height, wanted('height'));
  const width = keyWidth(shaft, key, needs);
  const shaftDiameter = diameterAtKey(shaft, key, needs);
  const tensileYield = keyYield(key, catalogue, needs);
  if (!length || !height || !width || !shaftDiameter || !tensileYield || !torque) return undefined;
  const shearYield = torsionalYieldDistortionEnergy({ tensileYield });
  const over = (stress: Value<'pressure'>, label: string, symbol: string) =>
    given(label, symbol, 'pressure', stress.si / factor.si, {
      assumed: `${stress.label} over the factor of ${factor.written ?? factor.si}`,
    });
  return {
    length: renamed(length, `length of ${name}`, 'L'),
    width,
    diameter: shaftDiameter,
    inShear: keyLengthInShear({
      torque,
      allowedShear: over(shearYield, 'allowed shear of the key', 'τ'),
      keyWidth: width,
      shaftDiameter,
    }),
    inCrushing: keyLengthInCrushing({
      torque,
      allowedBearing: over(tensileYield, 'allowed bearing of the key', 'σ'),
      keyHeight: renamed(height, 'key height', 'h'),
      shaftDiameter,
    }),
  };
}

/** Shear area of the key, and the least that class practice wants for a shaft of the rule diameter. */
export function classKey(
  { length, width, diameter }: KeyStrength,
  ruleDiameter: Value<'length'>,
): { readonly area: Value<'area'>; readonly needed: Value<'area'> } {
  return {
    area: given('shear area of the key', 'B L', 'area', length.si * width.si, {
      assumed: 'width × length of the key',
    }),
    needed: classKeyArea({
      ruleDiameter: renamed(ruleDiameter, 'rule diameter', 'd'),
      diameterAtKey: renamed(diameter, 'diameter at the key', 'd₁'),
    }),
  };
}

function keyWidth(shaft: Shaft, key: ShaftKey, needs: Needs): Value<'length'> | undefined {
  const own: Quantity<'length'> | undefined =
    key.width ?? (key.name === 'propeller' ? shaft.keywayWidth : shaft.couplingKeyWidth);
  const what = `width of the ${key.name} key`;
  const width = needs.fact(own, { what, host: key.origin, property: 'width' });
  return width && renamed(width, 'key width', 'b');
}

/** Half way along the taper for the propeller key; the coupling end for the other. */
function diameterAtKey(shaft: Shaft, key: ShaftKey, needs: Needs): Value<'length'> | undefined {
  const wanted = (property: string) => ({ what: `${property} of the shaft`, host: shaft.origin, property });
  if (key.name === 'coupling') {
    if (shaft.couplingEnd) {
      const end = needs.fact(shaft.couplingEnd, wanted('coupling end diameter'));
      return end && renamed(end, 'shaft diameter at the key', 'd');
    }
    const forward = sizesForward(shaft, needs);
    return (
      forward && renamed(weakestInTorsion(forward).size.outsideDiameter, 'shaft diameter at the key', 'd')
    );
  }
  const taper = needs.fact(shaft.taper, wanted('taper'));
  const length = needs.fact(shaft.taperLength, wanted('taper length'));
  const aft = shaft.taperLargeEnd ? undefined : sizesAft(shaft, needs);
  const largeEnd = shaft.taperLargeEnd
    ? needs.fact(shaft.taperLargeEnd, wanted('taper large end'))
    : aft && weakestInTorsion(aft).size.outsideDiameter;
  if (!taper || !length || !largeEnd) return undefined;
  const middle = diameterOnTaper({
    largeEnd: renamed(largeEnd, 'large end of the taper', 'd'),
    distance: given('middle of the taper', 'x', 'length', length.si / 2, {
      assumed: 'the key counts at half the length of the taper',
    }),
    taper: renamed(taper, 'taper', 't'),
  });
  return renamed(middle, 'shaft diameter at the key', 'd');
}

function keyYield(key: ShaftKey, catalogue: Catalogue, needs: Needs): Value<'pressure'> | undefined {
  const name = key.material?.value;
  const grade = name === undefined ? undefined : catalogue.materials.find(one => one.name === name);
  const value =
    key.tensileYield || !grade
      ? needs.fact(key.tensileYield, {
          what: `tensile yield of the ${key.name} key${name && !grade ? `: no entry ${name} is declared or imported` : ''}`,
          host: key.origin,
          property: 'tensile yield',
        })
      : needs.fact(grade.tensileYield, {
          what: `tensile yield of ${grade.name}`,
          host: grade.origin,
          property: 'tensile yield',
        });
  return value && renamed(value, 'tensile yield of the key', 'S_y');
}
