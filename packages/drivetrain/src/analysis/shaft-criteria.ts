import {
  given,
  renamed,
  type ShaftServiceFactor,
  shaftServiceFactors,
  type Value,
} from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Criterion } from '../judge/verdict.js';
import type { Quantity } from '../model/fact.js';
import type { Vessel } from '../model/vessel.js';

/** A criterion as it is applied to a shaft, and in which words. */
export type AppliedCriterion = Criterion &
  (
    | { readonly formula: 'small-craft'; readonly factor: Value<'number'> }
    | ({ readonly formula: 'class' } & ClassFactors)
  );

/** Factors of the class formula that the criteria choose in the place of the tabulated ones. */
export interface ClassFactors {
  readonly plantFactor?: Value<'number'>;
  readonly shaftFactor?: Value<'number'>;
}

/** Which published use stands for a duty class where the author chose no factor. */
const USE_OF_DUTY: Readonly<Record<string, string>> = {
  pleasure: 'average yacht',
  recreational: 'average yacht',
  light: 'racing or commercial',
  'light-duty': 'racing or commercial',
  medium: 'racing or commercial',
  'medium-duty': 'racing or commercial',
  intermediate: 'racing or commercial',
  intermittent: 'racing or commercial',
  heavy: 'heavy commercial or towing',
  'heavy-duty': 'heavy commercial or towing',
  continuous: 'heavy commercial or towing',
  workboat: 'heavy commercial or towing',
};

const INSPECTED = 'inspected passenger';

/**
 * The least factor that may be published for the service of the vessel, where not all is known that chooses one: what does not
 * even reach that fails whatever the rest turns out to be.
 */
export function mildestCriterion({ duty }: Vessel): AppliedCriterion {
  const [word, passengers] = [duty?.class?.value, duty?.passengers?.value];
  const own = word === undefined ? undefined : USE_OF_DUTY[word.toLowerCase()];
  const uses = new Set([
    ...(own ? [own] : Object.values(USE_OF_DUTY)),
    ...(passengers === undefined ? [INSPECTED] : []),
  ]);
  const [row] = shaftServiceFactors.filter(one => uses.has(one.use)).sort((a, b) => a.low - b.low);
  return byFactor(row!, `the least of those that may apply: published for ${row!.use}`);
}

/** The published factor for the service of the vessel; undefined, with the gap noted, where duty does not tell it. */
export function serviceFactor(vessel: Vessel, needs: Needs): ShaftServiceFactor | undefined {
  const { duty } = vessel;
  const host = duty?.origin ?? vessel.origin;
  const passengers = needs.fact(duty?.passengers, {
    what: `whether ${vessel.name} carries passengers`,
    host,
    property: duty ? 'passengers' : 'duty',
  });
  // Where passengers are carried the class of duty makes no difference.
  if (passengers === 'carried') return useNamed(INSPECTED);
  const word = needs.fact(duty?.class, {
    what: `duty of vessel ${vessel.name}`,
    host: vessel.origin,
    property: 'duty',
  });
  if (passengers === undefined || word === undefined) return undefined;
  const use = USE_OF_DUTY[word.toLowerCase()];
  if (use) return useNamed(use);
  return needs.miss(
    {
      what: `a safety factor for the shaft: no published one belongs to ${word} duty`,
      host: vessel.criteria?.origin ?? vessel.origin,
      property: vessel.criteria ? 'shaft diameter by' : 'criteria',
    },
    duty?.class?.origin,
  );
}

/** The criteria that the vessel chose, or the small-craft formula with the published factor for its service. */
export function shaftCriteria(vessel: Vessel, needs: Needs): AppliedCriterion[] {
  const chosen = vessel.criteria?.shaftDiameter ?? [];
  if (chosen.length === 0) {
    const factor = smallCraftDefault(vessel, needs);
    return factor ? [factor] : [];
  }
  return chosen.flatMap((fact): AppliedCriterion[] => {
    const wanted = {
      what: 'the criterion of shaft diameter',
      host: vessel.criteria!.origin,
      property: 'shaft diameter by',
    };
    const criterion = needs.fact(fact, wanted);
    if (!criterion) return [];
    const reason = criterion.reason ? `, ${criterion.reason}` : '';
    if (criterion.formula === 'class') {
      const factors = classFactors(vessel, needs);
      if (!factors) return [];
      return [
        {
          formula: 'class',
          ...factors.chosen,
          said: `class formula${factors.said}${reason}`,
          chosenBy: 'author',
        },
      ];
    }
    const { factor } = criterion;
    if (!factor) return [smallCraftDefault(vessel, needs)].filter(one => one !== undefined);
    return [
      {
        formula: 'small-craft',
        factor,
        said: `small-craft formula, factor ${factor.written ?? factor.si}${reason}`,
        chosenBy: 'author',
      },
    ];
  });
}

/** The factors of the class formula that the criteria choose, with their words; nothing where one of them is open. */
function classFactors(
  { criteria }: Vessel,
  needs: Needs,
): { readonly chosen: ClassFactors; readonly said: string } | undefined {
  const own = (fact: Quantity<'number'> | undefined, label: string, symbol: string, property: string) => {
    const value = fact && needs.fact(fact, { what: `the ${label}`, host: criteria!.origin, property });
    return value && renamed(value, label, symbol);
  };
  const { classPlantFactor: F, classShaftFactor: k } = criteria ?? {};
  const plantFactor = own(F, 'plant factor', 'F', 'class plant factor at least');
  const shaftFactor = own(k, 'factor of the design feature', 'k', 'class shaft factor at least');
  if ((F && !plantFactor) || (k && !shaftFactor)) return undefined;
  return {
    chosen: { ...(plantFactor ? { plantFactor } : {}), ...(shaftFactor ? { shaftFactor } : {}) },
    said: `${F ? `, F ${F.written}` : ''}${k ? `, k ${k.written}` : ''}`,
  };
}

/** The small-craft formula with the published factor for the service of the vessel. */
export function smallCraftDefault(vessel: Vessel, needs: Needs): AppliedCriterion | undefined {
  const row = serviceFactor(vessel, needs);
  if (!row) return undefined;
  return byFactor(row, `published for ${row.use}`);
}

function byFactor({ low, use, source }: ShaftServiceFactor, why: string): AppliedCriterion {
  const factor = given('safety factor', 'SF', 'number', low, {
    assumed: `${low}: published for ${use} (${source.title}); the spec chooses none`,
    replaceWith: 'shaft diameter by',
  });
  return {
    formula: 'small-craft',
    factor,
    said: `small-craft formula, factor ${low} (${why})`,
    chosenBy: 'default',
  };
}

function useNamed(use: string): ShaftServiceFactor | undefined {
  return shaftServiceFactors.find(one => one.use === use);
}
