import type { Turning, TwinCombination } from '@tailshaft/mechanics';
import { capital } from '@tailshaft/mechanics';
import { handFact } from '../../analysis/hand.js';
import { combinationsOf, type Pair, pairOf } from '../../analysis/twin.js';
import type { ArrangementContext } from '../../judge/context.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import { fitHand, useClutch } from './edits.js';

/** Every allowed way, with the machinery where it stands, in which both propellers drive ahead and turn this way. */
export function turningRoutes(
  context: Pick<ArrangementContext, 'arrangement' | 'analysisOf' | 'vessel'>,
  wanted?: Turning,
): Route[] {
  const pair = pairOf(context.arrangement);
  if (!pair) return [];
  return combinationsOf(pair, line => context.analysisOf(line).rotation)
    .filter(one => one.allowed === 'yes' && one.port.machineryOf === 'port')
    .filter(one => (wanted ? one.pair === wanted : isWelcome(context, one.pair)))
    .flatMap(one => {
      const edits = combinationEdits(pair, one);
      const costs = one.costs.filter(cost => cost.what !== 'turning').map(cost => cost.text);
      const title = `${costs.join('; ')}: propellers then turn ${one.pair}`;
      return edits.length > 0 ? [{ title: capital(title), edits }] : [];
    });
}

/** Outward is always welcome; inward only where a reason or a requirement asks for it; one hand never by itself. */
export function isWelcome(
  { arrangement, vessel }: Pick<ArrangementContext, 'arrangement' | 'vessel'>,
  pair: TwinCombination['pair'],
): boolean {
  if (pair !== 'inward') return pair === 'outward';
  return inwardReason({ arrangement, vessel }) !== undefined;
}

/** Why the pair turns inward, in the words of a reason or of a requirement. */
export function inwardReason({
  arrangement,
  vessel,
}: Pick<ArrangementContext, 'arrangement' | 'vessel'>): string | undefined {
  const reason = arrangement.reasons.find(one => one.about === 'inward turning');
  if (reason) return `with the reason given: ${reason.text}`;
  const required = vessel.requirements.some(one => one.about === 'propellers turn' && one.word === 'inward');
  return required ? 'as required' : undefined;
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
