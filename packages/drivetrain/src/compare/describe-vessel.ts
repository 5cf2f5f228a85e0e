import { ENTRY_VOCABULARY, MODE_VOCABULARY, VESSEL_VOCABULARY } from '@tailshaft/vocabulary';
import type { ShaftLine, Vessel } from '../model/vessel.js';
import { derivedOf } from './derived.js';
import { fuelsTold } from './derived-fuel.js';
import { factsWithSource, type KnownEntry } from './entries.js';
import { NONE } from './evidence.js';
import { type FlatFact, flatFacts } from './facts.js';
import { partsOf } from './parts.js';
import { type Judged, sideOfVessel } from './side.js';
import { signatureWords } from './statements.js';
import { studyFacts } from './study-facts.js';
import { trialFacts } from './trial-facts.js';
import { outcomeWords } from './verdict-moves.js';

/**
 * A vessel as lines of text, one fact a line, each with where it belongs, always in the same order: facts as written,
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
    facts.push(`assume ${one.about} ${one.quantity?.written ?? ''}: ${one.because ?? ''}`.trim());
  for (const { rule, on, by, dated, until, because } of vessel.acceptances)
    facts.push(
      `accept ${rule} on ${on} by ${by ?? 'nobody'} dated ${dated ?? 'never'} until ${until ?? 'no date'}: ${because ?? ''}`,
    );
  facts.push(...besideParts(vessel), ...practiceLines(vessel));
  const derived = [...side.lines.values()].flatMap(line =>
    derivedOf(line).map(({ what, words }) => `${line.key}: ${what}: ${words}`),
  );
  derived.push(...fuelsTold(side).map(({ key, what, words }) => `${key}: ${what}: ${words}`));
  const verdicts = judged.verdicts.map(
    one => `${one.subject}: ${one.rule}: ${outcomeWords(one)}${one.asFound ? ', as found' : ''}`,
  );
  const inOrder = (lines: readonly string[], head: string) =>
    [...lines].sort().map(one => `${vessel.name} ${head} ${one.replace(/\s+/g, ' ')}`);
  return [...inOrder(facts, 'fact'), ...inOrder(derived, 'derived'), ...inOrder(verdicts, 'verdict')];
}

/** A catalogue entry as lines of text, in the same way. */
export function describeEntry(entry: KnownEntry): string[] {
  const named = `${entry.kind} ${entry.name}`;
  return [`${named} fact named`, ...factLines(`${named} fact`, factsWithSource(entry))].sort();
}

/** What a vessel says beside its parts: arrangements with their reasons, the modes of their lines, trials and studies. */
function besideParts(vessel: Vessel): string[] {
  const lines = vessel.arrangements.flatMap(({ name, title, revises, reasons, lines }) => [
    [`arrangement ${name}`, title && `"${title}"`, revises && `revises ${revises}`].filter(Boolean).join(' '),
    ...reasons.map(one => `reason for ${one.about} in ${name}: ${one.text}`),
    ...lines.flatMap(lineLines),
  ]);
  if (vessel.title) lines.push(`title "${vessel.title}"`);
  return [...lines, ...keyedLines('trial', trialFacts(vessel)), ...keyedLines('study', studyFacts(vessel))];
}

function lineLines(line: ShaftLine): string[] {
  return [
    ...factLines(line.path, flatFacts({ side: line.side }, undefined)),
    ...(line.modes ?? []).flatMap(mode => [
      `${line.path} mode ${mode.name}`,
      ...factLines(`${line.path} mode ${mode.name}`, flatFacts(mode, MODE_VOCABULARY)),
    ]),
  ];
}

/** Its criteria stand among those of the vessel. */
function practiceLines({ practice }: Vessel): string[] {
  if (!practice) return [];
  const facts = flatFacts(practice.facts, ENTRY_VOCABULARY.practice);
  return [`practice ${practice.name}`, ...factLines('practice', facts)];
}

/** Facts that go by a longer name than their own: the trial and the run that they are of. */
function keyedLines(at: string, facts: ReadonlyMap<string, FlatFact>): string[] {
  return [...facts].flatMap(([what, fact]) => factLines(at, new Map([[what, { ...fact, what }]])));
}

function factLines(at: string, facts: ReadonlyMap<string, FlatFact>): string[] {
  return [...facts.values()].map(({ what, written, marks }) => {
    const known = marks.words === NONE ? '' : ` [${marks.words.replaceAll('"', '')}]`;
    return `${at}, ${what}: ${written}${known}`;
  });
}
