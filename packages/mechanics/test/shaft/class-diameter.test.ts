import {
  classPowerPerSpeed,
  classShaftDiameter,
  classShaftFactors,
  classStrengthCaps,
  countedTensileStrength,
  given,
  smallCraftClassFactors,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { smallCraftClassDiameter } from '../held/class-diameter.js';
import { published } from '../published.js';
import { KW, MM, MPA, RPM } from '../tables/factors.js';

const sheet = {
  power: 1324 * KW,
  speed: 412.8 * RPM,
  tensileStrength: 600 * MPA,
  plantFactor: 100,
  featureFactor: 1.26,
  boreRatio: 0,
};
published(
  classShaftDiameter,
  'design sheet on a class rule of this form: 1324 kW at 412.8 rpm, Rm 600, k 1.26',
  [
    { case: 'keyed propeller shaft', inputs: sheet, gives: 167.833, within: 0.0005, unit: MM },
    {
      case: 'a bore of 0.4 d is not counted',
      inputs: { ...sheet, boreRatio: 0.4 },
      gives: 167.833,
      within: 0.0005,
      unit: MM,
    },
  ],
);
published(classPowerPerSpeed, 'the same sheet turned round', [
  {
    case: '167.833 mm takes 1324 kW per 412.8 rpm',
    inputs: {
      outsideDiameter: 167.8333 * MM,
      tensileStrength: 600 * MPA,
      plantFactor: 100,
      featureFactor: 1.26,
      boreRatio: 0,
    },
    gives: 1324 / 412.8,
    within: 5e-5,
    unit: KW / RPM,
  },
]);
published(countedTensileStrength, 'class rules of 2008: 600 MPa at most for propeller shafts', [
  {
    case: '850 MPa steel',
    inputs: { tensileStrength: 850 * MPA, cap: classStrengthCaps.propeller },
    gives: 600,
    within: 0,
    unit: MPA,
  },
  {
    case: '470 MPa steel',
    inputs: { tensileStrength: 470 * MPA, cap: classStrengthCaps.propeller },
    gives: 470,
    within: 0,
    unit: MPA,
  },
]);
// The factor is itself the diameter, in mm, of a shaft with 1 kW per rpm.
published(smallCraftClassDiameter, 'Korean-form guidance, Table 5.3.1: k_s is the diameter at 1 kW/rpm', [
  {
    case: 'carbon steel, application 1',
    inputs: { power: 1000 * KW, speed: 1000 * RPM, materialFactor: 126 },
    gives: 126,
    within: 1e-9,
    unit: MM,
  },
  {
    case: '8 kW/rpm doubles it',
    inputs: { power: 800 * KW, speed: 100 * RPM, materialFactor: 80 },
    gives: 160,
    within: 1e-9,
    unit: MM,
  },
]);

describe('class data', () => {
  it('holds the factors of Table 5.3.1', () => {
    expect(smallCraftClassFactors.map(row => row.ks)).toEqual([126, 114, 114, 91, 81, 81, 88, 80, 80]);
  });

  it('says of each M68 factor whether it was seen in print', () => {
    const keyed = classShaftFactors.find(row => row.feature === 'keyed propeller')!;
    expect([keyed.k, keyed.kSource.confidence, keyed.cK, keyed.cKSource.confidence]).toEqual([
      1.26,
      'published',
      0.55,
      'published',
    ]);
    const slot = classShaftFactors.find(row => row.feature === 'longitudinal slot')!;
    expect([slot.k, slot.kSource.confidence, slot.cKSource.confidence]).toEqual([
      1.2,
      'from memory',
      'from memory',
    ]);
    expect(classShaftFactors).toHaveLength(11);
  });
});

describe('class formula, for any shaft', () => {
  const any = fc.record({
    power: fc.double({ min: 1e3, max: 1e8, noNaN: true }),
    speed: fc.double({ min: 1, max: 300, noNaN: true }),
    strength: fc.double({ min: 400e6, max: 800e6, noNaN: true }),
    bore: fc.double({ min: 0, max: 0.95, noNaN: true }),
  });
  const inputs = (one: { power: number; speed: number; strength: number; bore: number }) => ({
    tensileStrength: given('tensile strength', 'R_m', 'pressure', one.strength),
    plantFactor: given('plant factor', 'F', 'number', 100),
    featureFactor: given('feature factor', 'k', 'number', 1.22),
    boreRatio: given('bore ratio', 'i', 'ratio', one.bore),
  });
  const diameter = (one: { power: number; speed: number; strength: number; bore: number }) =>
    classShaftDiameter({
      power: given('power', 'P', 'power', one.power),
      speed: given('speed', 'ω', 'rotational speed', one.speed),
      ...inputs(one),
    });

  it('the diameter grows with power and bore, falls with speed and strength', () => {
    fc.assert(
      fc.property(any, one => {
        const base = diameter(one).si;
        expect(base).toBeGreaterThan(0);
        expect(diameter({ ...one, power: one.power * 1.1 }).si).toBeGreaterThan(base);
        expect(diameter({ ...one, speed: one.speed * 1.1 }).si).toBeLessThan(base);
        expect(diameter({ ...one, strength: one.strength * 1.1 }).si).toBeLessThan(base);
        expect(diameter({ ...one, bore: one.bore + 0.04 }).si).toBeGreaterThanOrEqual(base);
      }),
    );
  });

  it('its inverse gives the power back', () => {
    fc.assert(
      fc.property(any, one => {
        const capacity = classPowerPerSpeed({ outsideDiameter: diameter(one), ...inputs(one) }).si;
        expect((capacity * one.speed) / one.power).toBeCloseTo(1, 9);
      }),
    );
  });
});
