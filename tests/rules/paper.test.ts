import { findRule } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { checkText } from '../support/check.js';

/** Findings on one line of a vessel whose other lines are sound. */
const SPEC = findRule('paper/acceptance')!.examples().passing;
const accepted = SPEC.slice(SPEC.indexOf('  accept '), SPEC.indexOf('  arrangement '));

async function findings(acceptance: string): Promise<string[]> {
  const text = SPEC.replace(accepted, acceptance);
  expect(text).not.toBe(SPEC);
  return (await checkText(text)).findings.map(one => `${one.code}: ${one.message}`);
}

const RULE = 'accept trace/requirement-unverified on Ternhaven';

it.each([
  ['nobody gave it', `${RULE} because "by trial"\n`, /does not say who gave it/],
  ['no reason', `${RULE} by "superintendent"\n`, /gives no reason/],
  [
    'over since yesterday',
    `${RULE} because "by trial" by "superintendent" until 2026-02-28\n`,
    /ran out on 2026-02-28/,
  ],
])(
  'an acceptance that covers nothing (%s) is a finding, and so is what it was for',
  async (_, words, message) => {
    const all = await findings(words);
    expect(all).toHaveLength(2);
    expect(all.find(one => one.startsWith('paper/acceptance'))).toMatch(message);
    expect(all.some(one => one.startsWith('trace/requirement-unverified'))).toBe(true);
  },
);

it.each([
  [
    'its last day',
    `${RULE} because "by trial" by "superintendent"\n`,
    /has no last day: .* Have its author add it\.$/,
  ],
  [
    'its place and its last day',
    `${RULE.split(' on ')[0]} because "by trial" by "superintendent"\n`,
    /has no last day, and names no subject: .* Have its author add both\.$/,
  ],
])('asks for what an acceptance lacks: %s', async (_, words, message) => {
  expect(await findings(words)).toContainEqual(expect.stringMatching(message));
});

it('stands on its last day', async () => {
  const words = `${RULE} because "by trial" by "superintendent" until 2026-03-01\n`;
  expect(await findings(words)).toEqual([]);
});

it('finds what a sister vessel lent to hull, shaft and propeller, and never in the boat as found', async () => {
  const failing = findRule('paper/sister-vessel')!.examples().failing;
  const text = failing
    .replace(
      'arrangement proposed {',
      'hull planing { displacement 11.8 t [sister vessel] }\n  arrangement proposed {',
    )
    .replace('diameter 26 in', 'diameter 26 in [sister vessel]');
  const own = (await checkText(text)).findings.filter(one => one.code === 'paper/sister-vessel');
  expect(own.map(one => text.slice(one.place.start, one.place.end)).sort()).toEqual([
    '11.8 t',
    '26 in',
    '65 mm',
  ]);
  const found = text.replace(
    /\n}\n$/,
    '\n  arrangement next revises proposed {\n    shaftline Centre {\n      retain engine\n      retain gear\n      replace shaft { material high-strength-stainless  diameter 65 mm }\n      replace propeller { hand right  blades 4  diameter 26 in  pitch 24 in  area ratio 0.72 }\n    }\n  }\n}\n',
  );
  expect(found).not.toBe(text);
  const left = (await checkText(found)).findings.filter(one => one.code === 'paper/sister-vessel');
  expect(left.map(one => found.slice(one.place.start, one.place.end))).toEqual(['11.8 t']);
});
