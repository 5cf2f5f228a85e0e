import { newWord } from '@tailshaft/vocabulary';
import { crankshaftPower } from '../../analysis/efficiencies.js';
import { ratingOf } from '../../analysis/engine-points.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';

const INFO: RuleInfo = {
  id: 'capacity/power-point',
  title: 'The rating states where its power was measured',
  mistakes: ['T11'],
  severity: 'warning',
  criterion: 'point of measurement of the rating used: crankshaft or propeller shaft',
  source: {
    title:
      'rating note of an engine maker, ISO 8665 basis: propeller shaft power is 97 % of crankshaft power',
    confidence: 'published',
  },
  manual:
    'Small-craft standards declare power at the propeller shaft, behind the gear; engine sheets mostly declare ' +
    'it at the crankshaft. The gear loses about 3 % in between. Taking one for the other counts the loss twice ' +
    'or not at all: the propeller is ordered for power that never arrives, or the gear is judged for less than ' +
    'enters it. Write "measured at crankshaft" or "measured at propeller shaft". Until then the heavier ' +
    'assumption is used, that of the propeller shaft.',
  caution: 'The gear loss is its efficiency, assumed or declared; it is not measured here.',
  limitOf: 'what is asked is where a power was measured',
  noFigure: 'no number is compared',
  curesRecord: true,
  severalMovers: 'each',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['    measured at crankshaft\n', '']),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, ['measured at crankshaft', 'measured at unknown']),
  })),
};

export const powerPoint: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, vessel, analysis } = context;
  const rating = line.engine && ratingOf(line.engine);
  const declared = rating?.power?.value;
  if (!line.engine || !rating || !declared) return undefined;
  const say = sayFor(INFO, line.path);
  const place = rating.power!.origin;
  const { measuredAt } = rating;
  const crankshaft = crankshaftPower(declared.y, rating, line, vessel);
  if (measuredAt?.value !== undefined) {
    const back =
      measuredAt.value === 'propeller shaft' ? `: ${analysis.tell(crankshaft)} at the crankshaft` : '';
    return say.holds({
      place: measuredAt.origin,
      message: `${line.name}: ${rating.power!.written} is measured at the ${measuredAt.value}${back}.`,
      workings: [crankshaft],
    });
  }
  const question = `${line.name}: is ${rating.power!.written} of ${nameOf(line.engine)} at the crankshaft or at the propeller shaft?`;
  const effect = `The gear takes about 3 %: in the second case ${analysis.tell(crankshaft)} enters it, and that heavier reading is used until it is stated.`;
  if (measuredAt) {
    const needs = new Needs();
    needs.miss(
      {
        what: `point of measurement of the ${rating.duty} rating`,
        host: rating.origin,
        property: 'measured at',
      },
      measuredAt.origin,
    );
    return say.cannotTell(needs, {
      place: measuredAt.origin,
      message: `${question} ${effect}`,
      workings: [crankshaft],
    });
  }
  return say.fails({
    place,
    message: `${question} ${effect}`,
    workings: [crankshaft],
    routes: () => [
      {
        title: `State that it is measured at the crankshaft: ${analysis.tell(declared.y)} enters the gear`,
        edits: [{ do: 'set', host: rating.origin, property: 'measured at', value: newWord('crankshaft') }],
      },
      {
        title: `State that it is measured at the propeller shaft: ${analysis.tell(crankshaft)} enters the gear`,
        edits: [
          { do: 'set', host: rating.origin, property: 'measured at', value: newWord('propeller shaft') },
        ],
      },
    ],
  });
}
