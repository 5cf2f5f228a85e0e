import { expect, it } from 'vitest';
import { checkText } from '../support/check.js';
import { exampleWithStudy } from '../support/study.js';

/** Everything that is wrong with the studies of an example, at the words that it is told at. */
async function toldOf(study: string, change: (text: string) => string = text => text): Promise<string[]> {
  const text = change(exampleWithStudy('pilot-cutter/ternhaven.shaft', study));
  const { findings } = await checkText(text);
  return findings
    .filter(one => one.problem)
    .map(one => `${text.slice(one.place.start, one.place.end)}: ${one.message}`);
}

it('tells of a part that is kept once, however much of it a study varies', async () => {
  expect(
    await toldOf(
      `study wheel of proposed {
    vary propeller pitch 33 in, 34 in
    vary propeller diameter 26 in, 27 in
    vary propeller area ratio 0.7, 0.8
    rank by speed at full power
  }`,
      text => text.replace(/(arrangement proposed[\s\S]*?)replace propeller \{[^}]*\}/, '$1retain propeller'),
    ),
  ).toEqual([
    'propeller pitch 33 in, 34 in: Port of proposed retains its propeller, so nothing in it can vary: write "replace propeller" or "modify propeller" there first.',
  ]);
});

it('tells each part that a study cannot vary', async () => {
  const told = await toldOf(`study wheel of proposed {
    vary motor torque 200 N.m, 300 N.m
    vary motor power 20 kW, 30 kW
    vary transfer length 1 m, 2 m
    rank by speed at full power
  }`);
  expect(told.map(one => one.replace(/^.*: No/, 'No'))).toEqual([
    'No line of proposed states a motor.',
    'No line of proposed states a transfer.',
  ]);
});
