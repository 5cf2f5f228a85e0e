import { RULES } from '@tailshaft/drivetrain';
import { vesselSheetHtml, vesselSheetMarkdown } from '@tailshaft/sheet';
import { expect, it } from 'vitest';
import { attribute, parsed, wordsOf } from './parsed.js';
import { readExample, sheetOfExample, sheetOfText } from './sheet-of.js';

/** The section of criticals in the Markdown of an example. */
async function criticalsOf(path: string): Promise<string> {
  const sheet = vesselSheetMarkdown(await sheetOfExample(path));
  return /### Critical speeds\n([\s\S]*?)\n### /.exec(sheet)?.[1] ?? '';
}

it('lists torsional and lateral criticals where the spec gives inertias and bearings', async () => {
  const words = await criticalsOf('service-vessel/skerrowby.shaft');
  const rows = [
    ...words.matchAll(
      /^\| (Engine order 3|Blade rate, order 4) \| mode (\d) \| (\d+(?:\.\d)?) rpm .*\| (.*) \|$/gm,
    ),
  ];
  expect(rows.map(row => [row[1], row[2], row[4]])).toEqual([
    ['Engine order 3', '1', expect.stringMatching(/^below it by \d+ %$/)],
    ['Engine order 3', '2', expect.stringMatching(/^below it by \d+ %$/)],
    ['Blade rate, order 4', '1', expect.stringMatching(/^below it by \d+(\.\d)? %$/)],
    ['Blade rate, order 4', '2', '**in the running range**'],
  ]);
  // An order is met where f = q n: 3 a turn of the engine; 4 a turn of the propeller, which is 4 / 3.952 of the engine.
  const [first, , blade] = rows.map(row => Number(row[3]));
  expect(first! * 3).toBeCloseTo(blade! * (4 / 3.952), -1);
  expect(words).toMatch(/^\| Aftmost with propeller, least \| \d+ rpm/m);
  expect(words).toContain('Bearing forward to bearing aft');
  expect(words).not.toContain('cannot tell');
});

it('tells how the parts swing in a mode: nothing turns the train as a whole', async () => {
  const words = await criticalsOf('service-vessel/skerrowby.shaft');
  const head = /^\| Mode \| Frequency \| (.*) \| Nodes in \|$/m.exec(words)![1]!.split(' | ');
  expect(head).toEqual(['Engine', 'Behind coupling Sedge-140', 'Gear output', 'Propeller']);
  const rows = [...words.matchAll(/^\| (\d) \| ([\d.]+) Hz \| (.*) \| (.*) \|$/gm)];
  expect(rows.map(row => row[1])).toEqual(['1', '2']);
  // Σ J s θ = 0 with the inertias as the spec declares them: half a coupling at each end, water on the propeller.
  const i = 3.952;
  const inertias = [3.4 + 0.2, 0.2 + 0.62, 2.9, 14 * 1.25];
  for (const row of rows) {
    const swings = row[3]!.split(' | ').map(one => Number(one.replace('−', '-')));
    const shares = swings.map((one, at) => inertias[at]! * one * (at < 2 ? 1 : 1 / i));
    const sum = shares.reduce((a, b) => a + b, 0);
    expect(Math.abs(sum) / Math.max(...shares.map(Math.abs))).toBeLessThan(0.04);
  }
  expect(rows[0]![4]).toMatch(/^coupling Sedge-140, at \d+ % of its twist$/);
});

it('draws the vibratory stress beside its limit, and tells each section', async () => {
  const words = await criticalsOf('service-vessel/skerrowby.shaft');
  expect(words).toMatch(/computed for engine order 3, engine order 6, propeller order 4, damped by/);
  expect(words).toMatch(
    /^\| The shaft \| \d+ rpm \| [\d.]+ MPa .*\| [\d.]+ MPa .*\| [\d.]+ MPa .*\| \d+ % \|$/m,
  );
  const ferry = await criticalsOf('ferry/brackle.shaft');
  expect(ferry).toMatch(/^\| The shaft \| 267 rpm \| 2\.8 MPa /m);
});

it('marks barred speeds in both charts, at engine speed and at shaft speed', async () => {
  const spec = RULES.find(one => one.id === 'interface/barred-range')!.examples().passing;
  const { elements } = parsed(vesselSheetHtml(await sheetOfText(spec)));
  const said = elements.filter(one => one.tagName === 'desc').map(wordsOf);
  const barred = said.flatMap(one =>
    [...one.matchAll(/barred: ([\d.]+) to ([\d.]+)\./g)].map(found => [Number(found[1]), Number(found[2])]),
  );
  expect(barred).toHaveLength(2);
  const [engine, shaft] = barred as [[number, number], [number, number]];
  expect(shaft).toEqual([410, 510]);
  expect(engine[0]).toBeCloseTo(410 * 2.043, 0);
  expect(engine[1]).toBeCloseTo(510 * 2.043, 0);
});

it('draws lines that vibrate alike once', async () => {
  const { elements } = parsed(vesselSheetHtml(await sheetOfExample('ferry/brackle.shaft')));
  const titles = elements.filter(one => one.tagName === 'title').map(wordsOf);
  expect(titles.filter(one => one.includes('torsional frequencies'))).toEqual([
    'Port and Starboard: torsional frequencies over engine speed',
  ]);
});

it('names all that is missing, and draws no torsional chart without it', async () => {
  const words = await criticalsOf('pilot-cutter/ternhaven.shaft');
  for (const gap of [
    'inertia of engine Kittiwake-9',
    'torsional stiffness of the damper',
    'mass of the propeller',
  ])
    expect(words).toContain(gap);
  const { elements } = parsed(vesselSheetHtml(await sheetOfExample('pilot-cutter/ternhaven.shaft')));
  const drawings = elements
    .filter(one => one.tagName === 'svg')
    .map(one => attribute(one, 'aria-labelledby') ?? '');
  expect(drawings.some(one => one.startsWith('torsional-'))).toBe(false);
  expect(drawings.some(one => one.startsWith('lateral-'))).toBe(true);
});

it('asks nothing of the boat as found, nor of a line without a propeller', async () => {
  const text = readExample('service-vessel/skerrowby.shaft');
  const sheet = vesselSheetMarkdown(await sheetOfExample('service-vessel/skerrowby.shaft'));
  expect(sheet.match(/### Critical speeds/g)).toHaveLength(1);
  expect(text).toContain('arrangement existing');
  const bare = await sheetOfText(
    'vessel V { arrangement built { shaftline Centre { gear ratio 2:1 { } } } }',
  );
  expect(vesselSheetMarkdown(bare)).not.toContain('Critical speeds');
});
