import {
  AMBIENT_EXPONENTS,
  ASSUMED_MECHANICAL_EFFICIENCY,
  BOLLARD_PULL_PER_POWER,
  CLASS_CLEARANCE_BY_DIAMETER,
  classSpanFactors,
  DEMAND_EXPONENT,
  HUB_OVERHANG_LIMIT,
  ISO_REFERENCE,
  installationAngleGuides,
  lineShaftLoading,
  PROPELLER_TOLERANCES,
  reliabilityFactors,
  spanDiameterGuide,
  sternBearingRules,
  TIP_CLEARANCE_CRITERIA,
  TIP_SPEED_ADVICE,
  TIP_SPEED_SOURCE,
  type ToleranceClass,
  UNRESTRICTED_SERVICE,
  USUAL_EFFICIENCY,
  USUAL_ENGINE_MARGIN,
  USUAL_SEA_MARGIN,
  USUAL_SERVICE_FACTOR,
  WET_FRICTION,
  WET_FRICTION_BOUND,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { DEG, HP, LBF, MPA } from './factors.js';

describe('ISO 484-2:1981 as two trade pages print it, classes S, I, II, III', () => {
  const CLASSES: readonly ToleranceClass[] = ['S', 'I', 'II', 'III'];
  it.each([
    ['localPitch', [1.5, 2, 3, undefined], undefined],
    ['pitchOfRadius', [1, 1.5, 2, 5], undefined],
    ['pitchOfBlade', [0.75, 1, 1.5, 4], undefined],
    ['pitch', [0.5, 0.75, 1, 3], undefined],
    ['spacing', [1, 1, 2, 2], undefined],
    ['rake', [0.5, 1, 1.5, 3], undefined],
    ['sectionLength', [1.5, 2, 3, 5], [7, 10, 13, 15]],
    ['thicknessPlus', [2, 2.5, 4, 6], [2, 2.5, 4, 6]],
    ['thicknessMinus', [1, 1.5, 2, 4], [1, 1.5, 2, 4]],
  ] as const)('%s', (measure, limits, least) => {
    const row: { limit: Record<ToleranceClass, number | undefined>; least?: Record<ToleranceClass, number> } =
      PROPELLER_TOLERANCES[measure];
    expect(CLASSES.map(one => row.limit[one])).toEqual(limits);
    expect(row.least && CLASSES.map(one => row.least![one] * 1000)).toEqual(least);
  });
  it('leaves out the row of the radius, which is known from memory only', () => {
    expect(Object.keys(PROPELLER_TOLERANCES)).toHaveLength(9);
    expect(Object.values(PROPELLER_TOLERANCES).map(row => row.what)).not.toContain('radius');
  });
});

describe('clearances and guides of the propeller', () => {
  it("Lloyd's Register 2000, Table 6.7.2: the two that depend on the diameter alone", () => {
    expect(CLASS_CLEARANCE_BY_DIAMETER).toEqual({ 'blade to rudder': 0.12, 'tip to sole piece': 0.03 });
  });
  it('tip clearances as quoted in public, and how each is known', () => {
    expect(TIP_CLEARANCE_CRITERIA.map(one => [one.share, one.source.confidence])).toEqual([
      [0.1, 'common practice'],
      [0.15, 'common practice'],
      [0.17, 'published'],
      [0.2, 'published'],
      [0.25, 'published'],
    ]);
    expect(HUB_OVERHANG_LIMIT.shaftDiameters).toBe(1);
  });
  it('tip speeds: advice only, no publication found', () => {
    expect(TIP_SPEED_ADVICE.map(one => [one.from, one.to])).toEqual([
      [35, 40],
      [46, 50],
    ]);
    expect(TIP_SPEED_SOURCE.confidence).toBe('common practice');
  });
  it('bollard pull: 25 to 30 lbf/hp open, 30 to 35 in a nozzle (US Navy, by way of Oilfield Seamanship 8), 35 for tugs', () => {
    const perHorsepower = (one: number) => Number(((one * HP) / LBF).toFixed(6));
    expect(BOLLARD_PULL_PER_POWER.map(one => [perHorsepower(one.from), perHorsepower(one.to)])).toEqual([
      [25, 30],
      [30, 35],
      [35, 35],
    ]);
  });
  it('exponents of demand and the margins in use', () => {
    expect(Object.values(DEMAND_EXPONENT).map(one => [one.value, one.source.confidence])).toEqual([
      [3, 'published'],
      [2.7, 'published'],
      [2.2, 'from memory'],
    ]);
    expect(USUAL_SEA_MARGIN).toEqual({ usual: 0.15, from: 0.1, to: 0.25 });
    expect(USUAL_ENGINE_MARGIN).toEqual({ from: 0.1, to: 0.15 });
  });
});

describe('clutch', () => {
  it('wet friction: Shigley and practice from memory, the bronze pair and the upper bound in print', () => {
    expect(
      WET_FRICTION.map(one => [
        one.friction.from,
        one.friction.to,
        one.pressure?.from && one.pressure.from / MPA,
        one.pressure && one.pressure.to / MPA,
        one.source.confidence,
      ]),
    ).toEqual([
      [0.05, 0.1, undefined, 2.1, 'from memory'],
      [0.05, 0.1, undefined, 1, 'from memory'],
      [0.08, 0.12, 0.34, 1, 'from memory'],
      [0.1, 0.2, 0.34, 0.69, 'from memory'],
      [0.15, 0.25, 0.055, 0.1, 'from memory'],
      [0.1, 0.14, 1, 4, 'from memory'],
      [0.1, 0.1, undefined, 0.3, 'published'],
    ]);
    expect([WET_FRICTION_BOUND.value, WET_FRICTION_BOUND.source.confidence]).toEqual([0.15, 'published']);
    expect(USUAL_SERVICE_FACTOR).toMatchObject({ from: 1.5, to: 2, source: { confidence: 'from memory' } });
  });
});

describe('engine', () => {
  it('exponents of ISO 3046-1: a, m, n, s', () => {
    expect(
      Object.values(AMBIENT_EXPONENTS).map(one => [one.a, one.m, one.n, one.s, one.source.confidence]),
    ).toEqual([
      [1, 1, 0.75, 0, 'published'],
      [0, 0.7, 1.2, 1, 'published'],
      [0, 0.7, 2, 0, 'from memory'],
      [0, 1, 1, 0, 'from memory'],
      // Spark ignition, of ISO 15550 and UN R85: 1.2 for pressure, 0.6 for temperature.
      [1, 1.2, 0.6, 0, 'from memory'],
    ]);
  });
  it('reference conditions in print; those of IACS UR M28 and the mechanical efficiency from memory, and said so', () => {
    const of = (one: typeof ISO_REFERENCE) => [one.pressure.si, one.air.si, one.humidity.si, one.coolant.si];
    expect(of(ISO_REFERENCE)).toEqual([100e3, 298, 0.3, 298]);
    expect(of(UNRESTRICTED_SERVICE)).toEqual([100e3, 318, 0.6, 305]);
    for (const value of Object.values(UNRESTRICTED_SERVICE)) expect(value.assumed).toContain('from memory');
    expect(ASSUMED_MECHANICAL_EFFICIENCY.assumed).toContain('from memory');
  });
  it('efficiencies: 97 % and 96 % in print, the losses of single parts from memory', () => {
    expect(USUAL_EFFICIENCY.map(one => [one.value, one.source.confidence])).toEqual([
      [0.97, 'published'],
      [0.96, 'published'],
      [0.985, 'from memory'],
      [0.99, 'from memory'],
    ]);
  });
});

describe('bearings and installation', () => {
  it('a₁ of ISO 281:2007, from memory', () => {
    const { source, ...factors } = reliabilityFactors;
    expect(factors).toEqual({ 90: 1, 95: 0.64, 96: 0.55, 97: 0.47, 98: 0.37, 99: 0.25 });
    expect(source.confidence).toBe('from memory');
  });
  it('class spans, GL and BKI form: K₁ and K₂; only K₂ 5200 was seen in a worked sheet', () => {
    expect(
      classSpanFactors.map(one => [one.slow.low, one.slow.high, one.fast, one.fastSource.confidence]),
    ).toEqual([
      [450, 450, 8400, 'from memory'],
      [280, 280, 5200, 'published'],
      [280, 350, 5200, 'published'],
    ]);
  });
  it('Lingaiah and Iyengar: c; and the rule of thumb of 20 to 40 diameters', () => {
    expect(Object.values(lineShaftLoading)).toEqual([0.82, 1.1, 1.56]);
    expect([spanDiameterGuide.least, spanDiameterGuide.most, spanDiameterGuide.source.confidence]).toEqual([
      20,
      40,
      'common practice',
    ]);
  });
  it('aft stern bearings, IACS UR M52 of 2026 and M85: length, shorter length, pressure', () => {
    expect(
      sternBearingRules.map(one => [
        one.kind,
        one.lengthOverDiameter,
        one.shorter?.lengthOverDiameter,
        one.shorter?.pressure && one.shorter.pressure.limit / MPA,
      ]),
    ).toEqual([
      ['oil, white metal', 2, 1.5, 0.8],
      ['oil, synthetic', 2, 1.5, 0.6],
      ['water', 4, 2, undefined],
      ['grease', 4, undefined, undefined],
    ]);
  });
  it('angles: the down-angle gear in print, shaft angle and engine tilt from memory', () => {
    const degrees = (rad: number) => Number((rad / DEG).toFixed(9));
    expect(
      installationAngleGuides.map(one => [degrees(one.from), degrees(one.to), one.source.confidence]),
    ).toEqual([
      [7, 15, 'published'],
      [8, 10, 'from memory'],
      [12, 15, 'from memory'],
      [15, 17, 'from memory'],
    ]);
  });
});
