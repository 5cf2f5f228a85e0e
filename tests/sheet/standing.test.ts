import { RULES } from '@tailshaft/drivetrain';
import { vesselSheetHtml, vesselSheetMarkdown } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';
import { exampleSpecs } from '../support/examples.js';
import { share } from '../support/share.js';
import { attribute, hasClass, parsed, within, wordsOf } from './parsed.js';
import { sheetInput, sheetOfExample, sheetOfText } from './sheet-of.js';

const SPECS = RULES.flatMap(rule =>
  (['failing', 'passing', 'cannotTell'] as const)
    .filter(kind => /^vessel /m.test(rule.examples()[kind]))
    .map(kind => [rule.id, kind, rule.examples()[kind]] as const),
);

const clean = (text: string) => text.replace(/\s+/g, ' ').trim();

/** Words of the head of the page, where a reader begins. */
function headOf(html: string): { words: string; standing: string } {
  const { elements } = parsed(html);
  const head = elements.find(one => one.tagName === 'header')!;
  const marked = within(head).find(one => attribute(one, 'id') === 'standing')!;
  const is = ['fails', 'cannot-tell', 'holds'].filter(one => hasClass(marked, `is-${one}`));
  return { words: clean(wordsOf(marked)), standing: is.join(' ') };
}

describe('the head of the sheet says how the vessel stands', () => {
  it.each(share(SPECS, 20))('%s, %s', async (_, __, text) => {
    const checked = await checkText(text);
    if (checked.check.vessels.length === 0) return;
    const input = sheetInput(checked);
    const { words, standing } = headOf(vesselSheetHtml(input));
    const failing = input.verdicts.filter(one => one.outcome === 'fails' && !one.asFound);
    if (failing.length > 0) {
      expect(standing).toBe('fails');
      expect(words).toContain(`fails ${failing.length} check`);
      // The gravest stands first, in its own words; none of the worst is left to a later page.
      const errors = input.failures.filter(one => one.verdict.severity === 'error' && !one.verdict.asFound);
      for (const one of errors.slice(0, 4)) expect(words).toContain(clean(one.message));
      expect(words.indexOf('fails')).toBeLessThan(words.indexOf('Not assessed') >>> 0);
    } else expect(standing).not.toBe('fails');
    const open = input.verdicts.filter(one => one.outcome === 'cannot tell' && !one.asFound);
    if (open.length > 0) expect(words).toMatch(new RegExp(`cannot tell ${open.length} check`));
    for (const one of input.verdicts.filter(one => one.outcome === 'accepted').slice(0, 4))
      expect(words).toContain(`${one.rule} of ${one.subject}`);
    if (standing === 'holds') expect(open.length + failing.length + input.problems.length).toBe(0);
  });

  it.each(share(exampleSpecs, 3))('%s', async path => {
    expect(headOf(vesselSheetHtml(await sheetOfExample(path))).standing).toBe('holds');
  });
});

it('names who accepted a failure, and the first words of the Markdown say the same', async () => {
  const rule = RULES.find(one => one.id === 'shafting/span-guide')!;
  const failing = rule.examples().failing;
  const accepted = failing.replace(
    /\n\}\s*$/,
    '\n  accept shafting/span-guide on Centre because "whirling criterion holds" by "class surveyor" dated 2026-02-01 until 2026-12-31\n}\n',
  );
  expect(accepted).not.toBe(failing);
  const input = await sheetOfText(accepted);
  expect(input.verdicts.some(one => one.outcome === 'accepted')).toBe(true);
  expect(headOf(vesselSheetHtml(input)).words).toMatch(
    /accepted \d failures?: shafting\/span-guide of \S+, by class surveyor until 2026-12-31/,
  );
  const markdown = vesselSheetMarkdown(input);
  expect(markdown.indexOf('by class surveyor')).toBeLessThan(markdown.indexOf('## Not checked'));
});
