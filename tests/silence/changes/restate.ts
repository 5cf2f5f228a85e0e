import type { Change } from '../change.js';
import type { Judged } from '../rejudge.js';
import { edited, factsOf, type WrittenFact } from '../written.js';
import { blockWords } from './names.js';

type Arrangement = Judged['check']['vessels'][number]['reading']['arrangements'][number];
type Part = Arrangement['lines'][number]['parts'][number];

/** (f) Each fact that a part takes from its entry, from the line that it mirrors or from what it keeps, said again. */
export function* restate({ text, check }: Judged): Generator<Change> {
  const facts = factsOf(check);
  const statement = (fact: WrittenFact) => text.slice(fact.start, fact.end);
  for (const { reading } of check.vessels) {
    for (const arrangement of reading.arrangements) {
      const before = reading.arrangements.find(one => one.name === arrangement.revises?.name);
      for (const line of arrangement.lines) {
        const same = [
          arrangement.lines.find(one => one.name === line.mirrors?.name),
          before?.lines.find(one => one.name === line.name),
        ];
        for (const part of line.parts) {
          const kept = part.action === 'retain' || part.action === 'modify';
          const [beneath, ...others] =
            (kept ? same[1] : same[0])?.parts.filter(one => one.role === part.role) ?? [];
          // What is said of one of several that are kept together is said of all of them.
          if (others.length > 0) continue;
          const mayKeep = kept || (!part.action && !part.name);
          for (const fact of facts) {
            if (fact.path.length > (fact.owner.kind === 'entry' ? 0 : 1) || says(part, fact)) continue;
            const ofEntry =
              fact.owner.kind === 'entry' &&
              fact.owner.entry.kind === part.role &&
              fact.owner.entry.name === part.name;
            const ofKept = mayKeep && fact.owner.kind === 'part' && fact.owner.part === beneath;
            if (!ofEntry && !ofKept) continue;
            if (!part.facts.host.vocabulary.rows.some(row => row.words === fact.property && !row.many))
              continue;
            yield {
              letter: 'f',
              what: `${fact.property} of ${blockWords(fact)} said again in ${arrangement.name}.${line.name}.${part.role}`,
              about: fact.property,
              text: edited(text, into(part, statement(fact))),
              // A paper about the entry is not told of the part again.
              touches: fact.property === 'source' ? ['paper/source-age'] : [],
            };
          }
        }
      }
    }
  }
}

/** Words of facts that stand in the header of a part. */
const HEADER = ['at', 'ratio', 'ahead clutch', 'hand'];

function says(part: Part, fact: WrittenFact): boolean {
  return HEADER.includes(fact.property) || part.facts.facts.some(one => one.row.words === fact.property);
}

/** A statement added to the block of a part, or in a block of its own. */
export function into(part: Part, statement: string): { start: number; end: number; text: string } {
  const { block, headEnd } = part.host;
  return block
    ? { start: block.start + 1, end: block.start + 1, text: ` ${statement}\n` }
    : { start: headEnd, end: headEnd, text: ` { ${statement} }` };
}
