import {
  allUnits,
  ambiguousSpellings,
  ambiguousUnit,
  type Dimension,
  findUnit,
  formatQuantity,
  formatValue,
  fromSI,
  given,
  preferredUnit,
  SI_UNIT,
  suggestUnit,
  toSI,
  unitsOf,
} from '@tailshaft/mechanics';
import fc from 'fast-check';
import Qty from 'js-quantities';
import * as math from 'mathjs';
import { describe, expect, it } from 'vitest';
import { PRINTED_SP811, REFERENCES } from './references.js';

// Both libraries carry some factors to six or seven digits only.
const LIBRARY_DIGITS = 1e-6;
const COARSE: Record<string, number> = { mmHg: 3e-6, inHg: 3e-6, mmH2O: 3e-5, inH2O: 3e-5 };

const inMathjs = (number: number, text: string): number => {
  const scaled = /^([\d.e]+) (.*)$/.exec(text);
  return Number(math.unit(number * Number(scaled?.[1] ?? 1), scaled?.[2] ?? text).toSI().value);
};
const inJsQuantities = (number: number, text: string): number => {
  const scaled = /^([\d.]+) (.*)$/.exec(text);
  return Qty(number * Number(scaled?.[1] ?? 1), scaled?.[2] ?? text).toBase().scalar;
};

describe('units against independent libraries', () => {
  it('has a reference row for every unit, and no other', () => {
    expect(REFERENCES.map(row => row[0]).sort()).toEqual(
      allUnits()
        .map(unit => unit.symbol)
        .sort(),
    );
  });

  for (const [symbol, mathjs, jsq, exact] of REFERENCES) {
    it(`${symbol} agrees with mathjs (${mathjs}), js-quantities (${jsq}), its definition (${exact ?? 'not needed'})`, () => {
      const unit = findUnit(symbol)!;
      const within = COARSE[symbol] ?? LIBRARY_DIGITS;
      expect(mathjs !== null || jsq !== null || exact !== undefined, 'has at least one check').toBe(true);
      for (const number of [1, 37.5]) {
        const ours = toSI(number, unit);
        if (mathjs) expect(Math.abs(inMathjs(number, mathjs) / ours - 1)).toBeLessThan(within);
        if (jsq) expect(Math.abs(inJsQuantities(number, jsq) / ours - 1)).toBeLessThan(within);
        if (exact !== undefined) expect(Math.abs((number * exact) / ours - 1)).toBeLessThan(1e-14);
      }
    });
  }

  it.each(PRINTED_SP811)('%s is the factor that NIST SP 811 prints', (symbol, factor, within) => {
    expect(Math.abs(toSI(1, findUnit(symbol)!) - factor)).toBeLessThanOrEqual(within);
  });

  it('knows the trade constants that follow from the factors', () => {
    // T = 9549.297 P/n (N·m, kW), 5252.113 (lbf·ft, hp), 63,025.36 (lbf·in, hp), 716.197 (kgf·m, PS): SP 811 factors recomputed.
    const torque = (power: string, unit: string) =>
      fromSI(toSI(1, findUnit(power)!) / toSI(1, findUnit('rpm')!), findUnit(unit)!);
    expect(torque('kW', 'N.m')).toBeCloseTo(9549.297, 3);
    expect(torque('hp', 'lbf.ft')).toBeCloseTo(5252.113, 3);
    expect(torque('hp', 'lbf.in')).toBeCloseTo(63025.36, 2);
    expect(torque('PS', 'kgf.m')).toBeCloseTo(716.197, 3);
    expect(fromSI(toSI(1, findUnit('hp/100rpm')!), findUnit('N.m')!)).toBeCloseTo(71.209, 3);
    expect(fromSI(toSI(1, findUnit('hp/100rpm')!), findUnit('kW/rpm')!)).toBeCloseTo(0.007457, 8);
  });
});

