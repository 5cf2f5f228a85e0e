import type { Source } from '../../src/core/source.js';
import { WILLIS } from '../../src/train/train-ratio.js';
import { formula } from './held-formula.js';

const FROM_WILLIS: Source = { ...WILLIS, clause: 'formula for a simple set', confidence: 'derived' };

const WHOLE = [
  {
    condition: 'tooth counts are whole and above zero',
    met: (si: Readonly<Record<string, number>>) =>
      [si.sun, si.ring, si.planet, si.driver, si.driven].every(
        teeth => teeth === undefined || (Number.isInteger(teeth) && teeth > 0),
      ),
  },
];

const SUN_RING = { sun: 'number', ring: 'number' } as const;

const SYMBOLS = { sun: 'Z_S', ring: 'Z_R' } as const;

/** Ratio of two gears on fixed shafts, without its sign: an external mesh reverses, an internal one does not. */
export const gearPairRatio = /* @__PURE__ */ formula({
  name: 'ratio of a gear pair',
  symbol: 'i',
  dimension: 'ratio',
  inputs: { driver: 'number', driven: 'number' },
  text: 'i = Z_2 / Z_1',
  symbols: { driver: 'Z_1', driven: 'Z_2' },
  source: { title: 'teeth in mesh pass at one rate', confidence: 'derived' },
  range: WHOLE,
  compute: ({ driver, driven }) => driven / driver,
});

/** Simple set, ring held: sun in, carrier out. Sense kept. */
export const sunToCarrierRatio = /* @__PURE__ */ formula({
  name: 'ratio sun to carrier, ring held',
  symbol: 'i',
  dimension: 'ratio',
  inputs: SUN_RING,
  text: 'i = 1 + Z_R / Z_S',
  symbols: SYMBOLS,
  source: FROM_WILLIS,
  range: WHOLE,
  compute: ({ sun, ring }) => 1 + ring / sun,
});

/** Simple set, sun held: ring in, carrier out. Sense kept; between 1 and 2. */
export const ringToCarrierRatio = /* @__PURE__ */ formula({
  name: 'ratio ring to carrier, sun held',
  symbol: 'i',
  dimension: 'ratio',
  inputs: SUN_RING,
  text: 'i = 1 + Z_S / Z_R',
  symbols: SYMBOLS,
  source: FROM_WILLIS,
  range: WHOLE,
  compute: ({ sun, ring }) => 1 + sun / ring,
});

/** Simple set, carrier held: sun in, ring out. Sense reversed. */
export const sunToRingRatio = /* @__PURE__ */ formula({
  name: 'ratio sun to ring, carrier held',
  symbol: 'i',
  dimension: 'ratio',
  inputs: SUN_RING,
  text: 'i = −Z_R / Z_S',
  symbols: SYMBOLS,
  source: FROM_WILLIS,
  range: WHOLE,
  compute: ({ sun, ring }) => -ring / sun,
});

/** Double-planet set (two planets in series), carrier held: sun in, ring out. Sense kept. */
export const doublePlanetRatio = /* @__PURE__ */ formula({
  name: 'ratio sun to ring of a double-planet set, carrier held',
  symbol: 'i',
  dimension: 'ratio',
  inputs: SUN_RING,
  text: 'i = Z_R / Z_S',
  symbols: SYMBOLS,
  source: FROM_WILLIS,
  range: WHOLE,
  compute: ({ sun, ring }) => ring / sun,
});

/** Torque that holds the ring (or comes out of it) when the sun takes this torque, without losses. */
export const ringTorque = /* @__PURE__ */ formula({
  name: 'ring torque of a simple set',
  symbol: 'T_R',
  dimension: 'torque',
  inputs: { sunTorque: 'torque', ...SUN_RING },
  text: 'T_R = T_S Z_R / Z_S',
  symbols: { sunTorque: 'T_S', ...SYMBOLS },
  source: FROM_WILLIS,
  range: WHOLE,
  compute: ({ sunTorque, sun, ring }) => (sunTorque * ring) / sun,
});

/** Torque on the carrier when the sun takes this torque, without losses; it opposes the other two. */
export const carrierTorque = /* @__PURE__ */ formula({
  name: 'carrier torque of a simple set',
  symbol: 'T_c',
  dimension: 'torque',
  inputs: { sunTorque: 'torque', ...SUN_RING },
  text: 'T_c = −T_S (1 + Z_R / Z_S)',
  symbols: { sunTorque: 'T_S', ...SYMBOLS },
  source: FROM_WILLIS,
  range: WHOLE,
  compute: ({ sunTorque, sun, ring }) => -sunTorque * (1 + ring / sun),
});
