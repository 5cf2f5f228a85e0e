import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { given, type Value } from '../core/value.js';
import { saturationPressure } from './air.js';

const ISO3046: Source = {
  title: 'ISO 3046-1, Reciprocating internal combustion engines: performance',
  clause: 'method of power adjustment; also ISO 15550',
  year: 2002,
  confidence: 'published',
};

/** Ratio of indicated power at site conditions to reference conditions. Pressures Pa, temperatures K. */
export const indicatedPowerRatio = /* @__PURE__ */ formula({
  name: 'ratio of indicated power',
  symbol: 'k',
  dimension: 'ratio',
  inputs: {
    pressure: 'pressure',
    referencePressure: 'pressure',
    humidity: 'ratio',
    referenceHumidity: 'ratio',
    saturation: 'pressure',
    referenceSaturation: 'pressure',
    airTemperature: 'temperature',
    referenceAirTemperature: 'temperature',
    coolantTemperature: 'temperature',
    referenceCoolantTemperature: 'temperature',
    humidityFactor: 'number',
    pressureExponent: 'number',
    airExponent: 'number',
    coolantExponent: 'number',
  },
  text: 'k = ((p_x − a φ_x p_sx) / (p_r − a φ_r p_sr))^m (T_r / T_x)^n (T_cr / T_cx)^s',
  symbols: {
    pressure: 'p_x',
    referencePressure: 'p_r',
    humidity: 'φ_x',
    referenceHumidity: 'φ_r',
    saturation: 'p_sx',
    referenceSaturation: 'p_sr',
    airTemperature: 'T_x',
    referenceAirTemperature: 'T_r',
    coolantTemperature: 'T_cx',
    referenceCoolantTemperature: 'T_cr',
    humidityFactor: 'a',
    pressureExponent: 'm',
    airExponent: 'n',
    coolantExponent: 's',
  },
  source: ISO3046,
  range: [
    {
      condition: 'relative humidity from 0 to 100 %',
      met: si => [si.humidity, si.referenceHumidity].every(share => share >= 0 && share <= 1),
    },
    {
      condition: 'dry air pressure is above zero',
      met: si => si.pressure > si.humidityFactor * si.humidity * si.saturation,
    },
  ],
  compute: si =>
    ((si.pressure - si.humidityFactor * si.humidity * si.saturation) /
      (si.referencePressure - si.humidityFactor * si.referenceHumidity * si.referenceSaturation)) **
      si.pressureExponent *
    (si.referenceAirTemperature / si.airTemperature) ** si.airExponent *
    (si.referenceCoolantTemperature / si.coolantTemperature) ** si.coolantExponent,
});

/** Ratio of brake power at site to reference, from the indicated ratio and the mechanical efficiency. */
export const powerAdjustment = /* @__PURE__ */ formula({
  name: 'ambient power adjustment',
  symbol: 'α',
  dimension: 'ratio',
  inputs: { indicatedRatio: 'ratio', mechanicalEfficiency: 'ratio' },
  text: 'α = k − 0.7 (1 − k) (1/η_m − 1)',
  symbols: { indicatedRatio: 'k', mechanicalEfficiency: 'η_m' },
  source: ISO3046,
  range: [
    {
      condition: 'mechanical efficiency above 0, at most 1',
      met: si => si.mechanicalEfficiency > 0 && si.mechanicalEfficiency <= 1,
    },
  ],
  compute: ({ indicatedRatio: k, mechanicalEfficiency }) =>
    k - 0.7 * (1 - k) * (1 / mechanicalEfficiency - 1),
});

/** Power at site conditions. */
export const adjustedPower = /* @__PURE__ */ formula({
  name: 'power at ambient conditions',
  symbol: 'P_x',
  dimension: 'power',
  inputs: { power: 'power', adjustment: 'ratio' },
  text: 'P_x = α P_r',
  symbols: { power: 'P_r', adjustment: 'α' },
  source: ISO3046,
  range: [
    {
      condition: 'no more than the reference power, unless the engine maker allows it',
      met: si => si.adjustment <= 1,
    },
  ],
  compute: ({ power, adjustment }) => adjustment * power,
});

/** Exponents by kind of engine: humidity factor a, m of pressure, n of air temperature, s of charge coolant. */
export interface AmbientExponents {
  readonly engine: string;
  readonly a: number;
  readonly m: number;
  readonly n: number;
  readonly s: number;
  readonly source: Source;
}

const LIEGE: Source = {
  title: 'course exercise on ISO 3046-1, University of Liège',
  confidence: 'published',
};
const MEMORY: Source = { ...ISO3046, clause: 'table of exponents', confidence: 'from memory' };

