import { findRule } from '@tailshaft/drivetrain';
import { vesselSheetMarkdown } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { sheetOfExample, sheetOfText } from './sheet-of.js';

/** The table of requirements as it stands on the sheet. */
function rows(sheet: string): string[] {
  const from = sheet.indexOf('## Requirements');
  return sheet
    .slice(from, sheet.indexOf('\n## ', from + 3))
    .split('\n')
    .filter(line => line.startsWith('| '))
    .slice(2);
}

describe('requirements on the sheet', () => {
  it('shows for each of the example its own verdicts, and none of another', async () => {
    const [turn, fast, slow] = rows(
      vesselSheetMarkdown(await sheetOfExample('pilot-cutter/ternhaven.shaft')),
    );
    expect(turn).toMatch(
      /^\| propellers turn outward .*✓ holds rotation\/turning-requirement \(proposed\) \|/,
    );
    expect(turn).not.toContain('trace/');
    expect(fast).toContain('trace/requirement-met (proposed)');
    expect(slow!.match(/holds speed\/idle-in-gear \(proposed\.(Port|Starboard)\)/g)).toHaveLength(2);
    // Where it is verified: the declaration that the check judges.
    expect(slow!.replaceAll('\\', '')).toMatch(/idle-in-gear \(proposed\.Port\)\W*ternhaven\.shaft:\d+/);
  });

  it('shows one that waits for the same datum as another finding', async () => {
    const text = findRule('rotation/turning-requirement')!
      .examples()
      .passing.replace('ahead clutch A', 'ahead clutch unknown');
    const input = await sheetOfText(text);
    const [verdict] = input.verdicts.filter(one => one.rule === 'rotation/turning-requirement');
    expect(verdict?.outcome).toBe('cannot tell');
    const [row] = rows(vesselSheetMarkdown(input));
    expect(row).toContain('? cannot tell rotation/turning-requirement (proposed)');
  });

  it('shows one that was folded, and under what', async () => {
    const text = findRule('trace/requirement-met')!.examples().cannotTell;
    const input = await sheetOfText(text);
    const verdict = input.verdicts.find(one => one.answers !== undefined)!;
    const above = { ...input.verdicts[0]!, folds: [verdict] };
    const folded = { ...input, verdicts: [above, ...input.verdicts.filter(one => one !== verdict).slice(1)] };
    const [row] = rows(vesselSheetMarkdown(folded));
    expect(row).toContain(`? cannot tell trace/requirement-met (proposed.Centre)`);
    expect(row).toContain(`reported under ${above.rule}`);
  });

  it('says what verifies one that has nothing to judge', async () => {
    const text = `vessel Ternhaven {\n  require speed at most 5 kn at idle ahead\n  require noise at most 72 percent\n}\n`;
    const [idle, noise] = rows(vesselSheetMarkdown(await sheetOfText(text)));
    expect(idle).not.toContain('not answered');
    expect(noise).toContain('trace/requirement-unverified');
  });
});
