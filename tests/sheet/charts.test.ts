import { type SheetInput, sheetPanel, vesselSheetHtml } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { type Element, parsed, within, wordsOf } from './parsed.js';
import { sheetOfExample } from './sheet-of.js';

/** What a reader of the page hears in place of each drawing, by its title. */
function spoken(input: SheetInput): ReadonlyMap<string, string> {
  const svgs = parsed(vesselSheetHtml(input)).elements.filter(one => one.tagName === 'svg');
  const child = (svg: Element, name: string) =>
    wordsOf(within(svg).find(one => one.tagName === name && one.parentNode === svg)!);
  return new Map(svgs.map(svg => [child(svg, 'title'), child(svg, 'desc')]));
}

/** `engine, full load: 138.2 at 1000, …` as pairs of speed and value. */
function series(description: string, name: string): [speed: number, value: number][] {
  const found = new RegExp(`(?:^|\\. )${name}: ((?:[\\d.]+ at [\\d.]+(?:, )?)+)\\.`).exec(description)!;
  return [...found[1]!.matchAll(/([\d.]+) at ([\d.]+\d)/g)].map(one => [Number(one[2]), Number(one[1])]);
}

describe('the margins', () => {
  it('of a pair that is alike stand once', async () => {
    const heard = spoken(await sheetOfExample('pilot-cutter/ternhaven.shaft')).get('proposed: margins')!;
    expect(heard).toMatch(/^Port and Starboard: /);
    expect(heard.match(/capacity\/gear-input-torque/g)).toHaveLength(1);
  });

  it('of a pair that differs stand apart', async () => {
    const input = await sheetOfExample('pilot-cutter/ternhaven.shaft');
    const verdicts = input.verdicts.map(one =>
      one.subject.startsWith('proposed.Port') && one.rule === 'capacity/gear-input-torque'
        ? { ...one, margin: 0.01 }
        : one,
    );
    const heard = spoken({ ...input, verdicts }).get('proposed: margins')!;
    expect(heard).toMatch(/^Port: .* Starboard: /);
    expect(heard).toContain('capacity/gear-input-torque holds, 1 %.');
  });
});

describe.each([
  'pilot-cutter/ternhaven',
  'ferry/brackle',
  'service-vessel/skerrowby',
  'motor-launch/reedmouth',
  'sport-boat/quickgrass',
  'workboat/saltmarsh',
  'survey-tender/wadebeck',
])('the margin bars of %s', example => {
  it('say of every bar which check of which part it is', async () => {
    const input = await sheetOfExample(`${example}.shaft`);
    const svgs = parsed(vesselSheetHtml(input)).elements.filter(one => one.tagName === 'svg');
    const pictures = svgs.filter(one => /: margins$/.test(wordsOf(within(one)[0]!)));
    expect(pictures.length).toBeGreaterThan(0);
    for (const picture of pictures) {
      const groups = wordsOf(within(picture)[1]!).split(/(?<=%\.) (?=[A-Z])/);
      for (const group of groups) {
        const bars = group.match(/[a-z]+\/[a-z-]+(?:, [^%]+?,)? (?:holds|fails|accepted)/g)!;
        expect(new Set(bars).size).toBe(bars.length);
      }
    }
  });
});

describe('power and torque', () => {
  it('a motor has one torque up to its base speed and one power above it', async () => {
    const heard = spoken(await sheetOfExample('motor-launch/reedmouth.shaft'));
    const torque = series(heard.get('Centre: torque over motor speed')!, 'motor, full load');
    const power = series(heard.get('Centre: power over motor speed')!, 'motor, full load');
    // Declared: 125 N·m, base speed 1184 rpm, 15.5 kW, top speed 1300 rpm.
    const below = torque.filter(([speed]) => speed < 1184);
    expect(below.length).toBeGreaterThan(10);
    for (const [, value] of below) expect(value).toBe(125);
    for (const [, value] of power.filter(([speed]) => speed > 1185)) expect(value).toBe(15.5);
    expect(torque.at(-1)![0]).toBe(1300);
  });

  it('draws what the propeller fitted asks, up to the engine load that the prediction gives', async () => {
    const input = await sheetOfExample('ferry/brackle.shaft');
    const heard = spoken(input);
    const asked = series(
      heard.get('Port and Starboard: power over engine speed')!,
      'propeller fitted, predicted',
    );
    const propulsion = input.analysisOf(input.vessel.arrangements[0]!.lines[0]!).propulsion!.value!;
    const [speed, power] = asked.at(-1)!;
    expect(speed).toBe(1800);
    // The engine gives 257 kW at 1800 rpm: the share of it that the propeller asks.
    expect(power / 257).toBeCloseTo(propulsion.demand.si, 2);
  });

  it('draws no prediction where none can be made, and says so', async () => {
    const input = await sheetOfExample('sport-boat/quickgrass.shaft');
    expect(spoken(input).get('Centre: power over engine speed')).not.toContain('predicted');
    expect(vesselSheetHtml(input)).toContain('It is not a prediction of the propeller fitted.');
  });
});

describe('propulsion', () => {
  it('tells speed over engine speed, with its method', async () => {
    const input = await sheetOfExample('ferry/brackle.shaft');
    const predicted = series(
      spoken(input).get('Port and Starboard: speed of the vessel over engine speed')!,
      'predicted speed',
    );
    const { rated } = input.analysisOf(input.vessel.arrangements[0]!.lines[0]!).propulsion!.value!;
    expect(predicted.at(-1)![0]).toBe(1800);
    // A knot is 1852 m/h: BIPM, SI Brochure, table 8 of the 8th edition.
    expect(predicted.at(-1)![1]).toBeCloseTo((rated.vesselSpeed.si * 3600) / 1852, 1);
    const speeds = predicted.map(one => one[1]);
    expect(speeds).toEqual([...speeds].sort((one, other) => one - other));
    expect(sheetPanel(input, {}).html).toContain('by the Holtrop 1982 method');
  });

  it('names what is missing where it cannot be told, only for what is planned', async () => {
    const input = await sheetOfExample('pilot-cutter/ternhaven.shaft');
    const { html } = sheetPanel(input, { arrangement: 'existing' });
    expect(html).not.toContain('speed and load cannot be predicted');
    const arrangements = input.vessel.arrangements.map(one => {
      const { revises: _, ...alone } = one;
      return one.name === 'proposed' ? alone : one;
    });
    const planned = sheetPanel(
      { ...input, vessel: { ...input.vessel, arrangements } },
      { arrangement: 'existing' },
    );
    expect(planned.html).toMatch(/Port and Starboard: speed and load cannot be predicted\.[^;]*area ratio/);
  });
});

/** Outside check: the engine's data sheet in the examples gives 385 N·m at 1200, 410 at 1500 and 84 kW (364.6 N·m) at 2200 rpm. */
it('the curve of a line with an engine and a motor is that of the engine', async () => {
  const heard = spoken(await sheetOfExample('hybrid-ferry/teasel.shaft'));
  const torque = heard.get('Centre: torque over engine speed')!;
  expect(series(torque, 'engine, full load')).toEqual([
    [1200, 385],
    [1500, 410],
    [2200, 364.6],
  ]);
  expect([...heard.keys()].filter(one => /motor speed/.test(one))).toEqual([]);
});
