import { formula } from '../core/formula.js';

const WHOLE = [
  {
    condition: 'tooth counts are whole and above zero',
    met: (si: Readonly<Record<string, number>>) =>
      [si.sun, si.ring, si.planet, si.driver, si.driven].every(
        teeth => teeth === undefined || (Number.isInteger(teeth) && teeth > 0),
      ),
  },
];

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
