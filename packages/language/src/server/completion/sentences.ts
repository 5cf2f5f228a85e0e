import type { Dimension } from '@tailshaft/mechanics';
import { ASSUMABLE, BOUNDS, REQUIRABLE, TURNS } from '@tailshaft/vocabulary';
import { CompletionItemKind } from 'vscode-languageserver';
import type { Token } from '../../text/scan.js';
import type { Offer } from './items.js';
import { unitOffers } from './values.js';

/** A sentence that a vessel can say, `…` standing for the value. */
interface Sentence {
  readonly text: string;
  readonly doc: string;
  readonly dimension?: Dimension;
}

/** Every requirement that some check verifies: those over a computed quantity, and those with a rule of their own. */
const REQUIREMENTS: readonly Sentence[] = [
  ...REQUIRABLE.flatMap(({ words, doc, example, conditions, ranges }) =>
    BOUNDS.slice(0, 2)
      .filter(bound => isVerified(words, bound))
      .flatMap(bound =>
        (conditions.length > 0 ? conditions.map(one => ` at ${one}`) : ['']).map(
          (condition): Sentence => ({
            text: `${words} ${bound} …${condition}`,
            doc: `${doc}

\`${example}\``,
            dimension: Object.keys(ranges)[0] as Dimension,
          }),
        ),
      ),
  ),
  ...TURNS.map(way => ({
    text: `propellers turn ${way}`,
    doc: 'Which way the propellers of a twin turn over the top, seen from aft.',
  })),
];

/** What can be required of one way of running: it goes on where the sentence is whole without it. */
function inMode(mode: string): Sentence[] {
  return REQUIREMENTS.filter(
    ({ text, dimension }) => dimension !== undefined && !text.startsWith('trolling speed'),
  ).map(one => ({
    ...one,
    text: `${one.text} in mode ${mode}`,
  }));
}

/** The slowest speed is only ever bounded from above. */
function isVerified(words: string, bound: string): boolean {
  return words !== 'trolling speed' || bound === 'at most';
}

const ASSUMPTIONS: readonly Sentence[] = ASSUMABLE.map(({ words, doc, example, dimension }) => ({
  text: `${words} … because "…"`,
  doc: `${doc}\n\n\`assume ${example} because "..."\``,
  dimension,
}));

export const requireOffers = (typed: readonly Token[], modes: readonly string[]): Offer[] =>
  sentenceOffers(
    typed.some(one => one.kind === 'number') ? [...REQUIREMENTS, ...modes.flatMap(inMode)] : REQUIREMENTS,
    typed,
  );
export const assumeOffers = (typed: readonly Token[]): Offer[] => sentenceOffers(ASSUMPTIONS, typed);

/** What may follow of the sentences that begin with what is typed, each once. */
function sentenceOffers(sentences: readonly Sentence[], typed: readonly Token[]): Offer[] {
  const offers = new Map<string, Offer>();
  for (const { text, doc, dimension } of sentences) {
    const rest = restOf(text.split(' '), typed);
    if (rest === undefined) continue;
    if (rest === 'unit') {
      for (const unit of dimension ? unitOffers(dimension, numberOf(typed), false) : [])
        if (!offers.has(unit.label)) offers.set(unit.label, unit);
      if (dimension !== 'ratio' && dimension !== 'number') continue;
    }
    const label = (rest === 'unit' ? (restOf(text.split(' '), typed, true) as string[]) : rest).join(' ');
    if (label === '' || offers.has(label)) continue;
    offers.set(label, {
      label,
      kind: CompletionItemKind.Text,
      doc,
      insert: withStops(label),
      snippet: true,
      filter: label,
    });
  }
  return [...offers.values()];
}

/** The words of a sentence behind those typed; `unit` where a number waits for its unit; nothing where another was begun. */
function restOf(
  words: readonly string[],
  typed: readonly Token[],
  bare = false,
): readonly string[] | 'unit' | undefined {
  let at = 0;
  for (let index = 0; index < typed.length; ) {
    const word = words[at];
    if (word === undefined) return undefined;
    if (word !== '…') {
      if (typed[index]!.text !== word) return undefined;
      at += 1;
      index += 1;
      continue;
    }
    if (typed[index]!.kind !== 'number' && typed[index]!.text !== 'unknown') return undefined;
    while (typed[index]?.kind === 'number') index += 1;
    at += 1;
    if (index === typed.length) return bare ? words.slice(at) : 'unit';
    // The unit, unless the sentence goes on without one.
    if (typed[index]!.text !== words[at]) index += 1;
  }
  return words.slice(at);
}

const numberOf = (typed: readonly Token[]): number => Number.parseFloat(typed.at(-1)?.text ?? '');

/** Each `…` becomes a stop that says nothing. */
function withStops(text: string): string {
  let stop = 0;
  return text.replace(/…/g, () => {
    stop += 1;
    return `\${${stop}}`;
  });
}
