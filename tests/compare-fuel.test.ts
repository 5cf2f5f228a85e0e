import { compareVessels, describeVessel } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { joinedExample } from './support/examples.js';
import { studied } from './support/study.js';

const RUNNING = 'running 900 h at 20 kn  running 100 h at 24 kn';

/** The pilot cutter with a running profile and what its proposed engine burns. */
async function cutter(fuel: string, running = RUNNING) {
  const text = joinedExample('pilot-cutter/ternhaven.shaft');
  const at = text.indexOf('\n', text.indexOf('engine Kittiwake-9'));
  const { vessel } = await studied(
    `${text.slice(0, at)}\n  ${fuel}${text.slice(at)}`.replace(
      'duty medium { hours 1500 per year',
      `duty medium { hours 1500 per year  ${running}`,
    ),
  );
  return vessel;
}

async function fuelTold(before: Parameters<typeof cutter>, after: Parameters<typeof cutter>) {
  const { changes } = compareVessels(await cutter(...before), await cutter(...after));
  return changes.flatMap(one => (one.kind === 'derived' && one.what.startsWith('fuel') ? [one] : []));
}

describe('fuel of the running profile, before and after', () => {
  it('follows the declared consumption, by the year, the mile and the hour at each speed', async () => {
    const told = await fuelTold(['fuel rate 80 L/h'], ['fuel rate 72 L/h']);
    expect(told.map(one => `${one.subject}: ${one.what}`).sort()).toEqual([
      'proposed: fuel a nautical mile, running profile',
      'proposed: fuel a year, running profile',
      'proposed: fuel an hour at 20 kn',
      'proposed: fuel an hour at 24 kn',
    ]);
    // All of it is in proportion to the rate.
    for (const one of told) expect(one.share).toBeCloseTo(-0.1, 9);
    expect(told[0]!.words).toMatch(
      /^fuel a year, running profile: [\d,]+ L ±15 % → [\d,]+ L ±15 % \(−10 %\)$/,
    );
  });

  it('is known better where the sheet gives points', async () => {
    const points = 'fuel rate 80 L/h\n  propeller-law fuel 34 L/h at 1800 rpm';
    const [year] = await fuelTold(['fuel rate 80 L/h'], [points]);
    expect(year!.before).toMatch(/±15 %$/);
    expect(year!.after).toMatch(/±5 %$/);
  });

  it('that is no longer known weighs more than one that changed', async () => {
    const told = await fuelTold(['fuel rate 80 L/h'], ['']);
    expect(told.map(one => one.after)).toEqual([undefined, undefined, undefined, undefined]);
    const changed = await fuelTold(['fuel rate 80 L/h'], ['fuel rate 72 L/h']);
    expect(told[0]!.weight).toBeLessThan(changed[0]!.weight);
  });

  it('tells no hour at a speed that only one profile has', async () => {
    const told = await fuelTold(
      ['fuel rate 80 L/h'],
      ['fuel rate 80 L/h', RUNNING.replace('24 kn', '22 kn')],
    );
    expect(told.map(one => one.what)).toEqual([
      'fuel a year, running profile',
      'fuel a nautical mile, running profile',
    ]);
  });

  it('is not told where nothing of it changed', async () => {
    expect(await fuelTold(['fuel rate 80 L/h'], ['fuel rate 80 L/h'])).toEqual([]);
  });

  it('stands in the description', async () => {
    const lines = describeVessel(await cutter('fuel rate 80 L/h'));
    expect(
      lines.filter(one => /derived proposed: fuel a year, running profile: [\d,]+ L ±15 %/.test(one)),
    ).toHaveLength(1);
  });
});
