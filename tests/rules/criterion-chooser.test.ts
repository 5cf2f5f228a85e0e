import { compareVessels, RULES, type Verdict } from '@tailshaft/drivetrain';
import { vesselSheetMarkdown } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { readExample, sheetInput } from '../sheet/sheet-of.js';
import { checkText } from '../support/check.js';
import { share } from '../support/share.js';

/** The catalogue and the spec of the pilot cutter as one text, so that lines can be taken out of it. */
const CUTTER = [
  ...['couplings', 'engines', 'gears', 'materials', 'motors'].map(name => `catalogue/${name}.shaft`),
  'pilot-cutter/ternhaven.shaft',
]
  .map(readExample)
  .join('\n')
  .replace('import "../catalogue"', '');

async function judged(text: string) {
  const checked = await checkText(text);
  return { checked, ...checked.check.vessels[0]! };
}

const of = (verdicts: readonly Verdict[], rule: string) =>
  verdicts.filter(one => one.rule === rule && one.criterionChosenBy).map(one => one.criterionChosenBy);

describe('who chose the criterion', () => {
  // A line of the criteria of the example, and the rule that it speaks to.
  it.each([
    ['gear torque margin at least 10 %', 'capacity/gear-input-torque'],
    ['tip clearance at least 15 %', 'propeller/tip-clearance'],
  ])('"%s" is the author’s while it stands in the spec', async (line, rule) => {
    expect(CUTTER).toContain(line);
    const chosen = of((await judged(CUTTER)).verdicts, rule);
    expect(new Set(chosen)).toEqual(new Set(['author']));
    const left = of((await judged(CUTTER.replace(line, ''))).verdicts, rule);
    expect(left).toEqual(chosen.map(() => 'default'));
  });

  it.each([
    ['bearing span margin at least 20 %', 'shafting/bearing-span'],
    ['overhang at most 1.5', 'shafting/overhang'],
    ['shaft diameter by small-craft formula factor 5.0', 'shafting/diameter'],
    ['ratio difference at most 0.5 %', 'ratio/unequal-sides'],
    ['propeller demand at least 80 %\npropeller demand at most 110 %', 'propeller/absorbed-power'],
  ])('"%s" written in takes the place of the default', async (line, rule) => {
    const before = of((await judged(CUTTER)).verdicts, rule);
    expect(before.length).toBeGreaterThan(0);
    expect(new Set(before)).toEqual(new Set(['default']));
    const after = of((await judged(CUTTER.replace('criteria {', `criteria {\n${line}`))).verdicts, rule);
    expect(new Set(after)).toEqual(new Set(['author']));
  });

  it.each([
    ['interface/weight-change', 'weight change at most 3 %  balance change at most 2 %'],
    ['shafting/length-stack', 'length difference at most 8 mm'],
    ['shafting/angle-stack', 'angle difference at most 1 deg'],
  ])('%s tells its default from "%s"', async (rule, line) => {
    const { passing } = RULES.find(one => one.id === rule)!.examples();
    const before = of((await judged(passing)).verdicts, rule);
    expect(before.length).toBeGreaterThan(0);
    expect(new Set(before)).toEqual(new Set(['default']));
    const text = passing.replace(/^( *)arrangement \w+/m, `$1criteria { ${line} }\n$&`);
    expect(text).not.toBe(passing);
    const after = of((await judged(text)).verdicts, rule);
    expect(after).toHaveLength(before.length);
    expect(new Set(after)).toEqual(new Set(['author']));
  });

  it('a rule that has one criterion only says nothing of it', async () => {
    const { verdicts } = await judged(CUTTER);
    const one = verdicts.find(({ rule }) => rule === 'rotation/propeller-hand')!;
    expect(one.criterion).toBe(RULES.find(rule => rule.id === one.rule)!.criterion);
    expect(one.criterionChosenBy).toBeUndefined();
  });

  it('no criterion is told to be a default by its wording alone', async () => {
    for (const rule of share(RULES, 20)) {
      for (const text of [rule.examples().passing, rule.examples().failing]) {
        const { check } = await checkText(text);
        const verdicts = [...check.vessels, ...check.entries].flatMap(one => one.verdicts);
        for (const one of verdicts) {
          if (/default/.test(one.criterion ?? ''))
            expect([one.rule, one.criterionChosenBy]).toEqual([one.rule, 'default']);
        }
      }
    }
  });

  it('is marked on the sheet, and listed among what nobody chose', async () => {
    const { checked } = await judged(CUTTER.replace('tip clearance at least 15 %', ''));
    const sheet = vesselSheetMarkdown(sheetInput(checked));
    const marked =
      'tip clearance at least 15 % of the diameter (common practice for motor craft) **[default]**';
    expect(sheet.replaceAll('\\', '')).toContain(marked);
    const listed = sheet.slice(sheet.indexOf('Default criteria, not chosen in the spec'));
    expect(listed).toContain('propeller/tip-clearance');
    expect(listed.slice(0, listed.indexOf('###'))).not.toContain('capacity/gear-input-torque');
  });

  it('is told in a comparison where another chooser moved the verdict', async () => {
    const line = 'gear torque margin at least 10 %';
    const strict = await judged(CUTTER.replace(line, 'gear torque margin at least 40 %'));
    const loose = await judged(CUTTER.replace(line, ''));
    const words = compareVessels(strict, loose)
      .changes.filter(one => one.kind === 'verdict' && one.rule === 'capacity/gear-input-torque')
      .map(one => one.words);
    expect(words.length).toBeGreaterThan(0);
    for (const one of words)
      expect(one).toMatch(/newly holds.*; judged by the default now, .*chooses none any more/);
  });
});
