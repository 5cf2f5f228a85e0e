import { join } from 'node:path';
import type { Verdict } from '@tailshaft/drivetrain';
import { galleryPath, gallerySpecs } from '@tailshaft/language/manual';
import { makePaper, PAPER_WORDS, type PaperWord, paperHtml, type SheetInput } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { belongsTo } from '../../packages/sheet/src/papers/belongs.js';
import { lastArrangements } from '../../packages/sheet/src/papers/proposals.js';
import { lineNames } from '../../packages/sheet/src/papers/sides.js';
import { checkFile } from '../support/check.js';
import { share } from '../support/share.js';
import { EXAMPLES, wordsIn } from './papers-of.js';
import { parsed } from './parsed.js';
import { sheetInput, sheetOfExample } from './sheet-of.js';

const root = join(import.meta.dirname, '..', '..');

/** Blocks that every paper has to hold besides what it is about. */
const ALWAYS = /Not assessed|Not checked/;

async function inputOf(path: string): Promise<SheetInput | undefined> {
  const checked = await checkFile(path);
  return checked.check.vessels.length > 0 ? sheetInput(checked) : undefined;
}

const isTold = (words: string, { rule }: Verdict) => words.includes(rule);
const alarming = ({ outcome }: Verdict) =>
  outcome === 'fails' || outcome === 'accepted' || outcome === 'cannot tell';

/** An order is of one line: where propellers are ordered, what concerns none of their lines stands in other papers. */
function concerns({ vessel }: SheetInput, word: PaperWord, { subject }: Verdict): boolean {
  const ordered = lastArrangements(vessel)
    .flatMap(one => one.lines)
    .filter(one => one.propeller && one.propeller.change !== 'retained');
  return (
    word !== 'propeller-order' ||
    ordered.length === 0 ||
    ordered.some(one => subject === one.path || subject.startsWith(`${one.path}.`))
  );
}

/** The first section of a paper; in an order of a propeller that of each order. */
const firstWords = (input: SheetInput, word: PaperWord) => wordsIn(makePaper(input, word).blocks.slice(0, 2));

describe('of the mistakes', () => {
  it.each(share(gallerySpecs(), 8).map(one => [one.code, join(root, galleryPath(one.code))] as const))(
    '%s: what fails stands first, and no paper loses what belongs to it',
    async (_, path) => {
      const input = await inputOf(path);
      if (!input) return;
      for (const word of ['summary', 'full'] as const) {
        const first = firstWords(input, word);
        for (const verdict of input.verdicts.filter(one => one.outcome === 'fails'))
          expect(isTold(first, verdict), `${word}: ${verdict.rule}`).toBe(true);
      }
      for (const word of PAPER_WORDS) {
        const words = wordsIn(makePaper(input, word).blocks);
        const lost = input.verdicts.filter(
          one => alarming(one) && belongsTo(word, one) && concerns(input, word, one) && !isTold(words, one),
        );
        expect(
          lost.map(one => one.rule),
          word,
        ).toEqual([]);
        expect(words, word).toMatch(ALWAYS);
      }
    },
  );
});

describe('of the examples', () => {
  const cases = share(
    EXAMPLES.flatMap(path => PAPER_WORDS.map(word => [path, word] as const)),
    9,
  );

  it.each(cases)(
    '%s: %s is a page without faults, with its title block and both units',
    async (path, word) => {
      const input = { ...(await sheetOfExample(path)), digest: 'ternhaven.shaft sha256 0123456789abcdef' };
      const paper = makePaper(input, word);
      const [head] = paper.blocks;
      expect(head?.block).toBe('terms');
      const title = wordsIn([head!]);
      for (const wanted of [
        new RegExp(`^Vessel: ${input.vessel.name}\\b`, 'm'),
        /^Project: /m,
        /^Drawing: /m,
        /^Revision: /m,
        /sha256/,
        /^Prepared by: /m,
        /^Approved by: /m,
      ])
        expect(title).toMatch(wanted);
      const words = wordsIn(paper.blocks);
      expect(words).toMatch(ALWAYS);
      expect(words).toMatch(/makers|makers of the parts/i);
      expect(words).toMatch(/signature/i);
      // A paper that has nothing to tell has no figures either.
      const empty = /nothing to compare it with|No propeller is ordered/.test(words);
      if (word !== 'trial-form' && word !== 'weights' && !empty) {
        expect(words).toMatch(/\d (mm|m|kW|N·m|kN·m|kg)\b/);
        expect(words).toMatch(/\d (in|ft|hp|lbf·ft|lb)\b/);
      }
      const page = parsed(paperHtml(paper));
      expect(page.errors).toEqual([]);
      const ids = page.elements.flatMap(one => one.attrs.filter(attribute => attribute.name === 'id'));
      expect(new Set(ids.map(one => one.value)).size).toBe(ids.length);
      expect(paperHtml(paper)).toContain('"Page " counter(page) " of " counter(pages)');
    },
  );

  it('folds a mirrored line to what differs', async () => {
    const input = await sheetOfExample('pilot-cutter/ternhaven.shaft');
    const words = wordsIn(makePaper(input, 'full').blocks);
    expect(words).toMatch(/Line Starboard: as Port, except/);
    expect(lineNames(input.vessel)).toEqual(['Port', 'Starboard']);
  });

  it('tells every mode of a line: to the owner, to the yard, and to the crew that tries it', async () => {
    const input = await sheetOfExample('hybrid-ferry/teasel.shaft');
    const modes = ['passage', 'harbour', 'charging', 'tide'];
    for (const word of ['summary', 'specification', 'full'] as const) {
      const words = wordsIn(makePaper(input, word).blocks);
      for (const mode of modes)
        expect(words, word).toMatch(new RegExp(`^Centre, ${mode} \\| (engine|motor)`, 'm'));
    }
    const trial = wordsIn(makePaper(input, 'trial-form').blocks);
    for (const mode of modes) {
      expect(trial).toContain(`Runs: Centre, ${mode}`);
      expect(trial).toMatch(new RegExp(`^Centre, ${mode}, wheelhouse \\| astern`, 'm'));
    }
    expect(trial).toMatch(/^Centre, harbour, wheelhouse \| ahead \| as the drive is set/m);
    expect(trial).toMatch(/^Motor speed, at most \| 2800 rpm/m);
    expect(trial).not.toContain('station 1');
  });
});
