import { everyFinding, type Finding, findingsOf, placeOf } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import {
  changed,
  REPOWER,
  SINGLE_LINE,
  TWIN_LINES,
} from '../../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from '../support/check.js';
import { exampleSpecs, joinedExample } from '../support/examples.js';
import { share } from '../support/share.js';

const MIRRORED = changed(TWIN_LINES, [
  TWIN_LINES.slice(TWIN_LINES.indexOf('shaftline Starboard'), TWIN_LINES.lastIndexOf('  }\n}')),
  'shaftline Starboard mirrors Port {\n      gear ahead clutch B\n      propeller hand right\n    }\n',
]);
const twice = (spec: string, from: string, to: string) => changed(spec, [from, to], [from, to]);
const SECOND_VESSEL = SINGLE_LINE.slice(SINGLE_LINE.indexOf('vessel Ternhaven')).replace(
  'Ternhaven',
  'Brackle',
);

async function found(spec: string) {
  const checked = await checkText(spec);
  const findings = findingsOf(checked.check).filter(one => one.verdict?.outcome === 'fails');
  return { ...checked, findings };
}

const shown = (text: string, one: Finding) => {
  const { start, end } = one.place;
  return `${one.code} at "${text.slice(start, end)}", ${one.message.split(':')[0]}, ${one.folded?.length ?? 0} folded`;
};

describe('one cause is one finding', () => {
  it.each([
    [
      'a mirrored pair',
      changed(MIRRORED, ['diameter 65 mm', 'diameter 40 mm']),
      'shafting/diameter at "40 mm", Port and Starboard, 1 folded',
    ],
    [
      'an identical pair, written twice',
      twice(TWIN_LINES, 'diameter 65 mm', 'diameter 40 mm'),
      'shafting/diameter at "40 mm", Port and Starboard, 1 folded',
    ],
    [
      'two lines that use one catalogue rating',
      changed(TWIN_LINES, ['rated medium 0.18 kW/rpm', 'rated medium 0.14 kW/rpm']),
      'capacity/gear-input-torque at "Alder-63", Port and Starboard, 1 folded',
    ],
    [
      'one side alone',
      changed(TWIN_LINES, ['diameter 65 mm', 'diameter 40 mm']),
      'shafting/diameter at "40 mm", Port, 0 folded',
    ],
    [
      'a wrong hand on one side',
      changed(TWIN_LINES, ['hand left', 'hand right']),
      'rotation/propeller-hand at "right", Port, 0 folded',
    ],
    [
      'two vessels in one file',
      twice(`${SINGLE_LINE}\n${SECOND_VESSEL}`, 'diameter 65 mm', 'diameter 40 mm'),
      'shafting/diameter at "40 mm", Brackle, Centre, 0 folded',
    ],
  ])('%s', async (_, spec, wanted) => {
    const { text, findings } = await found(spec);
    expect(findings.map(one => shown(text, one))).toContain(wanted);
    const codes = findings.map(one => `${one.code} ${one.vessel?.vessel.name}`);
    expect(new Set(codes).size, 'each rule once for each vessel').toBe(codes.length);
  });
});

describe('a finding on what is kept', () => {
  // The gear stays and gets more torque than its rating, the same that it had.
  const spec = changed(REPOWER, ['rated medium 0.18 kW/rpm', 'rated medium 0.14 kW/rpm']);

  it('stands in the arrangement that keeps it, and names it', async () => {
    const { text, check } = await found(spec);
    const own = findingsOf(check).filter(
      one => one.verdict?.outcome === 'fails' && one.verdict.subject.startsWith('proposed'),
    );
    expect(own.length).toBeGreaterThan(0);
    for (const one of own) {
      expect(one.place.start).toBeGreaterThan(text.indexOf('arrangement proposed'));
      expect(one.message).toMatch(/^proposed, Centre: /);
    }
  });
});

/** Every example, and each with one thing after another made wrong. */
const SPOILT: readonly (readonly [string, RegExp, string])[] = [
  ['a thin shaft', /diameter \d[\d /]* in(?=.*\n.*length)/g, 'diameter 1 in'],
  ['the other hand', /hand left/g, 'hand right'],
  ['a small gear', /rated (light|medium|heavy|pleasure) 0\.\d+ kW\/rpm/g, 'rated $1 0.02 kW/rpm'],
  ['no material', /^\s*material [\w -]+$/gm, ''],
  ['a short bearing', /length 230 mm/g, 'length 30 mm'],
];

describe.each(share(exampleSpecs, 1))('%s', path => {
  it.each(SPOILT)(
    'with %s loses no failure and points into the arrangement that fails',
    async (_, from, to) => {
      const { check, uri } = await checkText(joinedExample(path).replace(from, to));
      const told = new Set(everyFinding(findingsOf(check)).map(one => one.verdict));
      for (const { vessel, verdicts } of check.vessels) {
        expect(verdicts.filter(one => one.outcome === 'fails' && !told.has(one))).toEqual([]);
        for (const one of everyFinding(findingsOf(check))) {
          const arrangement = vessel.arrangements.find(
            each => one.verdict?.subject === each.path || one.verdict?.subject.startsWith(`${each.path}.`),
          );
          if (!arrangement) continue;
          const others = vessel.arrangements
            .filter(each => each !== arrangement)
            .map(each => placeOf(each.origin));
          const astray = others.filter(each => one.place.start >= each.start && one.place.end <= each.end);
          expect(astray, `${one.code} of ${one.verdict!.subject}`).toEqual([]);
          expect(one.place.uri).toBe(uri);
        }
      }
    },
  );
});

it.each(SPOILT)('%s is a mistake that somebody is told of', async (_, from, to) => {
  const counts = await Promise.all(
    exampleSpecs.map(async path => {
      const told = async (text: string) => findingsOf((await checkText(text)).check).length;
      return (await told(joinedExample(path).replace(from, to))) - (await told(joinedExample(path)));
    }),
  );
  expect(Math.max(...counts)).toBeGreaterThan(0);
});
