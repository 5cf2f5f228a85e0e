import { vesselSheetHtml } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { attribute, type Element, hasClass, type Parsed, parsed, within, wordsOf } from './parsed.js';
import { readExample, sheetOfExample, sheetOfText } from './sheet-of.js';

function drawing(page: Parsed, title: string): Element {
  return page.elements.find(
    one =>
      one.tagName === 'svg' && within(one).some(two => two.tagName === 'title' && wordsOf(two) === title),
  )!;
}

const number = (element: Element, name: string) => Number(attribute(element, name));

/** Place and direction of the arrow tips below an element. */
function tips(element: Element) {
  return within(element)
    .filter(one => hasClass(one, 'turn-tip'))
    .map(one =>
      attribute(one, 'transform')!
        .match(/translate\((\S+) (\S+)\) rotate\((\S+)\)/)!
        .slice(1)
        .map(Number),
    )
    .map(([x, y, angle]) => ({ x: x!, y: y!, angle: angle! }));
}

describe('seen from aft', () => {
  it('port is on the left and turns the way its arrow shows', async () => {
    const page = parsed(vesselSheetHtml(await sheetOfExample('pilot-cutter/ternhaven.shaft')));
    const svg = drawing(page, 'proposed: seen from aft, looking forward');
    const lines = within(svg).filter(one => one.tagName === 'g');
    expect(
      lines.map(one =>
        within(one)
          .filter(two => two.tagName === 'text')
          .map(wordsOf),
      ),
    ).toEqual([
      ['Port', 'left-hand propeller', 'counter-clockwise ahead', 'outward-turning'],
      ['Starboard', 'right-hand propeller', 'clockwise ahead', 'outward-turning'],
    ]);
    const discs = lines.map(line => within(line).find(one => hasClass(one, 'disc'))!);
    expect(number(discs[0]!, 'cx')).toBeLessThan(number(discs[1]!, 'cx'));
    // Over the top of the disc: to the left is counter-clockwise, to the right clockwise.
    expect(tips(lines[0]!)[0]!.x).toBeLessThan(number(discs[0]!, 'cx'));
    expect(tips(lines[1]!)[0]!.x).toBeGreaterThan(number(discs[1]!, 'cx'));
  });

  it('marks a line whose turn is not known instead of drawing one', async () => {
    const page = parsed(vesselSheetHtml(await sheetOfText(withoutFlywheel())));
    const svg = drawing(page, 'built: seen from aft, looking forward');
    expect(tips(svg)).toEqual([]);
    expect(wordsOf(svg)).toContain('turn ahead: cannot tell');
  });
});

/** The sport boat in one text, without the word on which way its flywheel faces. */
function withoutFlywheel(): string {
  const catalogue = ['engines', 'gears', 'materials'].map(name => readExample(`catalogue/${name}.shaft`));
  const vessel = readExample('sport-boat/quickgrass.shaft').replace(/^import .*$/m, '');
  expect(vessel).toContain('{ flywheel forward }');
  return [...catalogue, vessel.replace('{ flywheel forward }', '{ }')].join('\n');
}

describe('seen from above', () => {
  it('the tops move to starboard, down the page, where the line turns clockwise', async () => {
    const page = parsed(vesselSheetHtml(await sheetOfExample('pilot-cutter/ternhaven.shaft')));
    const svg = drawing(page, 'proposed: seen from above, bow to the right');
    const [port, starboard] = within(svg).filter(one => one.tagName === 'g');
    // Engine, gear, shaft, propeller: the gear of the starboard line turns it round.
    expect(tips(port!).map(one => one.angle)).toEqual([-90, -90, -90, -90]);
    expect(tips(starboard!).map(one => one.angle)).toEqual([-90, 90, 90, 90]);
    const order = tips(port!).map(one => one.x);
    expect(order).toEqual([...order].sort((a, b) => b - a));
  });

  it('an engine that faces forward stands aft of its gear', async () => {
    const page = parsed(vesselSheetHtml(await sheetOfExample('sport-boat/quickgrass.shaft')));
    const svg = drawing(page, 'built: seen from above, bow to the right');
    const [engine, gear] = tips(svg);
    expect(engine!.x).toBeLessThan(gear!.x);
    expect([engine!.angle, gear!.angle]).toEqual([90, -90]);
  });
});
