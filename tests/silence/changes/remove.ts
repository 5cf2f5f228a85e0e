import type { Change } from '../change.js';
import type { Judged } from '../rejudge.js';
import { edited, factsOf, type WrittenFact } from '../written.js';
import { blockWords } from './names.js';

/** The word behind `duty` and `hull` cannot be left out: there `unknown` says as little. */
function leftOut(fact: WrittenFact): { start: number; end: number; text: string } {
  if (fact.owner.kind === 'setting' && ['duty', 'hull'].includes(fact.property))
    return { ...fact.value, text: 'unknown' };
  return { start: fact.start, end: fact.end, text: '' };
}

/** (a) Each fact left out. */
export function* remove({ text, check }: Judged): Generator<Change> {
  for (const [index, fact] of factsOf(check).entries()) {
    yield {
      letter: 'a',
      what: `without ${fact.property} of ${blockWords(fact)} (${index})`,
      about: fact.property,
      text: edited(text, leftOut(fact)),
      gone: [fact.property],
    };
  }
}

/** (a) Pairs of facts left out: each fact with another one that its words draw. */
export function* removePairs({ text, check }: Judged, draw: (words: string) => number): Generator<Change> {
  const facts = factsOf(check);
  for (const [index, first] of facts.entries()) {
    const words = `${first.property} of ${blockWords(first)} (${index})`;
    const second = facts[Math.floor(draw(words) * facts.length)]!;
    if (first.start < second.end && second.start < first.end) continue;
    yield {
      letter: 'a',
      what: `without ${words} and ${second.property} of ${blockWords(second)}`,
      about: [first.property, second.property].sort().join(' and '),
      text: edited(text, leftOut(first), leftOut(second)),
      gone: [first.property, second.property],
      halves: [edited(text, leftOut(first)), edited(text, leftOut(second))],
    };
  }
}

/** (a) Each fact written as `unknown`: what a fact left out must come to as well. */
export function* unknown({ text, check }: Judged): Generator<Change> {
  for (const [index, fact] of factsOf(check).entries()) {
    yield {
      letter: 'a',
      what: `unknown ${fact.property} of ${blockWords(fact)} (${index})`,
      about: `${fact.property} unknown`,
      text: edited(text, { start: fact.value.start, end: fact.end, text: 'unknown' }),
      gone: [fact.property],
    };
  }
}
