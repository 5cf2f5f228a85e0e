import { homeOfFact } from '../model/declared-fact.js';
import type { Fact } from '../model/fact.js';
import type { Part } from '../model/part.js';

/** How blocks inside a part begin. */
const BLOCKS: Readonly<Record<string, string>> = {
  bearings: 'bearing',
  sections: 'section',
  keys: 'key',
  mounts: 'mounts',
  flange: 'flange',
  thrustBearing: 'thrust bearing',
};

/** Read or reckoned on the part that was there: a part of another size is not known to have it. */
const OF_THE_OLD = new Set([
  'source',
  'tipClearance',
  'rudderClearance',
  'strutClearance',
  'stampedDiameter',
  'stampedPitch',
  'effectivePitch',
  'mass',
  'inertia',
  'serial',
  'examined',
  'examDue',
  'examInScope',
  'vibratoryStresses',
]);

/** `replace propeller { ... }`: a new part like the one that is kept, but for one fact. */
export function replacementFor(part: Part, changed: Fact<unknown>, written: string): string | undefined {
  const facts = factsIn(part as unknown as Record<string, unknown>, changed, written);
  return facts && `replace ${part.role} { ${facts} }`;
}

function factsIn(
  fields: Readonly<Record<string, unknown>>,
  changed: Fact<unknown>,
  written: string,
): string | undefined {
  const words: string[] = [];
  for (const [field, value] of Object.entries(fields)) {
    if (OF_THE_OLD.has(field)) continue;
    for (const one of Array.isArray(value) ? value : [value]) {
      if (typeof one !== 'object' || one === null) continue;
      const home = 'written' in one ? homeOfFact(one as Fact<unknown>) : undefined;
      if (home) words.push(`${home.property} ${one === changed ? written : (one as Fact<unknown>).written}`);
      else if (BLOCKS[field] && 'origin' in one) {
        const inner = factsIn(one as Record<string, unknown>, changed, written);
        const name = 'name' in one ? ` ${String(one.name)}` : '';
        words.push(`${BLOCKS[field]}${name} { ${inner ?? ''} }`);
      }
    }
  }
  return words.length > 0 ? words.join('  ') : undefined;
}
