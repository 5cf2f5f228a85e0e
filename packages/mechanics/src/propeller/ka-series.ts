import { formula } from '../core/formula.js';
import type { RangeResult } from '../core/value.js';
import { asTerms, type DuctedTable, KA_TABLES } from './data/ka-series.js';
import { within } from './limits.js';
import { type Polynomial, polynomialAt, polynomialInAdvance, type Term } from './polynomial.js';
import { KA_SERIES } from './sources.js';
import { drives } from './zero-thrust.js';

interface BladeNumbers {
  readonly pitchRatio: number;
  readonly areaRatio: number;
  readonly blades: number;
}

/** How far the area of a propeller may lie from the one that was tested, for which alone there are polynomials. */
const AREA_BESIDE = 0.05;

export const KA_LIMITS = [
  { condition: '3, 4 or 5 blades', met: ({ blades }: BladeNumbers) => tableOf(blades) !== undefined },
  {
    condition:
      'expanded area ratio within 0.05 of the one tested with its number of blades: 0.65 of 3, 0.70 of 4, 0.75 of 5',
    met: ({ blades, areaRatio }: BladeNumbers) => {
      const tested = tableOf(blades)?.areaRatio;
      return tested !== undefined && within(areaRatio, tested - AREA_BESIDE, tested + AREA_BESIDE);
    },
  },
  { condition: 'pitch ratio 0.6 to 1.4', met: ({ pitchRatio: p }: BladeNumbers) => within(p, 0.6, 1.4) },
] as const;

const DRIVING = {
  condition: 'advance ratio from 0 to the point of zero thrust',
  met: (si: BladeNumbers & { readonly advanceRatio: number }) => drives(kaThrust(si), si.advanceRatio),
} as const;

const INPUTS = { advanceRatio: 'ratio', pitchRatio: 'ratio', areaRatio: 'ratio', blades: 'number' } as const;

const COMMON = {
  dimension: 'ratio',
  inputs: INPUTS,
  terms: 'coefficients and powers are those of the table for its number of blades, in nozzle 19A',
  source: KA_SERIES,
  range: [...KA_LIMITS, DRIVING],
} as const;

/** KT of propeller and nozzle together. */
export const kaThrustCoefficient = /* @__PURE__ */ formula({
  ...COMMON,
  name: 'Ka series thrust coefficient',
  symbol: 'KT',
  text: 'KT = Σ C (P/D)^x J^y, 8 terms',
  compute: si => polynomialAt(kaThrust(si), si.advanceRatio),
});

/** KT of the nozzle alone: at speed it turns to drag. */
export const kaNozzleThrustCoefficient = /* @__PURE__ */ formula({
  ...COMMON,
  name: 'Ka series nozzle thrust coefficient',
  symbol: 'KTN',
  text: 'KTN = Σ C (P/D)^x J^y, 8 to 18 terms',
  compute: si => polynomialAt(kaNozzleThrust(si), si.advanceRatio),
});

/** KQ of the propeller in its nozzle. */
export const kaTorqueCoefficient = /* @__PURE__ */ formula({
  ...COMMON,
  name: 'Ka series torque coefficient',
  symbol: 'KQ',
  text: 'KQ = Σ C (P/D)^x J^y, 7 to 10 terms',
  compute: si => polynomialAt(kaTorque(si), si.advanceRatio),
});

export function kaThrust({ blades, pitchRatio }: BladeNumbers): Polynomial {
  return of('thrust', blades, pitchRatio);
}

export function kaNozzleThrust({ blades, pitchRatio }: BladeNumbers): Polynomial {
  return of('nozzleThrust', blades, pitchRatio);
}

export function kaTorque({ blades, pitchRatio }: BladeNumbers): Polynomial {
  return of('torque', blades, pitchRatio);
}

/** What weakens a result by these tables, beside the print that was not at hand. */
export function kaCautions({ blades, areaRatio }: BladeNumbers): RangeResult[] {
  const table = tableOf(blades);
  return [
    {
      condition: 'blades and area of a tested propeller: Ka 3-65, Ka 4-70 or Ka 5-75',
      met: table !== undefined && within(areaRatio, table.areaRatio, table.areaRatio),
    },
    {
      condition: 'polynomials read and not remembered: Ka 4-70 or Ka 5-75',
      met: table?.thrust.every(one => one.confidence !== 'from memory') ?? false,
    },
  ];
}

function tableOf(blades: number): DuctedTable | undefined {
  return KA_TABLES.find(one => one.blades === blades);
}

type Kind = 'thrust' | 'nozzleThrust' | 'torque';

/** A table without the number of blades gives no number: the limits say so. */
function of(kind: Kind, blades: number, pitchRatio: number): Polynomial {
  const terms = TERMS[kind].get(blades);
  return terms ? polynomialInAdvance(terms, pitchRatio) : [Number.NaN];
}

const termsOf = (kind: Kind): ReadonlyMap<number, readonly Term[]> =>
  new Map(KA_TABLES.map(table => [table.blades, asTerms(table[kind])]));

const TERMS: Readonly<Record<Kind, ReadonlyMap<number, readonly Term[]>>> = {
  thrust: termsOf('thrust'),
  nozzleThrust: termsOf('nozzleThrust'),
  torque: termsOf('torque'),
};
