import { searched } from '@tailshaft/drivetrain';
import { studiesPanel } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { exampleWithStudy, studied } from '../support/study.js';

const PILOT = 'pilot-cutter/ternhaven.shaft';

async function resultOf(study: string, change = (text: string) => text) {
  const { studies } = await studied(change(exampleWithStudy(PILOT, study)));
  return searched(studies[0]!);
}

describe('the rankings of a study', () => {
  it('count shafts by their sizes and density in the mass', async () => {
    const { holds, unknown } = await resultOf(
      'study s of proposed { vary shaft diameter 2 1/2 in, 2 1/4 in, 2 3/8 in  rank by mass }',
      text => text.replaceAll(/ +housing bore 3 1\/2 in\n/g, ''),
    );
    const all = [...holds, ...unknown];
    expect(all.map(one => one.choice[0])).toEqual([1, 2, 0]);
    const [thin, , thick] = all.map(one => one.ranks[0]!.si);
    // Two shafts of 3.38 m and 0.285 lb/in3, worked by hand.
    const density = (0.285 * 0.45359237) / 0.0254 ** 3;
    const apart = 2 * 3.38 * density * (Math.PI / 4) * (2.5 ** 2 - 2.25 ** 2) * 0.0254 ** 2;
    expect(thick! - thin!).toBeCloseTo(apart, 6);
  });

  it('count both engines of a gear with two inputs', async () => {
    const study = 'study s of built { vary propeller pitch 1000 mm  rank by mass }';
    const { studies } = await studied(exampleWithStudy('twin-engine/sandwort.shaft', study));
    const { holds, unknown } = searched(studies[0]!);
    const [one] = [...holds, ...unknown];
    // Two engines of 410 kg and the gear of 540 kg; shaft and propeller come on top.
    expect(one!.ranks[0]!.si).toBeGreaterThan(2 * 410 + 540);
  });

  it.each([
    ['mass', 'a mass', (text: string) => text.replaceAll('mass 905 kg', ''), /mass of engine Kittiwake-9/],
    ['fuel per mile', 'hours at speeds', (text: string) => text, /hours at speeds in "duty"/],
    [
      'speed at full power',
      'the hull',
      (text: string) => text.replace('displacement 11.8 t', 'displacement unknown'),
      /displacement/,
    ],
    [
      'propeller efficiency',
      'the hull',
      (text: string) => text.replace('displacement 11.8 t', 'displacement unknown'),
      /displacement/,
    ],
  ])('by %s say that %s is missing', async (ranking, _, change, lacks) => {
    const result = await resultOf(
      `study s of proposed { vary propeller pitch 33 in, 34 in  rank by ${ranking} }`,
      change,
    );
    for (const one of [...result.holds, ...result.unknown]) expect(one.ranks).toEqual([undefined]);
    const [only, ...others] = result.unranked;
    expect(others).toEqual([]);
    expect(only!.data.join('; ')).toMatch(lacks);
    expect(studiesPanel([result])).toMatch(/Not known for some candidates/);
  });

  it('say nothing where all are known', async () => {
    const result = await resultOf(
      'study s of proposed { vary propeller pitch 33 in, 34 in  rank by speed at full power }',
    );
    expect(result.unranked).toEqual([]);
    expect(studiesPanel([result])).not.toMatch(/Not known for some candidates/);
  });
});
