import { silentTopics } from '@tailshaft/drivetrain';
import { chartsFile, picturesFile, type SheetInput, sheetPanel } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { attribute, hasClass, parsed, within, wordsOf } from './parsed.js';
import { sheetOfExample } from './sheet-of.js';

const EXAMPLE = 'pilot-cutter/ternhaven.shaft';

/** As a host asks for it: every place has a key. */
async function panelInput(): Promise<SheetInput> {
  return { ...(await sheetOfExample(EXAMPLE)), placeKey: origin => JSON.stringify(origin, ['uri', 'start']) };
}

const tips = (html: string) =>
  parsed(html)
    .elements.filter(one => hasClass(one, 'turn-tip'))
    .map(one => attribute(one, 'transform')!);

describe('the panel', () => {
  it('shows what is proposed, at rated power, lever ahead, unless something else is chosen', async () => {
    const { choices } = sheetPanel(await panelInput(), {});
    expect(choices.arrangements).toEqual(['existing', 'proposed']);
    expect(choices.chosen).toEqual({
      arrangement: 'proposed',
      beside: '',
      line: '',
      point: 'rated power',
      direction: 'ahead',
    });
  });

  it('counts what nothing is declared of, in the lines that are shown', async () => {
    const found = (line: string) =>
      /(\d+) not assessed/.exec(sheetPanel(input, { arrangement: 'proposed', line }).html)?.[1];
    const input = await panelInput();
    const all = silentTopics(input.vessel, input.verdicts);
    expect(all.length).toBeGreaterThan(5);
    expect(found('')).toBe(`${all.length}`);
    expect(sheetPanel(input, { arrangement: 'existing' }).html).not.toContain('not assessed');
    expect(sheetPanel(input, { arrangement: 'proposed' }).html).toContain(
      'data-rule="shafting/mount-rating"',
    );
  });

  it('falls back where a name is gone from the spec', async () => {
    const { choices } = sheetPanel(await panelInput(), {
      arrangement: 'gone',
      beside: 'gone',
      line: 'gone',
      point: 'gone',
    });
    expect(choices.chosen.arrangement).toBe('proposed');
    expect([choices.chosen.beside, choices.chosen.line]).toEqual(['', '']);
  });

  it('turns every arrow behind the gear round for the lever astern, and none in front of it', async () => {
    const input = await panelInput();
    const [ahead, astern] = [
      tips(sheetPanel(input, {}).html),
      tips(sheetPanel(input, { direction: 'astern' }).html),
    ];
    expect(astern).toHaveLength(ahead.length);
    const same = ahead.filter((one, index) => one === astern[index]);
    // Two lines: the engines turn on, while propellers from aft, gears, shafts and propellers from above reverse.
    expect(same).toHaveLength(2);
  });

  it('has a keyboard stop with a name for every part, and one for every check', async () => {
    const { html } = sheetPanel(await panelInput(), {});
    const page = parsed(html);
    const parts = page.elements.filter(one => attribute(one, 'data-part') !== undefined);
    expect(parts.length).toBeGreaterThan(9);
    for (const part of parts) {
      expect([attribute(part, 'role'), attribute(part, 'tabindex')]).toEqual(['button', '0']);
      expect(`${attribute(part, 'aria-label') ?? ''}${wordsOf(part)}`).not.toBe('');
    }
    const buttons = page.elements.filter(one => hasClass(one, 'go'));
    expect(buttons.length).toBeGreaterThan(20);
    expect(buttons.every(one => attribute(one, 'data-place') !== undefined)).toBe(true);
  });

  it('says what leads from one arrangement to the other', async () => {
    const { html } = sheetPanel(await panelInput(), { arrangement: 'proposed', beside: 'existing' });
    expect(html).toContain('From existing to proposed');
    expect(
      within(parsed(html).elements.find(one => hasClass(one, 'beside'))!).filter(one =>
        hasClass(one, 'arrangement'),
      ),
    ).toHaveLength(2);
  });

  it('holds no word of the author as mark-up', async () => {
    const input = await panelInput();
    const words = '"><script>alert(1)</script>';
    const spoiled: SheetInput = {
      ...input,
      vessel: { ...input.vessel, title: words },
      verdicts: input.verdicts.map(one => ({
        ...one,
        message: words,
        criterion: words,
        subject: one.subject,
      })),
      placeKey: () => words,
    };
    const page = parsed(sheetPanel(spoiled, {}).html);
    expect(page.elements.filter(one => one.tagName === 'script')).toEqual([]);
  });
});

it('the picture file needs nothing else: no script, no variable left open, no address but that of SVG', async () => {
  const { svg, width, height } = picturesFile(await panelInput(), {})!;
  expect(width).toBeGreaterThan(600);
  expect(height).toBeGreaterThan(400);
  expect(svg).not.toMatch(/<script|data-place|href=/);
  const used = new Set([...svg.matchAll(/var\((--[a-z]+)\)/g)].map(one => one[1]));
  for (const name of used) expect(svg).toContain(`${name}:`);
  expect(new Set(svg.match(/https?:[^"]*/g))).toEqual(new Set(['http://www.w3.org/2000/svg']));
});

it('the charts are one picture too, each of them whole and none over another', async () => {
  const { svg, width, height } = chartsFile(await panelInput(), {})!;
  expect(svg).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg"/);
  const places = [...svg.matchAll(/<svg x="([\d.]+)" y="([\d.]+)" viewBox="0 0 ([\d.]+) ([\d.]+)"/g)].map(
    one => one.slice(1, 5).map(Number),
  );
  expect(places.length).toBeGreaterThan(2);
  places.forEach(([x, y, w, h], index) => {
    expect(x! + w!).toBeLessThanOrEqual(width);
    expect(y! + h!).toBeLessThanOrEqual(height);
    const next = places[index + 1];
    if (next) expect(next[1]).toBeGreaterThanOrEqual(y! + h!);
  });
  expect(svg).toContain('Screening, not certification.');
  expect(svg).not.toContain('data-place');
});
