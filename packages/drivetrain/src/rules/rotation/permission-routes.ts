import { handThatDrivesAhead } from '@tailshaft/mechanics';
import { clutchesOf } from '../../analysis/gear-data.js';
import { handOf } from '../../analysis/hand.js';
import { rotationOf } from '../../analysis/rotation.js';
import { withClutch } from '../../analysis/twin.js';
import type { LineContext } from '../../judge/context.js';
import type { Route } from '../../judge/route.js';
import { isWeak } from '../../model/fact.js';
import { fitHand, handWords, turnWords, useClutch } from './edits.js';
import { gearRoutes, pairWords } from './hand-routes.js';

/** Ways to keep off a clutch that may not run ahead: another clutch with the hand it needs, or another gear. */
export function withoutClutchRoutes(context: LineContext): Route[] {
  const { line, analysis, arrangement } = context;
  const { gear } = line;
  if (!gear) return [];
  const clutches = clutchesOf(gear, gear.variant).filter(
    one =>
      one.name !== analysis.rotation.clutch?.name && one.ahead?.value === 'continuous' && !isWeak(one.ahead),
  );
  const others = clutches.map((clutch): Route => {
    const sense = rotationOf(withClutch(line, clutch.name)).ahead;
    const edits = [useClutch(gear, clutch.name)];
    const run = `Run ${line.name} ahead on clutch ${clutch.name}`;
    if (!sense) return { title: run, edits };
    const hand = handThatDrivesAhead(sense);
    const turns = `${run}: the shaft then turns ${turnWords(sense)} ahead`;
    if (!line.propeller || handOf(line) === hand) return { title: turns, edits };
    const title = `${turns}. ${handWords(line, hand)} with it${pairWords(arrangement, line, hand)}`;
    return { title, edits: [...edits, ...fitHand(line.propeller, hand)] };
  });
  const ahead = analysis.rotation.ahead;
  return [...others, ...(ahead ? gearRoutes(context, ahead) : [])];
}
