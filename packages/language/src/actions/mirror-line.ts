import type { ShaftLine } from '@tailshaft/drivetrain';
import { addToBlock, bracesIn } from '../edit/layout.js';
import type { FileCheck } from '../project/project.js';
import type { DocumentReading } from '../reading/document.js';
import { placeOf } from '../reading/place.js';
import type { Offer, TextOf } from './offer.js';

const OTHER = { port: 'Starboard', starboard: 'Port' } as const;

/**
 * The line of the other side as a mirror of this one. What has a hand is never mirrored in silence: it is written as
 * an open question, and the checks then say what fits.
 */
export function mirrorLine(
  reading: DocumentReading,
  check: FileCheck,
  offset: number,
  textOf: TextOf,
): Offer[] {
  for (const { vessel } of check.vessels) {
    for (const arrangement of vessel.arrangements) {
      const line = arrangement.lines.find(one => {
        const place = placeOf(one.nameOrigin);
        return (
          place.uri === reading.uri && offset >= place.start - 'shaftline '.length && offset <= place.end
        );
      });
      const side = line?.side?.value;
      if (!line || line.mirrors || !side || side === 'centre') continue;
      const name = OTHER[side];
      const taken = arrangement.lines.some(
        one => one.name === name || one.side?.value === name.toLowerCase(),
      );
      const block = bracesIn(textOf(reading.uri), placeOf(arrangement.origin));
      const facts = openFacts(line);
      const statement = `shaftline ${name} mirrors ${line.name} { ${facts.join('  ')} }`;
      const added = !taken && block && addToBlock(textOf(reading.uri), block, [statement]);
      if (!added) continue;
      const asked = facts.length > 0 ? ', with handed facts as open questions' : '';
      const title = `Add the ${name.toLowerCase()} line as a mirror of ${line.name}${asked}`;
      return [{ title, kind: 'refactor', edits: [{ uri: reading.uri, ...added }] }];
    }
  }
  return [];
}

/** Facts that have a hand, as far as this line says them; what a shift cable does is left to the author. */
function openFacts(line: ShaftLine): string[] {
  const { gear, propeller } = line;
  const engine = line.engine && !line.engine.entry && line.engine.rotation;
  return [
    ...(engine ? ['engine { rotation unknown }'] : []),
    ...(gear ? ['ahead clutch unknown'] : []),
    ...(gear?.pumpIndex ? ['gear { pump set for unknown }'] : []),
    ...(propeller ? ['propeller hand unknown'] : []),
  ];
}
