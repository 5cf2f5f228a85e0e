import type { Change } from '../change.js';
import type { Judged } from '../rejudge.js';
import { blocksOf, edited, factsOf } from '../written.js';
import { blockWords } from './names.js';

/** (e) Each fact told as hearsay, or assumed. */
export function* doubt({ text, check }: Judged): Generator<Change> {
  for (const [index, fact] of factsOf(check).entries()) {
    const end = fact.evidence?.end ?? fact.value.end;
    const mark = index % 2 === 0 ? '[hearsay]' : '[assumed]';
    yield {
      letter: 'e',
      what: `${mark} on ${fact.property} of ${blockWords(fact)} (${index})`,
      about: fact.property,
      text: edited(text, { start: fact.value.end, end, text: ` ${mark}` }),
    };
  }
  for (const [index, one] of blocksOf(check).entries()) {
    for (const { row, head } of one.block.nested) {
      if (!head?.value || head.evidence) continue;
      const { end } = head.value;
      yield {
        letter: 'e',
        what: `[hearsay] on the head of ${row.words} at ${end} of ${blockWords(one)} (${index})`,
        about: row.words,
        text: edited(text, { start: end, end, text: ' [hearsay]' }),
      };
    }
  }
}
