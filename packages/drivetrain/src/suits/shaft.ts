import { given, isInInches, percent, type Value } from '@tailshaft/mechanics';
import { amount, spellQuantity } from '@tailshaft/vocabulary';
import type { LineAnalysis } from '../analysis/line.js';
import { shaftCriteria } from '../analysis/shaft-criteria.js';
import { ratedShaftLoad, type ShaftStrength, shaftStrength } from '../analysis/shaft-strength.js';
import { Needs } from '../judge/needs.js';
import { marginOf } from '../judge/verdict.js';
import type { Shaft } from '../model/shafting.js';
import { editOf, stockBars, withDiameter } from '../rules/shafting/shaft-routes.js';
import { NOTHING_SUITS, type Suiting } from './suiting.js';

/** The thinnest stocked bar of its grade that meets every chosen criterion at rated power. */
export function suitingShaft(analysis: LineAnalysis, shaft: Shaft): Suiting {
  const { line, vessel } = analysis;
  if (!(line.engine || line.motor)) return NOTHING_SUITS;
  const needs = new Needs();
  const criteria = shaftCriteria(vessel, needs);
  const load = ratedShaftLoad(analysis, shaft, needs);
  const strengthsOf = (other: Shaft, noted: Needs): readonly ShaftStrength[] =>
    load
      ? criteria.flatMap(one => shaftStrength(other, load, one, shaft === line.shafts.at(-1), noted) ?? [])
      : [];
  for (const bar of stockBars(isInInches(modelOf(analysis, shaft)))) {
    const written = spellQuantity(bar);
    const diameter = given('shaft diameter', 'd', 'length', bar.si, { written });
    const noted = new Needs();
    const strengths = strengthsOf(withDiameter(shaft, diameter), noted);
    if (noted.any || needs.any || strengths.length === 0)
      return { routes: [], missing: [...needs.missing, ...noted.missing] };
    const worst = strengths.reduce((one, other) => (margin(other) < margin(one) ? other : one));
    if (margin(worst) < 0) continue;
    return {
      routes: [
        {
          title: `Take a ${written} shaft, the least stock size: ${worst.criterion.said} asks for ${analysis.tell(worst.needed, 3)}, and the margin is ${percent(margin(worst))}; bearings, seal, coupling and propeller bore follow`,
          edits: [editOf(shaft, 'diameter', shaft.diameter?.origin, amount(bar))],
          workings: [worst.needed, worst.capacity, worst.demand],
        },
      ],
      missing: [],
    };
  }
  return { routes: [], missing: needs.missing, refusal: 'No stocked bar of this grade is thick enough.' };
}

function margin({ capacity, demand }: ShaftStrength): number {
  return marginOf(capacity, demand) ?? -1;
}

/** A length of the line in whose unit its shaft is sized. */
function modelOf({ line }: LineAnalysis, shaft: Shaft): Value<'length'> {
  const { propeller } = line;
  const facts = [
    shaft.diameter,
    shaft.couplingEnd,
    propeller?.diameter,
    propeller?.pitch,
    propeller?.axisToHull,
  ];
  return facts.find(one => one?.value)?.value ?? given('shaft diameter', 'd', 'length', 0.05);
}
