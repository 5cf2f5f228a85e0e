import type { Vessel } from '@tailshaft/drivetrain';
import { type SheetInput, vesselSheetHtml, vesselSheetMarkdown } from '@tailshaft/sheet';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { times } from '../support/share.js';
import { attribute, parsed, wordsOf } from './parsed.js';
import { sheetOfExample } from './sheet-of.js';

/** Words that would do harm if they were taken for mark-up. */
const HOSTILE = fc
  .array(
    fc.oneof(
      fc.constantFrom(
        '<script>alert(1)</script>',
        '<img src=x onerror=alert(1)>',
        '"><svg onload=x>',
        "' onclick='x",
      ),
      fc.constantFrom(
        '</style>',
        '</title>',
        '<!--',
        '-->',
        ']]>',
        '&lt;',
        '&amp',
        '&#0;',
        '</table></main>',
      ),
      fc.constantFrom(
        '|',
        '`',
        '**',
        '[x](javascript:alert(1))',
        '\\',
        '\n# ',
        '\n\n- ',
        'https://example.invalid',
      ),
      fc.string({ unit: 'binary', maxLength: 12 }),
    ),
    { minLength: 1, maxLength: 5 },
  )
  .map(parts => parts.join(''));

/** Puts the words wherever the sheet prints what an author wrote. */
function spoiled(input: SheetInput, words: string): SheetInput {
  const swap = <T>(value: T, seen = new Map<object, object>()): T => {
    if (typeof value !== 'object' || value === null) return value;
    const had = seen.get(value);
    if (had) return had as T;
    const copy: Record<string, unknown> | unknown[] = Array.isArray(value) ? [] : {};
    seen.set(value, copy);
    for (const [key, inner] of Object.entries(value)) {
      const written = PRINTED.has(key) && typeof inner === 'string';
      (copy as Record<string, unknown>)[key] = written ? words : key === 'origin' ? inner : swap(inner, seen);
    }
    return copy as T;
  };
  const vessel: Vessel = swap(input.vessel);
  return {
    ...input,
    vessel,
    verdicts: input.verdicts.map(one => ({ ...one, message: words, criterion: words })),
    problems: [{ message: words, where: words }],
    placeText: () => words,
    placeKey: () => words,
    analysisOf: line => {
      const [arrangement, index] = input.vessel.arrangements
        .flatMap((one, at) =>
          vessel.arrangements[at]!.lines.map((other, row) => [other, one.lines[row]!] as const),
        )
        .find(([other]) => other === line)!;
      return arrangement && input.analysisOf(index);
    },
  };
}

const PRINTED = new Set(['title', 'doc', 'written', 'note', 'text', 'because', 'by', 'until', 'dated']);
const ALLOWED = new Set(
  (
    'html head meta title style body main header nav section footer h1 h2 h3 h4 h5 h6 p ul ol li a span strong code br ' +
    'button div table caption thead tbody tr th td figure figcaption details summary svg desc g path line circle ellipse rect text'
  ).split(' '),
);

it('whatever an author writes stays words', async () => {
  const input = await sheetOfExample('sport-boat/quickgrass.shaft');
  const honest = parsed(vesselSheetHtml(input)).elements.length;
  fc.assert(
    fc.property(HOSTILE, words => {
      const { errors, elements } = parsed(vesselSheetHtml(spoiled(input, words)));
      expect(errors).toEqual([]);
      for (const element of elements) {
        expect(ALLOWED.has(element.tagName), element.tagName).toBe(true);
        for (const { name } of element.attrs) expect(name).not.toMatch(/^on|^style$|^src$/);
        if (element.tagName === 'a') expect(attribute(element, 'href')).toMatch(/^#/);
      }
      expect(elements.length).toBeGreaterThan(honest / 2);
      const shown = words.replace(UNPRINTABLE, '\ufffd').replace(/\r\n?/g, '\n');
      expect(wordsOf(elements.find(one => one.tagName === 'h1')!)).toBe(shown);
    }),
    { numRuns: times(8, 60) },
  );
}, 240_000);

/** What HTML cannot hold at all. */
const UNPRINTABLE =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones that are replaced.
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]|\p{Cs}|\p{Noncharacter_Code_Point}/gu;

it('whatever an author writes stays words in Markdown', async () => {
  const input = await sheetOfExample('sport-boat/quickgrass.shaft');
  fc.assert(
    fc.property(HOSTILE, words => {
      const markdown = vesselSheetMarkdown(spoiled(input, words));
      expect(markdown.replaceAll('<br>', '')).not.toMatch(/<[a-z/!?]/i);
      expect(markdown).not.toMatch(/(?<!\\)\]\(|(?<!\\):\/\//);
      const headings = markdown.match(/^#{1,6} /gm)!.length;
      expect(headings).toBe(vesselSheetMarkdown(spoiled(input, 'plain')).match(/^#{1,6} /gm)!.length);
    }),
    { numRuns: times(8, 60) },
  );
}, 240_000);
