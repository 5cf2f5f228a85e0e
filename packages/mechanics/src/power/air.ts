import { formula } from '../core/formula.js';

/** Critical point of water, K and Pa, and the coefficients of the equation. */
const CRITICAL_TEMPERATURE = 647.096;

const CRITICAL_PRESSURE = 22.064e6;

/** Pressure of saturated water vapour over liquid water. p Pa, T K. */
export const saturationPressure = /* @__PURE__ */ formula({
  name: 'saturation pressure of water vapour',
  symbol: 'p_s',
  dimension: 'pressure',
  inputs: { temperature: 'temperature' },
  text: 'ln(p_s/p_c) = (T_c/T)(a₁θ + a₂θ^1.5 + a₃θ³ + a₄θ^3.5 + a₅θ⁴ + a₆θ^7.5), θ = 1 − T/T_c',
  terms: 'coefficients and critical point are those of the source',
  source: {
    author: 'W. Wagner, A. Pruss',
    title: 'International Equations for the Saturation Properties of Ordinary Water Substance',
    year: 1993,
    confidence: 'from memory',
  },
  range: [
    {
      condition: 'temperature from 0.01 °C to the critical point',
      met: ({ temperature }) => temperature >= 273.16 && temperature <= CRITICAL_TEMPERATURE,
    },
  ],
  compute: ({ temperature }) => {
    const t = 1 - temperature / CRITICAL_TEMPERATURE;
    const sum =
      -7.85951783 * t +
      1.84408259 * t ** 1.5 -
      11.7866497 * t ** 3 +
      22.6807411 * t ** 3.5 -
      15.9618719 * t ** 4 +
      1.80122502 * t ** 7.5;
    return CRITICAL_PRESSURE * Math.exp((CRITICAL_TEMPERATURE / temperature) * sum);
  },
});
