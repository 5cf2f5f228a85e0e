import type { Turning, TwinCombination } from '@tailshaft/mechanics';
import { handFact } from '../../analysis/hand.js';
import { combinationsOf, type Pair, pairOf } from '../../analysis/twin.js';
import type { ArrangementContext } from '../../judge/context.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import { fitHand, useClutch } from './edits.js';

/** Every allowed way, with the machinery where it stands, in which both propellers drive ahead and turn this way. */
export function turningRoutes(
  context: Pick<ArrangementContext, 'arrangement' | 'analysisOf'>,
  wanted?: Turning,
): Route[] {
  const pair = pairOf(context.arrangement);
  if (!pair) return [];
  return combinationsOf(pair, line => context.analysisOf(line).rotation)
    .filter(one => one.allowed === 'yes' && one.port.machineryOf === 'port')
    .filter(one => (wanted ? one.pair === wanted : one.pair !== 'same hand'))
    .flatMap(one => {
      const edits = combinationEdits(pair, one);
      const costs = one.costs.filter(cost => cost.what !== 'turning').map(cost => cost.text);
      return edits.length > 0
        ? [{ title: `${costs.join('; ')}: propellers then turn ${one.pair}`, edits }]
        : [];
    });
}

function combinationEdits(pair: Pair, { port, starboard }: TwinCombination): ModelEdit[] {
  return [port, starboard].flatMap(choice => {
    const { gear, propeller } = pair[choice.side];
    const clutch = gear?.aheadClutch && gear.aheadClutch.value !== choice.clutch;
    const hand = propeller && handFact(propeller)?.value !== choice.hand;
    return [
      ...(clutch ? [useClutch(gear, choice.clutch)] : []),
      ...(hand ? fitHand(propeller, choice.hand) : []),
    ];
  });
}
