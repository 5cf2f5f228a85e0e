import { MISTAKES, RULES, rulesAgainst, rulesReference } from '@tailshaft/drivetrain';
import { vesselSheetMarkdown } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { sheetOfExample } from '../sheet/sheet-of.js';
import { checkText } from '../support/check.js';

/** How many mistakes each subject of the catalogue counts. */
const COUNTS = { R: 18, T: 20, P: 15, L: 23, I: 10, U: 13, V: 8 };
const numbers = Object.entries(COUNTS).flatMap(([letter, count]) =>
  Array.from({ length: count }, (_, index) => `${letter}${String(index + 1).padStart(2, '0')}`),
);

it('has every number of the catalogue once, in order', () => {
  expect(MISTAKES.map(one => one.number)).toEqual(numbers);
  expect(new Set(MISTAKES.map(one => one.title)).size).toBe(107);
});

it('has a mistake for every number that a rule names', () => {
  expect(RULES.flatMap(rule => rule.mistakes).filter(one => !numbers.includes(one))).toEqual([]);
});

describe.each(MISTAKES.map(one => [one.number, one.title, one] as const))('%s %s', (_, __, mistake) => {
  it('is held by a rule that finds it in its example, or is put to a person', async () => {
    const rules = rulesAgainst(mistake);
    if (rules.length === 0) {
      expect(mistake.toSee?.length).toBeGreaterThan(40);
      return;
    }
    expect(mistake.toSee, 'a rule holds it').toBeUndefined();
    for (const rule of rules) {
      const outcomes = async (text: string) =>
        (await checkText(text)).findings.filter(one => one.code === rule.id).map(one => one.verdict?.outcome);
      expect(await outcomes(rule.examples().failing), `${rule.id} finds it`).toContain('fails');
      expect(await outcomes(rule.examples().passing), `${rule.id} is silent without it`).toEqual([]);
      if (rule.examples().cannotTell.includes('{'))
        expect(await outcomes(rule.examples().cannotTell), `${rule.id} says when it cannot tell`).toContain(
          'cannot tell',
        );
    }
  });
});

it('is printed whole in the reference', () => {
  const rows = rulesReference().match(/^\| [RTPLIUV]\d\d \|.*$/gm) ?? [];
  expect(rows.map(row => row.slice(2, 5))).toEqual(numbers);
  const empty = rows.filter(row => !/\[\w+\/[\w-]+\]\(#[\w-]+\)|checklist: \S/.test(row));
  expect(empty).toEqual([]);
});

it('is on the checklist of the sheet where no rule holds it', async () => {
  const sheet = vesselSheetMarkdown(await sheetOfExample('workboat/saltmarsh.shaft'));
  const boxes = sheet.match(/^- \[ \] .*\([RTPLIUV]\d\d\)$/gm) ?? [];
  expect(boxes.map(box => box.slice(-4, -1))).toEqual([
    'U10',
    ...['V01', 'V02', 'V03', 'V04', 'V05', 'V06', 'V07', 'V08'],
  ]);
});
