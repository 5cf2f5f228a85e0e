import { formula } from '../core/formula.js';
import type { Source } from '../core/source.js';
import { WILLIS } from './train-ratio.js';

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

/** Teeth of the ring of a simple set, so that it closes round sun and planet of one module. */
export const ringTeeth = /* @__PURE__ */ formula({
  name: 'ring teeth of a simple set',
  symbol: 'Z_R',
  dimension: 'number',
  inputs: { sun: 'number', planet: 'number' },
  text: 'Z_R = Z_S + 2 Z_P',
  symbols: { sun: 'Z_S', planet: 'Z_P' },
  source: { title: 'pitch diameters of one module on one centre', confidence: 'derived' },
  range: WHOLE,
  compute: ({ sun, planet }) => sun + 2 * planet,
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

/** Conditions under which a simple set goes together; each with the numbers that say so. */
export function assemblyConditions(
  sun: number,
  planet: number,
  ring: number,
  planets: number,
): { readonly condition: string; readonly met: boolean }[] {
  const share = (sun + ring) / planets;
  return [
    {
      condition: `ring closes round sun and planets: Z_R = Z_S + 2 Z_P = ${sun + 2 * planet}, is ${ring}`,
      met: ring === sun + 2 * planet,
    },
    {
      condition: `${planets} planets at equal spacing: (Z_S + Z_R) / ${planets} = ${Number(share.toFixed(3))} must be whole`,
      met: Number.isInteger(share),
    },
    {
      // Neighbouring planets on the circle of radius (Z_S + Z_P)/2 modules, addendum one module.
      condition: `${planets} planets clear each other: (Z_S + Z_P) sin(180°/${planets}) is over Z_P + 2`,
      met: planets < 2 || (sun + planet) * Math.sin(Math.PI / planets) > planet + 2,
    },
  ];
}