describe('units', () => {
  it('converts there and back', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...allUnits()),
        fc.double({ min: -1e9, max: 1e9, noNaN: true }),
        (unit, number) => {
          const back = fromSI(toSI(number, unit), unit);
          // Numbers under 1e-300 lose digits in any arithmetic.
          expect(Math.abs(back - number)).toBeLessThanOrEqual(
            1e-12 * (Math.abs(number) + unit.offset) + 1e-300,
          );
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('reads every spelling of a unit as that unit, printed forms too', () => {
    for (const unit of allUnits()) {
      for (const spelling of [unit.symbol, ...unit.aliases, unit.display || '1']) {
        expect(findUnit(spelling)?.symbol, spelling).toBe(unit.symbol);
      }
    }
    expect(findUnit('N·m')?.symbol).toBe('N.m');
    expect(findUnit('kg⋅m²')?.symbol).toBe('kg.m2');
    expect(findUnit('°C')?.symbol).toBe('degC');
    expect(findUnit('min⁻¹')?.symbol).toBe('rpm');
  });

  it('keeps case: kn is a knot, kN a kilonewton', () => {
    expect(findUnit('kn')?.dimensions).toEqual(['speed']);
    expect(findUnit('kN')?.dimensions).toEqual(['force']);
    expect(findUnit('mw')).toBeUndefined();
  });

  it('has a unit for every dimension, the coherent one included', () => {
    for (const dimension of Object.keys(SI_UNIT) as Dimension[]) {
      const units = unitsOf(dimension);
      expect(units.length, dimension).toBeGreaterThan(0);
      if (dimension === 'fuel rate') continue;
      expect(
        units.some(unit => unit.factor === 1 && unit.offset === 0),
        dimension,
      ).toBe(true);
    }
  });

  it('starts each list with the unit people know best', () => {
    const first = (dimension: Dimension) => unitsOf(dimension)[0]?.symbol;
    expect([
      first('power'),
      first('rotational speed'),
      first('length'),
      first('torque'),
      first('speed'),
    ]).toEqual(['kW', 'rpm', 'mm', 'N.m', 'kn']);
    expect(unitsOf('power per speed').map(unit => unit.symbol)).toContain('N.m');
  });

  it('offers the unit of the same tradition', () => {
    expect(preferredUnit('power').symbol).toBe('kW');
    expect(preferredUnit('power', 'lbf.ft').symbol).toBe('hp');
    expect(preferredUnit('power', 'PS').symbol).toBe('PS');
    expect(preferredUnit('volume', 'long-ton').symbol).toBe('imp-gal');
    expect(preferredUnit('rotational speed', 'hp').symbol).toBe('rpm');
  });
});

describe('ambiguous units', () => {
  it('refuses them all, and offers only units that exist', () => {
    for (const spelling of ambiguousSpellings()) {
      expect(findUnit(spelling), spelling).toBeUndefined();
      const { choices } = ambiguousUnit(spelling)!;
      for (const choice of choices) expect(findUnit(choice.symbol), choice.symbol).toBeDefined();
    }
  });

  it.each([
    ['ton', ['t', 'long-ton', 'short-ton']],
    ['gallons', ['US-gal', 'imp-gal']],
    ['gph', ['US-gal/h', 'imp-gal/h']],
    ['miles', ['nmi', 'mi']],
    ['HP', ['hp', 'PS', 'hp-electric']],
    ['KN', ['kn', 'kN']],
    ['lb·ft', ['lbf.ft', 'lbm.ft']],
  ])('%s', (spelling, symbols) => {
    expect(ambiguousUnit(spelling)?.choices.map(choice => choice.symbol)).toEqual(symbols);
  });

  it('says no word about a unit that is clear', () => {
    expect(ambiguousUnit('kW')).toBeUndefined();
  });
});

describe('misspelt units', () => {
  it.each([
    ['kw', 'kW'],
    ['mpa', 'MPa'],
    ['Rpm', 'rpm'],
    ['kilowatts', 'kW'],
    ['knotts', 'kn'],
    ['newton metres', 'N.m'],
    ['inchs', 'in'],
    ['lbf.tf', 'lbf.ft'],
    ['KW/RPM', 'kW/rpm'],
  ])('%s suggests %s', (misspelt, symbol) => {
    expect(suggestUnit(misspelt)?.symbol).toBe(symbol);
  });

  it('does not guess from nothing', () => {
    expect(suggestUnit('banana')).toBeUndefined();
    expect(suggestUnit('')).toBeUndefined();
  });
});

describe('printed quantities', () => {
  it.each([
    [300e3, 'kW', '300 kW'],
    [Math.PI / 180, 'deg', '1°'],
    [0.15, '%', '15 %'],
    [12345.6, 'N', '12346 N'],
    [0.04445, 'in', '1.75 in'],
    [373.15, 'degC', '100 °C'],
    [1245.58, 'N.m', '1246 N·m'],
    [0, 'kn', '0 kn'],
    [-12.5, 'm', '−12.5 m'],
    [9.9996, 'm', '10 m'],
    [2e-9, 'm', '2e-9 m'],
    [Number.NaN, 'kW', 'no finite value'],
  ])('%d in %s is %s', (si, symbol, text) => {
    expect(formatQuantity(si, findUnit(symbol)!)).toBe(text);
  });

  it('prints a value in its trade unit', () => {
    expect(formatValue(given('shaft speed', 'n', 'rotational speed', (2 * Math.PI * 900) / 60))).toBe(
      '900 rpm',
    );
    expect(formatValue(given('rated power', 'P', 'power', 300e3))).toBe('300 kW');
    expect(formatValue(given('shaft diameter', 'd', 'length', 0.05))).toBe('50 mm');
    expect(formatValue(given('waterline length', 'L', 'length', 10.9))).toBe('10.9 m');
    expect(formatValue(given('boat speed', 'V', 'speed', 10.288889))).toBe('20 kn');
    expect(formatValue(given('tip speed', 'v', 'speed', 50))).toBe('50 m/s');
    expect(formatValue(given('stress', 'τ', 'pressure', 85.5e6))).toBe('85.5 MPa');
  });

  it('prints something for every dimension', () => {
    for (const dimension of Object.keys(SI_UNIT) as Dimension[]) {
      expect(formatValue(given('x', 'x', dimension, 1)), dimension).toMatch(/^−?\d/);
    }
  });
});
