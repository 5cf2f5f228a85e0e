import { VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import { derivedOf } from './derived.js';
import { type FlatFact, flatFacts } from './facts.js';
import { partsOf } from './parts.js';
import { type Judged, sideOfVessel } from './side.js';
import { signatureWords } from './statements.js';
import { outcomeWords } from './verdict-moves.js';

/**
 * A vessel as lines of text, one thing a line, each with where it belongs, always in the same order: facts as written,
 * what is worked out, verdicts. Two of them compared line by line show what changed, whatever the texts look like.
 */
export function describeVessel(judged: Judged): string[] {
  const { vessel } = judged;
  const side = sideOfVessel(judged);
  const facts: string[] = [];
  for (const kind of ['duty', 'hull', 'criteria', 'certificate', 'helm', 'project'] as const)
    facts.push(...factLines(kind, flatFacts(vessel[kind] ?? {}, VESSEL_VOCABULARY[kind])));
  for (const { part, line, slot, facts: own } of partsOf(side).values()) {
    const at = `${line.key} ${slot}`;
    facts.push(`${at}: ${part.entry?.name ?? 'declared in place'}, ${part.change}`, ...factLines(at, own));
  }
  for (const one of vessel.revisions)
    facts.push(['revision', one.name, one.dated, one.text, ...signatureWords(one)].filter(Boolean).join(' '));
  for (const one of vessel.requirements) facts.push(`require ${one.written}`);
  for (const one of vessel.assumptions)
    facts.push(`assume ${one.about} ${one.quantity?.written ?? ''}`.trim());
  for (const { rule, on, by, until, because } of vessel.acceptances)
    facts.push(`accept ${rule} on ${on} by ${by ?? 'nobody'} until ${until ?? 'no date'}: ${because ?? ''}`);
  const derived = [...side.lines.values()].flatMap(line =>
    derivedOf(line).map(({ what, words }) => `${line.key}: ${what}: ${words}`),
  );
  const verdicts = judged.verdicts.map(
    one => `${one.subject}: ${one.rule}: ${outcomeWords(one)}${one.asFound ? ', as found' : ''}`,
  );
  const inOrder = (lines: readonly string[], head: string) =>
    [...lines].sort().map(one => `${vessel.name} ${head} ${one.replace(/\s+/g, ' ')}`);
  return [...inOrder(facts, 'fact'), ...inOrder(derived, 'derived'), ...inOrder(verdicts, 'verdict')];
}

function factLines(at: string, facts: ReadonlyMap<string, FlatFact>): string[] {
  return [...facts.values()].map(({ what, written, evidence }) => {
    const known = evidence
      ? ` [${[evidence.kind, evidence.dated, evidence.note].filter(Boolean).join(' ')}]`
      : '';
    return `${at}, ${what}: ${written}${known}`;
  });
}
