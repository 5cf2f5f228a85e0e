import type { Origin } from '@tailshaft/mechanics';
import {
  blockOf,
  PLACE_VOCABULARY,
  VESSEL_VOCABULARY,
  type Vocabulary,
  wordsOf,
} from '@tailshaft/vocabulary';
import type { Context } from '../../judge/context.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { proposalsOf } from '../../model/as-found.js';
import type { Fact } from '../../model/fact.js';
import { nameOf } from '../../model/part.js';
import { type Apart, each, KeptBy } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';

const INFO: RuleInfo = {
  id: 'paper/sister-vessel',
  title: 'No value is taken from a sister vessel',
  mistakes: ['U11'],
  severity: 'warning',
  criterion: 'evidence of every fact of the hull, the duty and the proposed lines',
  source: {
    title: 'values from a sister vessel are measured before anything is built to them',
    confidence: 'common practice',
  },
  manual:
    'Sister vessels leave the yard alike and differ from the first repair onwards: another shaft, another ' +
    'gear, a bed that was moved. A value copied from one is a starting point. Checks use it and the sheet ' +
    'marks it; before anything is ordered, measure it on this vessel and write how: `[measured 2026-01-14]`, ' +
    '`[plate]`.',
  caution: 'A drawing made for the class of vessels is no better evidence than the sister vessel.',
  noFigure: 'a record or its dates',
  judgesEvidence: true,
  standsWithout: 'anything',
  curesRecord: true,
  noCure: 'Only a measurement on this vessel settles it.',
  examples: examples(() => ({
    failing: changed(SINGLE_LINE, ['diameter 65 mm [drawing]', 'diameter 65 mm [sister vessel]']),
    passing: changed(SINGLE_LINE, ['diameter 65 mm [drawing]', 'diameter 65 mm [measured 2026-01-14]']),
    cannotTell: 'The rule reads the evidence that is written beside a fact; it can always tell.',
  })),
};

export const sisterVessel: Rule = { ...INFO, scope: 'vessel', check };

interface Stated {
  readonly what: string;
  readonly of: string;
  readonly fact: Fact<unknown>;
}

function check({ vessel }: Context): Verdict | Apart<Verdict> {
  const say = sayFor(INFO, vessel.name);
  const found = new Map<Origin, Stated>();
  const look = (block: object | undefined, of: string, vocabulary: Vocabulary | undefined) => {
    if (block)
      for (const [what, fact] of copiedIn(block, vocabulary)) {
        if (!found.has(fact.origin)) found.set(fact.origin, { what, of, fact });
      }
  };
  look(vessel.hull, `the hull of ${vessel.name}`, VESSEL_VOCABULARY.hull);
  look(vessel.duty, `the duty of ${vessel.name}`, VESSEL_VOCABULARY.duty);
  for (const arrangement of proposalsOf(vessel)) {
    for (const line of arrangement.lines)
      for (const part of line.chain)
        look(part, `${nameOf(part)} of ${line.path}`, PLACE_VOCABULARY[part.role]);
  }
  if (found.size === 0)
    return say.holds({ place: vessel.nameOrigin, message: 'No value comes from a sister vessel.' });
  return each(found.values(), ({ what, of, fact }) =>
    say.fails({
      place: fact.origin,
      message: `The ${what} of ${of}, ${fact.written}, comes from a sister vessel, not from this one. Measure it on this vessel and state the evidence before ordering anything to it.`,
    }),
  );
}

function copiedIn(block: object, vocabulary: Vocabulary | undefined) {
  return copied.once(block, () => [...copiedFacts(block, vocabulary)]);
}

const copied = new KeptBy<object>();

/** Facts of a block and of the blocks in it that a sister vessel lent, with their words. */
function* copiedFacts(
  block: object,
  vocabulary: Vocabulary | undefined,
  before = '',
): Generator<[what: string, fact: Fact<unknown>]> {
  for (const [field, value] of Object.entries(block)) {
    if (typeof value !== 'object' || value === null || ELSEWHERE.has(field)) continue;
    if (isFact(value)) {
      if (value.evidence?.kind === 'sister vessel') yield [before + wordsOf(vocabulary, field), value];
    } else if (Array.isArray(value)) {
      for (const one of value)
        if (isFact(one)) yield* copiedFacts({ [field]: one }, vocabulary, before);
        else if (typeof one === 'object' && one !== null)
          yield* copiedFacts(one, blockOf(vocabulary, field)?.block, `${wordsOf(vocabulary, field)} `);
    } else if ('origin' in value && !('si' in value))
      yield* copiedFacts(value, blockOf(vocabulary, field)?.block, `${wordsOf(vocabulary, field)} `);
  }
}

/** What is not the part's own, or is written a second time by another field. */
const ELSEWHERE = new Set(['entry', 'origin', 'nameOrigin', 'source', 'variant']);

function isFact(value: object): value is Fact<unknown> {
  return 'written' in value && 'value' in value && 'origin' in value;
}
