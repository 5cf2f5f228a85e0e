import { formula } from './held-formula.js';

/** Air pressure at a height above the sea, standard atmosphere. p Pa, h m. */
export const standardAirPressure = /* @__PURE__ */ formula({
  name: 'air pressure at a height',
  symbol: 'p',
  dimension: 'pressure',
  inputs: { height: 'length' },
  text: 'p = 101.325 kPa (1 − 0.0065 h / 288.15 K)^5.25588',
  symbols: { height: 'h' },
  source: { title: 'ISO 2533, Standard Atmosphere', year: 1975, confidence: 'from memory' },
  range: [
    { condition: 'height from −500 m to 11 km', met: ({ height }) => height >= -500 && height <= 11_000 },
  ],
  compute: ({ height }) => 101_325 * (1 - (0.0065 * height) / 288.15) ** 5.25588,
});
