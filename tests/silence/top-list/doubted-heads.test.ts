import { ENTRY_VOCABULARY, PLACE_VOCABULARY, type Vocabulary } from '@tailshaft/vocabulary';
import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { writtenSpecs } from '../base-specs.js';
import { Bench } from '../rejudge.js';
import { blocksOf, edited } from '../written.js';

/** Of each kind of block in a block that has a head, `rated medium`, `clutch A`, one that a passing example writes with facts. */
async function headed() {
  const specs = writtenSpecs().filter(one => one.name.endsWith(' passing'));
  const kinds = new Set(
    Object.values(ENTRY_VOCABULARY).concat(Object.values(PLACE_VOCABULARY)).flatMap(headsOf),
  );
  const found: { name: string; text: string; at: number; facts: readonly number[] }[] = [];
  for (const words of kinds) {
    const spec = specs.find(({ text }) => new RegExp(`\\n *${words} [\\w.:-]+[^\\n[]*\\w`).test(text));
    if (!spec) continue;
    const { check } = await new Bench().judge(spec.text);
    for (const { block } of blocksOf(check))
      for (const { row, head, host } of block.nested) {
        const facts = host.reading?.facts ?? [];
        const plain = facts.flatMap(one => (one.value && !one.evidence ? [one.value.end] : []));
        const all = plain.length > 0 && plain.length === facts.length && host.reading!.nested.length === 0;
        const name = `${words} in ${spec.name}`;
        if (row.words === words && head?.value && all && !found.some(one => one.name === name))
          found.push({ name, text: spec.text, at: head.value.end, facts: plain });
      }
  }
  return found;
}

function headsOf({ blocks }: Vocabulary): string[] {
  return blocks.flatMap(one => [...(one.head ? [one.words] : []), ...headsOf(one.block)]);
}

const HEARSAY = ' [hearsay]';
const marked = (text: string, places: readonly number[]) =>
  edited(text, ...places.map(at => ({ start: at, end: at, text: HEARSAY })));

async function saidOf(text: string) {
  const { told, refused } = await new Bench().judge(text);
  return [...refused, ...told.map(({ rule, subject, outcome }) => `${rule} ${subject} ${outcome}`).sort()];
}

describe('the evidence of a block', () => {
  it('is that of all that stands under it: a doubted head is like doubted facts', async () => {
    const all = await headed();
    let withheld = 0;
    expect(all.length).toBeGreaterThan(6);
    for (const { name, text, at, facts } of all) {
      const [plain, byHead, byFacts] = [
        await saidOf(text),
        await saidOf(marked(text, [at])),
        await saidOf(marked(text, facts)),
      ];
      // The head itself is a fact as well, so that it may withhold more.
      const holds = (said: readonly string[]) => said.filter(one => one.endsWith(' holds'));
      expect(holds(byFacts), `${name} at ${at}`).toEqual(expect.arrayContaining(holds(byHead)));
      if (holds(byHead).length < holds(plain).length) withheld += 1;
    }
    expect(withheld).toBeGreaterThan(all.length / 4);
  });

  it('gives way to what a fact says of itself', async () => {
    const text = (mark: string) =>
      SINGLE_LINE.replace(/(rated medium)( \S+ kW\/rpm)/g, `$1 [hearsay]$2${mark}`);
    const gear = (said: readonly string[]) =>
      said.filter(one => one.startsWith('capacity/gear-input-torque'));
    expect(gear(await saidOf(text('')))).toEqual([expect.stringContaining('cannot tell')]);
    expect(gear(await saidOf(text(' [sheet]')))).toEqual([expect.stringContaining('holds')]);
  });
});
