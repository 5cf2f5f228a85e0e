import { compareVessels } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { applied } from './support/changed-example.js';
import { readExample } from './support/examples.js';

const PATH = 'workboat/saltmarsh.shaft';
const SPEC = readExample(PATH);

async function changesBy(from: string, to: string): Promise<string[]> {
  expect(SPEC).toContain(from);
  const [before, after] = [await applied(PATH, SPEC), await applied(PATH, SPEC.replace(from, to))];
  return compareVessels(before.check.vessels[0]!, after.check.vessels[0]!)
    .changes.filter(one => one.kind === 'statement' && one.about === 'trial')
    .map(one => one.words);
}

it.each([
  ['water depth 12 m', 'water depth 4 m', 'water depth 12 m → "builder\'s trial": water depth 4 m'],
  ['bottom clean', 'bottom foul', 'bottom clean → "builder\'s trial": bottom foul'],
  ['dated 2026-02-24', 'dated 2026-02-25', 'dated 2026-02-24 → "builder\'s trial": dated 2026-02-25'],
  [
    'speed 8.1 kn',
    'speed 7.9 kn',
    'Centre at full throttle: speed 8.1 kn → "builder\'s trial": Centre at full throttle: speed 7.9 kn',
  ],
])('a trial with "%s" made "%s" is told before and after', async (from, to, words) => {
  expect(await changesBy(from, to)).toEqual([`trial: "builder's trial": ${words}`]);
});

it('a reading taken out is told, and the same reading in another unit is none', async () => {
  expect(await changesBy('      gear oil temperature 64 °C\n', '')).toEqual([
    'trial taken out: "builder\'s trial": Centre at full throttle: gear oil temperature 64 °C',
  ]);
  expect(await changesBy('shaft power 73.5 kW', 'shaft power 73500 W')).toEqual([]);
});

it('a trial, and a study, of another arrangement is told', async () => {
  const twice = SPEC.replace(/( {2}arrangement )built([\s\S]*?\n {2}\}\n)/, '$1built$2$1other$2')
    .replace('trial "builder\'s trial"', 'trial "builder\'s trial" of built')
    .replace(
      '  require',
      '  study wheel of built { vary propeller pitch 22 in .. 24 in by 1 in  rank by least margin }\n  require',
    );
  const [before, after] = [
    await applied(PATH, twice),
    await applied(
      PATH,
      twice.replace('trial" of built', 'trial" of other').replace('wheel of built', 'wheel of other'),
    ),
  ];
  const words = compareVessels(before.check.vessels[0]!, after.check.vessels[0]!).changes.map(
    one => one.words,
  );
  expect(words).toContain('trial: "builder\'s trial": of built → "builder\'s trial": of other');
  expect(words).toContain('study: wheel: of built → wheel: of other');
});