export const AMBIENT_EXPONENTS = {
  'naturally aspirated, limited by excess air': {
    engine: 'naturally aspirated diesel, limited by excess air',
    a: 1,
    m: 1,
    n: 0.75,
    s: 0,
    source: LIEGE,
  },
  'turbocharged, charge cooled': {
    engine: 'turbocharged four-stroke diesel with charge-air cooling',
    a: 0,
    m: 0.7,
    n: 1.2,
    s: 1,
    source: LIEGE,
  },
  'turbocharged, not charge cooled': {
    engine: 'turbocharged diesel without charge-air cooling',
    a: 0,
    m: 0.7,
    n: 2,
    s: 0,
    source: MEMORY,
  },
  'naturally aspirated, thermally limited': {
    engine: 'naturally aspirated diesel, thermally limited',
    a: 0,
    m: 1,
    n: 1,
    s: 0,
    source: MEMORY,
  },
  'spark ignition': {
    engine: 'petrol or gas engine with spark ignition, naturally aspirated or supercharged',
    a: 1,
    m: 1.2,
    n: 0.6,
    s: 0,
    source: {
      title: 'ISO 15550, determination of engine power; the same in UN Regulation 85, annex 5',
      clause: 'spark-ignition engines, exponents of brake power',
      confidence: 'from memory',
    },
  },
} as const satisfies Record<string, AmbientExponents>;

export type AmbientEngine = keyof typeof AMBIENT_EXPONENTS;

/** Air and charge coolant at an engine. */
export interface AmbientConditions {
  readonly pressure: Value<'pressure'>;
  readonly air: Value<'temperature'>;
  readonly humidity: Value<'ratio'>;
  readonly coolant: Value<'temperature'>;
}

const conditions = (
  name: string,
  pressure: number,
  air: number,
  humidity: number,
  coolant: number,
): AmbientConditions => ({
  pressure: given(`air pressure, ${name}`, 'p', 'pressure', pressure, { assumed: name }),
  air: given(`air temperature, ${name}`, 'T', 'temperature', air, { assumed: name }),
  humidity: given(`relative humidity, ${name}`, 'φ', 'ratio', humidity, { assumed: name }),
  coolant: given(`charge coolant temperature, ${name}`, 'T_c', 'temperature', coolant, { assumed: name }),
});

/** ISO 3046-1 and ISO 15550: 100 kPa, 298 K, 30 %, coolant 298 K. */
export const ISO_REFERENCE = conditions('ISO 3046-1 reference conditions', 100_000, 298, 0.3, 298);
/**
 * IACS UR M28, ships of unrestricted service: 1000 mbar, 45 °C, 60 %, sea water 32 °C (from memory).
 * Rounded to whole kelvin as the reference temperature of 298 K for 25 °C is.
 */
export const UNRESTRICTED_SERVICE = conditions('IACS UR M28 conditions, from memory', 100_000, 318, 0.6, 305);

/** Mechanical efficiency where the engine maker states none. */
export const ASSUMED_MECHANICAL_EFFICIENCY = given('mechanical efficiency', 'η_m', 'ratio', 0.8, {
  assumed: 'ISO 3046-1 takes 0.80 where none is stated (from memory)',
  replaceWith: 'mechanical efficiency',
});

/** The exponents of spark ignition are those of brake power: nothing is taken off for friction. */
const BRAKE_POWER = given('mechanical efficiency', 'η_m', 'ratio', 1, {
  assumed: 'the exponents of spark ignition hold for brake power',
});

/**
 * Power an engine gives in other air and coolant than it was rated in. Above the rated power it is taken as the rated
 * power, unless the engine maker allows more.
 */
export function powerAtAmbient(options: {
  readonly power: Value<'power'>;
  readonly engine: AmbientEngine;
  readonly site: AmbientConditions;
  readonly reference?: AmbientConditions;
  readonly mechanicalEfficiency?: Value<'ratio'>;
  readonly makerAllowsMore?: boolean;
}): Value<'power'> {
  const {
    power,
    site,
    reference = ISO_REFERENCE,
    mechanicalEfficiency = ASSUMED_MECHANICAL_EFFICIENCY,
  } = options;
  const { a, m, n, s, source } = AMBIENT_EXPONENTS[options.engine];
  const because = `${options.engine}: ${source.title}, ${source.confidence}`;
  const exponent = (label: string, symbol: string, value: number) =>
    given(label, symbol, 'number', value, { assumed: because });
  const indicatedRatio = indicatedPowerRatio({
    pressure: site.pressure,
    referencePressure: reference.pressure,
    humidity: site.humidity,
    referenceHumidity: reference.humidity,
    saturation: saturationPressure({ temperature: site.air }),
    referenceSaturation: saturationPressure({ temperature: reference.air }),
    airTemperature: site.air,
    referenceAirTemperature: reference.air,
    coolantTemperature: site.coolant,
    referenceCoolantTemperature: reference.coolant,
    humidityFactor: exponent('humidity factor', 'a', a),
    pressureExponent: exponent('pressure exponent', 'm', m),
    airExponent: exponent('air temperature exponent', 'n', n),
    coolantExponent: exponent('coolant temperature exponent', 's', s),
  });
  const adjustment = powerAdjustment({
    indicatedRatio,
    mechanicalEfficiency: options.engine === 'spark ignition' ? BRAKE_POWER : mechanicalEfficiency,
  });
  if (adjustment.si <= 1 || options.makerAllowsMore || Number.isNaN(adjustment.si))
    return adjustedPower({ power, adjustment });
  const capped = given('ambient power adjustment', 'α', 'ratio', 1, {
    assumed: `it comes out at ${adjustment.si.toFixed(3)}, and more than the rated power counts only where the engine maker allows it`,
  });
  return adjustedPower({ power, adjustment: capped });
}
