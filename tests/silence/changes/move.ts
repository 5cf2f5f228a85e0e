import type { Change } from '../change.js';
import type { Judged } from '../rejudge.js';
import { edited, factsOf } from '../written.js';
import { blockWords } from './names.js';
import { into } from './restate.js';

/** (g) Each fact that may stand in an entry or at the place of its part, moved to the other of the two. */
export function* move({ text, check }: Judged): Generator<Change> {
  const parts = check.vessels.flatMap(({ reading }) =>
    reading.arrangements.flatMap(one => one.lines.flatMap(line => line.parts)),
  );
  const entries = check.entries.map(one => one.reading);
  // At a place a fact that has a hand is that of one side: the other one that mirrors it would have to say its own.
  const mirrored = check.vessels.some(({ reading }) =>
    reading.arrangements.some(one => one.lines.some(line => line.mirrors)),
  );
  for (const fact of factsOf(check)) {
    const { owner, property, start, end } = fact;
    const gone = { start, end, text: '' };
    const statement = text.slice(start, end);
    if (owner.kind === 'entry' && fact.path.length === 0) {
      const users = parts.filter(one => one.role === owner.entry.kind && one.name === owner.entry.name);
      if (users.length === 0 || property === 'source' || (mirrored && fact.row.handed)) continue;
      const knows = (one: (typeof users)[number]) =>
        one.facts.host.vocabulary.rows.some(row => row.words === property) &&
        !one.facts.facts.some(said => said.row.words === property);
      if (!users.every(knows)) continue;
      yield {
        letter: 'g',
        what: `${property} of ${blockWords(fact)} at its places`,
        about: `${property} to its place`,
        text: edited(text, gone, ...users.map(one => into(one, statement))),
        touches: ['paper/source-age'],
      };
    }
    if (owner.kind === 'part' && fact.path.length === 1 && owner.part.name) {
      const { role, name } = owner.part;
      const entry = entries.find(one => one.kind === role && one.name === name);
      const users = parts.filter(one => one.role === role && one.name === name);
      if (!entry?.host.block || users.length !== 1) continue;
      if (!entry.host.vocabulary.rows.some(row => row.words === property)) continue;
      if (entry.facts.facts.some(one => one.row.words === property)) continue;
      const at = entry.host.block.start + 1;
      yield {
        letter: 'g',
        what: `${property} of ${blockWords(fact)} in its entry`,
        about: `${property} to its entry`,
        text: edited(text, gone, { start: at, end: at, text: ` ${statement}\n` }),
        // Of the gear in its line it says how it is used; its sheet says it of a gear that has no astern clutch.
        touches: ['paper/source-age', ...(property === 'reversing' ? ['paper/place-against-entry'] : [])],
      };
    }
  }
}
