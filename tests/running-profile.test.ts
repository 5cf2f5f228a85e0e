import { LineAnalysis, runningProfile, searched } from '@tailshaft/drivetrain';
import { makePaper, paperMarkdown, vesselSheetMarkdown } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { sheetOfText } from './sheet/sheet-of.js';
import { joinedExample } from './support/examples.js';
import { exampleWithStudy, studied } from './support/study.js';

const DUTY = 'duty medium { hours 1500 per year  passengers none }';
const PROFILE =
  'duty medium { hours 1500 per year  passengers none  running 900 h at 20 kn  running 100 h at 24 kn  passage 40 nmi }';

function withFacts(
  text: string,
  { duty = PROFILE, fuel = 'fuel rate 78 L/h', hull = 'displacement 11.8 t' } = {},
): string {
  const engine = text.indexOf('engine Kittiwake-9');
  const at = text.indexOf('\n', engine);
  return `${text.slice(0, at)}\n  ${fuel}${text.slice(at)}`
    .replace(DUTY, duty)
    .replace('displacement 11.8 t', hull)
    .replace('  hull planing {\n', '  hull planing {\n    fuel capacity 1200 L\n');
}

async function profileOf(facts: Parameters<typeof withFacts>[1] = {}) {
  const { vessel } = await studied(withFacts(joinedExample('pilot-cutter/ternhaven.shaft'), facts));
  const { lines } = vessel.vessel.arrangements.find(one => one.name === 'proposed')!;
  return runningProfile(lines, vessel.vessel, line => new LineAnalysis(line, vessel.vessel));
}

const litres = (si: number | undefined) => (si ?? Number.NaN) * 1000;

describe('the running profile', () => {
  it('comes to the fuel that a person works out from its loads', async () => {
    const profile = (await profileOf())!;
    const [slow, fast] = profile.runs;
    for (const run of [slow!, fast!]) {
      const load = run.lines![0]!.load;
      // Two engines, 78 L/h each at rated power, in proportion to load.
      expect(run.flow!.si * 3.6e6).toBeCloseTo(2 * 78 * load, 6);
      const knots = (run.vesselSpeed.si * 3600) / 1852;
      expect(litres(run.perMile!.si)).toBeCloseTo((2 * 78 * load) / knots, 6);
      expect(litres(run.perPassage!.si)).toBeCloseTo((40 * 2 * 78 * load) / knots, 6);
      expect(run.range!.si / 1852).toBeCloseTo((1200 * knots) / (2 * 78 * load), 6);
    }
    const year = 2 * 78 * (900 * slow!.lines![0]!.load + 100 * fast!.lines![0]!.load);
    expect(litres(profile.perYear!.si)).toBeCloseTo(year, 4);
    expect(litres(profile.perMile!.si)).toBeCloseTo(year / (900 * 20 + 100 * 24), 6);
    expect(slow!.lines![0]!.load).toBeLessThan(fast!.lines![0]!.load);
    expect(fast!.lines![0]!.load).toBeLessThan(1);
  });

  it('reads a curve of the sheet as it is drawn, along the propeller law', async () => {
    const points =
      'fuel rate 78 L/h\n  propeller-law fuel 34 L/h at 1800 rpm\n  propeller-law fuel 12 L/h at 1200 rpm';
    const profile = (await profileOf({ fuel: points }))!;
    const { power, fuel, load, line } = profile.runs[0]!.lines![0]!;
    const rated = power.si / 1000 / load;
    const rpm = (line.engine!.rating!.power!.value!.x.si * 60) / (2 * Math.PI);
    const at = (speed: number) => rated * (speed / rpm) ** 3;
    const kilowatts = power.si / 1000;
    const [low, high, least, most] =
      kilowatts < at(1800) ? [at(1200), at(1800), 12, 34] : [at(1800), rated, 34, 78];
    expect(fuel.flow.si * 3.6e6).toBeCloseTo(least + ((most - least) * (kilowatts - low)) / (high - low), 6);
    expect(fuel.uncertainty).toBe(0.05);
  });

  it.each([
    ['no fuel is declared', { fuel: '' }, /declares no fuel/],
    [
      'speed cannot be predicted, and why',
      { duty: PROFILE, fuel: 'fuel rate 78 L/h', hull: 'displacement unknown' },
      /cannot be predicted for Port: missing displacement/,
    ],
    ['a speed is out of reach', { duty: PROFILE.replace('24 kn', '45 kn') }, /speed/],
  ])('tells no year where %s', async (_, facts, why) => {
    const profile = (await profileOf(facts))!;
    expect(profile.perYear).toBeUndefined();
    expect(profile.runs.some(one => one.why && why.test(one.why))).toBe(true);
  });

  it('says that nothing is declared of the engine but one point, and claims no hours of a load that it cannot tell', async () => {
    const bare = withFacts(joinedExample('pilot-cutter/ternhaven.shaft')).replace(
      /high idle 2530 rpm\n|peak torque 1360 N.m at 1500 rpm\n|full-load (?:torque|power) (?:1050|1360|1290|280) .*\n/g,
      '\n',
    );
    const sheet = vesselSheetMarkdown(await sheetOfText(bare));
    const proposed = sheet.slice(sheet.indexOf('proposed: running profile'));
    expect(proposed).toContain(
      'cannot be predicted for Port. Nothing is declared of the engine below or above its rated speed.',
    );
    expect(proposed).toContain('Hours over 95 % load are not known');
    expect(proposed).not.toMatch(/Over 95 % load: 0/);
    expect(proposed).toContain('Fuel cannot be worked out at any of these speeds.');
  });

  it('is none where duty states no hours at speeds', async () => {
    expect(await profileOf({ duty: DUTY })).toBeUndefined();
  });

  it('stands in the sheet and in the summary, before and after', async () => {
    const input = await sheetOfText(withFacts(joinedExample('pilot-cutter/ternhaven.shaft')));
    const sheet = vesselSheetMarkdown(input);
    expect(sheet).toContain('Running profile');
    expect(sheet).toMatch(/E3 69 %.*E5 34 %/);
    expect(sheet).toMatch(/The rating allows \d+ hours a year, the profile asks 1,000/);
    const summary = paperMarkdown(makePaper(input, 'summary'));
    expect(summary).toMatch(/Fuel a year \| not known \| [\d,]+ L/);
    expect(paperMarkdown(makePaper(input, 'comparison'))).toContain('Fuel a year');
  });
});

it('ranks the candidates of a study by fuel', async () => {
  const text = withFacts(
    exampleWithStudy(
      'pilot-cutter/ternhaven.shaft',
      'study wheel of proposed { vary propeller pitch 33 in, 34 in, 35 in  rank by fuel per mile }',
    ),
  );
  const { studies } = await studied(text);
  const { holds } = searched(studies[0]!);
  const fuel = holds.map(one => one.ranks[0]!.si);
  expect(fuel.length).toBeGreaterThan(1);
  expect(fuel).toEqual([...fuel].sort((a, b) => a - b));
});
