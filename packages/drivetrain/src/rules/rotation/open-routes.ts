import { type Hand, handFor, handThatDrivesAhead, listed } from '@tailshaft/mechanics';
import { clutchesOf } from '../../analysis/gear-data.js';
import { handOf, isConvertible } from '../../analysis/hand.js';
import { rotationOf } from '../../analysis/rotation.js';
import { pairOf, withClutch } from '../../analysis/twin.js';
import type { LineContext } from '../../judge/context.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import type { Missing } from '../../judge/verdict.js';
import { isAsFound } from '../../model/as-found.js';
import { isWeak } from '../../model/fact.js';
import { fitHand, turnWords, useClutch } from './edits.js';
import { pairWords } from './hand-routes.js';
import { isWelcome } from './turning-routes.js';

/**
 * Where only the handed choices of a planned line are open (its ahead clutch, its hand, as on a line that mirrors
 * another): every consistent pair of them. What already is in the boat is looked at, not chosen.
 */
export function openRoutes(context: LineContext, missing: readonly Missing[]): Route[] {
  const { line, analysis } = context;
  const { gear, propeller } = line;
  const open = new Set(missing.map(gap => gap.property));
  if (!propeller || propeller.change === 'retained' || propeller.change === 'modified') return [];
  if (isAsFound(context.arrangement, context.vessel) || isConvertible(propeller)) return [];
  if (missing.some(gap => gap.at) || [...open].some(one => one !== 'ahead clutch' && one !== 'hand'))
    return [];
  const clutches = open.has('ahead clutch')
    ? (gear ? clutchesOf(gear, gear.variant) : [])
        .filter(one => one.ahead?.value === 'continuous' && !isWeak(one.ahead))
        .map(one => one.name)
    : [undefined];
  return clutches.flatMap(clutch => {
    const sense = clutch ? rotationOf(withClutch(line, clutch)).ahead : analysis.rotation.ahead;
    if (!sense) return [];
    const hand = handThatDrivesAhead(sense);
    const written = handOf(line);
    if ((written && written !== hand) || !isWelcomeHere(context, hand)) return [];
    const edits: ModelEdit[] = [
      ...(clutch ? [useClutch(gear!, clutch)] : []),
      ...(written ? [] : fitHand(propeller, hand)),
    ];
    const what = [
      ...(clutch ? [`run ahead on clutch ${clutch}`] : []),
      ...(written ? [] : [`fit a ${hand}-hand propeller`]),
    ];
    const title = `${line.name}: ${listed(what)}: the shaft turns ${turnWords(sense)} ahead`;
    return [{ title: `${title}${pairWords(context.arrangement, line, hand)}`, edits }];
  });
}

/** A way that would bring a finding on the pair is not offered. */
function isWelcomeHere(context: LineContext, hand: Hand): boolean {
  const pair = pairOf(context.arrangement);
  const side = context.line.side?.value;
  if (!pair || (side !== 'port' && side !== 'starboard')) return true;
  const other = handOf(side === 'port' ? pair.starboard : pair.port);
  if (!other) return true;
  if (other === hand) return context.arrangement.reasons.some(one => one.about === 'same hand');
  return isWelcome(context, hand === handFor(side, 'outward') ? 'outward' : 'inward');
}
