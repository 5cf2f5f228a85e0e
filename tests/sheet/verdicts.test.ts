import { RULES } from '@tailshaft/drivetrain';
import { type SheetInput, vesselSheetHtml, vesselSheetMarkdown } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';
import { exampleSpecs } from '../support/examples.js';
import { share } from '../support/share.js';
import { parsed, tableRows, wordsOf } from './parsed.js';
import { sheetInput, sheetOfExample } from './sheet-of.js';

const clean = (text: string) => text.replace(/\s+/g, ' ').trim();

function everyVerdictShown(input: SheetInput): void {
  const html = vesselSheetHtml(input);
  const page = parsed(html);
  expect(page.errors).toEqual([]);
  const rows = page.elements
    .filter(one => one.tagName === 'tr')
    .map(one => clean(one.childNodes.map(wordsOf).join(' ')));
  for (const verdict of input.verdicts) {
    const shown = rows.find(
      row =>
        row.includes(verdict.rule) &&
        row.includes(clean(verdict.message)) &&
        row.includes(` ${verdict.outcome}`),
    );
    expect(shown, `${verdict.outcome}: ${verdict.rule}: ${verdict.message}`).toBeDefined();
  }
  expect(vesselSheetMarkdown(input)).toContain('## Not checked');
}

describe('every verdict appears', () => {
  it.each(share(exampleSpecs, 3))('%s', async path => {
    const input = await sheetOfExample(path);
    expect(input.verdicts.length).toBeGreaterThan(8);
    everyVerdictShown(input);
  });

  it.each(
    share(
      RULES.flatMap(rule =>
        (['failing', 'cannotTell'] as const)
          .filter(kind => /^vessel /m.test(rule.examples()[kind]))
          .map(kind => [rule.id, kind, rule.examples()[kind]] as const),
      ),
      20,
    ),
  )('%s, %s', async (_, __, text) => {
    const checked = await checkText(text);
    if (checked.check.vessels.length > 0) everyVerdictShown(sheetInput(checked));
  });
});

it('names every missing datum once, with where to write it and the checks that wait', async () => {
  const rule = RULES.find(one => one.id === 'rotation/propeller-hand')!;
  const input = sheetInput(await checkText(rule.examples().cannotTell));
  const rows = tableRows(parsed(vesselSheetHtml(input)), 'Missing data, the most needed first');
  const missing = input.verdicts.flatMap(one => one.missing);
  expect(missing.length).toBeGreaterThan(0);
  for (const gap of missing) {
    const row = rows.find(one => one.startsWith(`${gap.what} | `));
    expect(row, gap.what).toMatch(/\| .+ \| .+:\d+ \| .*rotation\/propeller-hand/);
  }
  expect(new Set(rows).size).toBe(rows.length);
});

it('says it loudly when nothing was checked', async () => {
  const input = await sheetOfExample('workboat/saltmarsh.shaft');
  const words = parsed(vesselSheetHtml({ ...input, verdicts: [] })).elements.map(wordsOf);
  expect(words).toContain('No check was made: this sheet judges nothing.');
});

it('puts problems of the text first', async () => {
  const input = await sheetOfExample('workboat/saltmarsh.shaft');
  const problem = { message: 'I do not know the unit "fathom".', where: 'saltmarsh.shaft:9' };
  const html = vesselSheetHtml({ ...input, problems: [problem] });
  expect(html.indexOf('1 problem in the text')).toBeLessThan(html.indexOf('>Summary</h2>'));
  expect(html).toContain('I do not know the unit &quot;fathom&quot;.');
  expect(html).toContain('saltmarsh.shaft:9');
});
