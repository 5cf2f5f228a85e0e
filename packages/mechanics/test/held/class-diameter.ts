import { formula } from './held-formula.js';

/** Least diameter by the simplified rule for craft of at most 25 m. d m; P W; ω rad/s; k_s by material. */
export const smallCraftClassDiameter = /* @__PURE__ */ formula({
  name: 'simplified class shaft diameter of small craft',
  symbol: 'd',
  dimension: 'length',
  inputs: { power: 'power', speed: 'rotational speed', materialFactor: 'number' },
  units: { power: 'kW', speed: 'rpm' },
  unit: 'mm',
  text: 'd = k_s (P/n)^(1/3), mm, kW, rpm',
  symbols: { power: 'P', speed: 'n', materialFactor: 'k_s' },
  source: {
    title: 'Guidance for high speed and light craft (Korean class form)',
    clause: 'factors printed; the formula was a lost picture, its form is inferred from them',
    confidence: 'from memory',
  },
  range: [
    {
      condition: 'the material factor is one of those printed, 80 to 126',
      met: si => si.materialFactor >= 80 && si.materialFactor <= 126,
    },
  ],
  compute: ({ power, speed, materialFactor }) =>
    1e-3 * materialFactor * Math.cbrt(kilowattPerRpm(power / speed)),
});

const kilowattPerRpm = (newtonMetres: number): number => (newtonMetres * Math.PI) / 30e3;
