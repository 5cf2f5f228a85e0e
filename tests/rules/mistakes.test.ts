import { MISTAKES, RULES, rulesAgainst } from '@tailshaft/drivetrain';
import { rulesIndex } from '@tailshaft/language/manual';
import { vesselSheetMarkdown } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { sheetOfExample } from '../sheet/sheet-of.js';
import { checkText } from '../support/check.js';

/** Subjects in the order of the catalogue; each counts its mistakes from 1 on. */
const SUBJECTS = 'RTPLIUV';
const numbers = MISTAKES.map(one => one.number);

it('counts the mistakes of each subject from 1 on without a gap, the subjects in their order', () => {
  const counted = [...SUBJECTS].flatMap(letter =>
    numbers
      .filter(one => one.startsWith(letter))
      .map((_, index) => `${letter}${String(index + 1).padStart(2, '0')}`),
  );
  expect(numbers).toEqual(counted);
  expect(new Set(MISTAKES.map(one => one.title)).size).toBe(MISTAKES.length);
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
  const rows = rulesIndex().match(/^\| <a id="\w+"><\/a>[RTPLIUV]\d\d \|.*$/gm) ?? [];
  expect(rows.map(row => /[A-Z]\d\d/.exec(row)![0])).toEqual(numbers);
  const empty = rows.filter(row => !/\[\w+\/[\w-]+\]\(manual\/[\w/-]+\.md\)|checklist: \S/.test(row));
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
