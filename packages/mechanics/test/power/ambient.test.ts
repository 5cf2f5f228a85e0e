import {
  adjustedPower,
  assumptionsBehind,
  given,
  ISO_REFERENCE,
  indicatedPowerRatio,
  powerAdjustment,
  powerAtAmbient,
  saturationPressure,
  UNRESTRICTED_SERVICE,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { standardAirPressure } from '../held/air.js';
import { published } from '../published.js';

const LIEGE = 'University of Liège, course exercise on ISO 3046-1';
const KPA = 1e3;

published(saturationPressure, `${LIEGE} (45 °C); boiling point and 25 °C of steam tables`, [
  { case: '45 °C', inputs: { temperature: 318.15 }, gives: 9.595, unit: KPA, within: 5e-4 },
  { case: '99.974 °C', inputs: { temperature: 373.124 }, gives: 101.325, unit: KPA, within: 5e-3 },
  { case: '25 °C', inputs: { temperature: 298.15 }, gives: 3.1698, unit: KPA, within: 2e-4 },
]);

published(
  standardAirPressure,
  `${LIEGE} (its own height law gives 96.60 kPa at 400 m); ISO 2533 at 1000 m (from memory)`,
  [
    { case: '400 m', inputs: { height: 400 }, gives: 96.6, unit: KPA, within: 0.02 },
    { case: '1000 m', inputs: { height: 1000 }, gives: 89.874, unit: KPA, within: 2e-3 },
  ],
);

const REFERENCE = {
  referencePressure: 100e3,
  referenceHumidity: 0.3,
  // Steam tables at 298 K, which is 24.85 °C.
  referenceSaturation: 3141.7,
  referenceAirTemperature: 298,
  referenceCoolantTemperature: 298,
};
const COOLED = { humidityFactor: 0, pressureExponent: 0.7, airExponent: 1.2, coolantExponent: 1 };
published(indicatedPowerRatio, `${LIEGE}; recomputed ISO reference to 45 °C air, 32 °C coolant`, [
  {
    case: 'naturally aspirated, 400 m, 45 °C, 80 %',
    inputs: {
      ...REFERENCE,
      pressure: 96.6 * KPA,
      humidity: 0.8,
      saturation: 9595,
      airTemperature: 318.15,
      coolantTemperature: 298,
      humidityFactor: 1,
      pressureExponent: 1,
      airExponent: 0.75,
      coolantExponent: 0,
    },
    gives: 0.8547,
    within: 5e-5,
  },
  {
    case: 'turbocharged, charge cooled',
    inputs: {
      ...REFERENCE,
      ...COOLED,
      pressure: 100e3,
      humidity: 0.6,
      saturation: 9595,
      airTemperature: 318,
      coolantTemperature: 305,
    },
    gives: 0.90378,
    within: 5e-6,
  },
]);

published(powerAdjustment, `${LIEGE}; recomputed at three mechanical efficiencies`, [
  {
    case: 'k 0.8547, 0.85',
    inputs: { indicatedRatio: 0.854708, mechanicalEfficiency: 0.85 },
    gives: 0.8368,
    within: 5e-5,
  },
  // Recomputed on from all digits of k: 0.903781.
  {
    case: '0.80',
    inputs: { indicatedRatio: 0.9037814, mechanicalEfficiency: 0.8 },
    gives: 0.88694,
    within: 5e-6,
  },
  {
    case: '0.85',
    inputs: { indicatedRatio: 0.9037814, mechanicalEfficiency: 0.85 },
    gives: 0.8919,
    within: 5e-6,
  },
  {
    case: '0.90',
    inputs: { indicatedRatio: 0.9037814, mechanicalEfficiency: 0.9 },
    gives: 0.8963,
    within: 5e-6,
  },
  {
    case: 'k 0.854708, 0.85, recomputed',
    inputs: { indicatedRatio: 0.854708, mechanicalEfficiency: 0.85 },
    gives: 0.83676,
    within: 5e-7,
  },
]);

published(adjustedPower, `${LIEGE}: 444.6 kW at reference gives 372 kW`, [
  { case: '444.6 kW', inputs: { power: 444.6e3, adjustment: 0.8368 }, gives: 372, unit: KPA, within: 0.05 },
  {
    case: 'recomputed',
    inputs: { power: 444.57e3, adjustment: 0.83676 },
    gives: 372,
    unit: KPA,
    within: 5e-3,
  },
]);

describe('power at ambient conditions', () => {
  it('needs a reference power of 444.6 kW for 372 kW at the site of the exercise', () => {
    const site = {
      pressure: standardAirPressure({ height: given('height', 'h', 'length', 400) }),
      air: given('air', 'T', 'temperature', 318.15),
      humidity: given('humidity', 'φ', 'ratio', 0.8),
      coolant: given('coolant', 'T', 'temperature', 298),
    };
    const result = powerAtAmbient({
      power: given('reference power', 'P', 'power', 444.6e3),
      engine: 'naturally aspirated, limited by excess air',
      site,
      mechanicalEfficiency: given('mechanical efficiency', 'η', 'ratio', 0.85),
    });
    // Its own height law differs by 0.01 kPa.
    expect(Math.abs(result.si / 1e3 - 372)).toBeLessThan(0.1);
  });

  it.each([
    [100, 318, 0.6],
    [96, 308, 0.5],
    [90, 288, 0.3],
  ])(
    'of spark ignition at %d kPa and %d K agrees with SAE J1349 (June 1990) within 1 %%',
    (kPa, T, humidity) => {
      const v = <D extends 'pressure' | 'temperature' | 'ratio'>(dimension: D, si: number) =>
        given('v', 'v', dimension, si);
      const air = v('temperature', T);
      const result = powerAtAmbient({
        power: given('rated power', 'P', 'power', 100e3),
        engine: 'spark ignition',
        site: {
          pressure: v('pressure', kPa * KPA),
          air,
          humidity: v('ratio', humidity),
          coolant: v('temperature', 298),
        },
      });
      // CF = 1.180 (990/Pd (T/298)^0.5) − 0.18, Pd the dry pressure in mbar, as a tuners' forum quotes it; P = 100 kW / CF.
      const dry = (kPa * KPA - humidity * saturationPressure({ temperature: air }).si) / 100;
      const factor = 1.18 * (990 / dry) * Math.sqrt(T / 298) - 0.18;
      expect(Math.abs(result.si / 1e3 / (100 / factor) - 1)).toBeLessThan(0.01);
    },
  );

  const power = given('rated power', 'P', 'power', 300e3);

  it('takes a charge-cooled engine to unrestricted service', () => {
    const result = powerAtAmbient({
      power,
      engine: 'turbocharged, charge cooled',
      site: UNRESTRICTED_SERVICE,
    });
    expect(result.si / 300e3).toBeCloseTo(0.88694, 5);
    expect(assumptionsBehind(result).some(one => one.startsWith('mechanical efficiency'))).toBe(true);
  });

  it.each([
    [0.85, 0.8919],
    [0.9, 0.8963],
  ])('the same at a mechanical efficiency of %f: %f', (efficiency, adjustment) => {
    const result = powerAtAmbient({
      power,
      engine: 'turbocharged, charge cooled',
      site: UNRESTRICTED_SERVICE,
      mechanicalEfficiency: given('mechanical efficiency', 'η', 'ratio', efficiency),
    });
    expect(Math.abs(result.si / 300e3 - adjustment)).toBeLessThanOrEqual(5e-6);
  });

  it("meets the exercise's own height law: 96.602 kPa at 400 m, printed 96.60, against 96.611 of ISO 2533", () => {
    const law = 101.248815 - 0.0118062234 * 400 + 4.72680601e-7 * 400 ** 2;
    expect(law).toBeCloseTo(96.6, 2);
    const ours = standardAirPressure({ height: given('height', 'h', 'length', 400) }).si / 1e3;
    expect(Math.abs(ours - law)).toBeLessThan(0.01);
  });

  it('leaves the rating alone at reference conditions', () => {
    const result = powerAtAmbient({
      power,
      engine: 'naturally aspirated, limited by excess air',
      site: ISO_REFERENCE,
    });
    expect(result.si).toBeCloseTo(300e3, 6);
  });

  it('counts no more than the rated power in cold air, unless the maker allows it', () => {
    const cold = { ...ISO_REFERENCE, air: given('air', 'T', 'temperature', 273.15) };
    const engine = 'naturally aspirated, limited by excess air';
    const capped = powerAtAmbient({ power, engine, site: cold });
    expect(capped.si).toBe(300e3);
    expect(assumptionsBehind(capped).join()).toContain('engine maker allows');
    expect(powerAtAmbient({ power, engine, site: cold, makerAllowsMore: true }).si).toBeGreaterThan(310e3);
  });
});
