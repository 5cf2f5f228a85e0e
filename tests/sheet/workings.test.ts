import { RULES } from '@tailshaft/drivetrain';
import { type SheetInput, vesselSheetHtml } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';
import { exampleSpecs } from '../support/examples.js';
import { share } from '../support/share.js';
import { attribute, type Element, hasClass, parsed, within, wordsOf } from './parsed.js';
import { sheetInput, sheetOfExample } from './sheet-of.js';

interface Working {
  readonly lines: readonly Element[];
}

/** Workings by number, as printed: a paragraph with the anchor, then the list that belongs to it. */
function workingsOf(input: SheetInput): Map<string, Working> {
  const { elements } = parsed(vesselSheetHtml(input));
  const workings = new Map<string, Working>();
  for (const details of elements.filter(one => one.tagName === 'details')) {
    const parts = details.childNodes.filter((one): one is Element => 'tagName' in one);
    for (const [index, part] of parts.entries()) {
      const anchor = within(part).find(one => hasClass(one, 'anchor'));
      if (part.tagName === 'p' && anchor) {
        const lines = within(parts[index + 1]!).filter(one => one.tagName === 'li');
        workings.set(attribute(anchor, 'id')!, { lines });
      }
    }
  }
  return workings;
}

/** Every input ends in a line of the spec, in an assumption, or in another working that does. */
function everyInputIsTraced(input: SheetInput): number {
  const workings = workingsOf(input);
  const done = new Set<string>();
  const follow = (id: string, path: readonly string[]) => {
    expect(path, 'a working below itself').not.toContain(id);
    if (done.has(id)) return;
    done.add(id);
    const working = workings.get(id);
    expect(working, id).toBeDefined();
    const [formula, ...rest] = working!.lines;
    expect(wordsOf(formula!)).toMatch(/=/);
    expect(
      rest.filter(one => wordsOf(one).startsWith('Source: ')),
      `source of ${id}`,
    ).toHaveLength(1);
    for (const line of rest.filter(one => within(one)[0]?.tagName === 'code')) {
      const parts = within(line);
      const reference = parts.find(one => hasClass(one, 'reference'));
      const placed = parts.some(one => hasClass(one, 'place')) || wordsOf(line).includes('assumed: ');
      expect(reference !== undefined || placed, `${id}: ${wordsOf(line)}`).toBe(true);
      if (reference) follow(attribute(reference, 'href')!.slice(1), [...path, id]);
    }
  };
  for (const id of workings.keys()) follow(id, []);
  return workings.size;
}

describe('every working reaches declared lines or assumptions', () => {
  it.each(share(exampleSpecs, 5))('%s', async path => {
    expect(everyInputIsTraced(await sheetOfExample(path))).toBeGreaterThan(10);
  });

  it.each(
    share(
      RULES.filter(rule => /^vessel /m.test(rule.examples().failing)).map(rule => [rule.id, rule] as const),
      15,
    ),
  )('the failing example of %s', async (_, rule) => {
    const checked = await checkText(rule.examples().failing);
    if (checked.check.vessels.length > 0) everyInputIsTraced(sheetInput(checked));
  });
});

it('prints the formula with the numbers in it', async () => {
  const input = await sheetOfExample('workboat/saltmarsh.shaft');
  const lines = [...workingsOf(input).values()].map(one => wordsOf(one.lines[0]!));
  // 84 kW at 2200 rpm: 84 000 / (2200 × 2π / 60) = 364.6 N·m
  expect(lines).toContain('T = P / ω T = 84 kW / 2200 rpm = 364.6 N·m');
});

it('stands open on request', async () => {
  const input = await sheetOfExample('workboat/saltmarsh.shaft');
  const open = (html: string) =>
    parsed(html).elements.filter(one => attribute(one, 'open') !== undefined).length;
  expect(open(vesselSheetHtml(input))).toBe(0);
  expect(open(vesselSheetHtml(input, { open: true }))).toBeGreaterThan(0);
});
