import { RULES } from '@tailshaft/drivetrain';
import { unknownName } from './acceptance.js';
import type { BlockReading } from './block.js';
import type { ReadContext } from './context.js';

const RULE_IDS = RULES.map(one => one.id);

/** What a practice says of rules that there are none of would count for nothing and must not look as if. */
export function checkPractice(context: ReadContext, facts: BlockReading): void {
  for (const { row, head } of facts.nested) {
    const start = head?.fact?.value;
    const at = head?.value;
    if (typeof start !== 'string' || !at) continue;
    const of = RULES.filter(one => one.id.startsWith(start));
    const place = { uri: facts.host.uri, start: at.start, end: at.end };
    if (of.length === 0)
      unknownName(
        context,
        place,
        start,
        RULE_IDS,
        `No rule begins with "${start}", so "${row.words}" has no effect.`,
      );
  }
}
