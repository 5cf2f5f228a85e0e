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

/** Facts with what is written in their place. */
export type Rewritten = ReadonlyMap<Fact<unknown>, string>;

/** `replace propeller { ... }`: a new part like the one that is kept, but for some facts. */
export function replacementFor(part: Part, changed: Rewritten): string | undefined {
  const facts = factsIn(part as unknown as Record<string, unknown>, changed);
  return facts && `replace ${part.role} { ${facts} }`;
}

function factsIn(fields: Readonly<Record<string, unknown>>, changed: Rewritten): string | undefined {
  const words: string[] = [];
  const blocks: string[] = [];
  for (const [field, value] of Object.entries(fields)) {
    if (OF_THE_OLD.has(field) || isHead(field, fields)) continue;
    for (const one of Array.isArray(value) ? value : [value]) {
      if (typeof one !== 'object' || one === null) continue;
      const home = 'written' in one ? homeOfFact(one as Fact<unknown>) : undefined;
      if (home)
        words.push(`${home.property} ${changed.get(one as Fact<unknown>) ?? (one as Fact<unknown>).written}`);
      else if (BLOCKS[field] && 'origin' in one) {
        const inner = factsIn(one as Record<string, unknown>, changed);
        const name = 'name' in one ? ` ${String(one.name)}` : '';
        blocks.push(`${BLOCKS[field]}${name} { ${inner ?? ''} }`);
      }
    }
  }
  const all = [...words, ...blocks];
  return all.length > 0 ? all.join('  ') : undefined;
}

/** The word that tells a block from others of its kind stands in front of its brace. */
function isHead(field: string, fields: Readonly<Record<string, unknown>>): boolean {
  return field.endsWith('Fact') && fields[field.slice(0, -'Fact'.length)] !== undefined;
}
