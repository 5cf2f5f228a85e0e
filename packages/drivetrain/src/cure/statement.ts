import { asStated, type NewFact, type NewStatement, type NewValue } from '@tailshaft/vocabulary';
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
export type Rewritten = ReadonlyMap<Fact<unknown>, NewValue>;

/** A new part like the one that is kept, but for some facts. */
export function replacementFor(part: Part, changed: Rewritten): NewStatement | undefined {
  const facts = factsIn(part as unknown as Record<string, unknown>, changed);
  return facts.length > 0 ? { action: 'replace', role: part.role, facts } : undefined;
}

function factsIn(fields: Readonly<Record<string, unknown>>, changed: Rewritten): NewFact[] {
  const own: NewFact[] = [];
  const blocks: NewFact[] = [];
  for (const [field, value] of Object.entries(fields)) {
    if (OF_THE_OLD.has(field) || isHead(field, fields)) continue;
    for (const one of Array.isArray(value) ? value : [value]) {
      if (typeof one !== 'object' || one === null) continue;
      const home = 'written' in one ? homeOfFact(one as Fact<unknown>) : undefined;
      if (home) {
        const fact = one as Fact<unknown>;
        own.push({ property: home.property, value: changed.get(fact) ?? asStated(fact) });
      } else if (BLOCKS[field] && 'origin' in one) {
        const name = 'name' in one ? { name: String(one.name) } : {};
        const facts = factsIn(one as Record<string, unknown>, changed);
        blocks.push({ block: BLOCKS[field], ...name, facts });
      }
    }
  }
  return [...own, ...blocks];
}

/** The word that tells a block from others of its kind stands in front of its brace. */
function isHead(field: string, fields: Readonly<Record<string, unknown>>): boolean {
  return field.endsWith('Fact') && fields[field.slice(0, -'Fact'.length)] !== undefined;
}
