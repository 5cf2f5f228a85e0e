import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { compareVessels, EASILY_MISSED, STATED, vesselLevels } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { changed, SINGLE_LINE } from '../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from './support/check.js';

const PRACTICE = `practice Harbour-Office "design office" {
  tip speed at most 45 m/s
  acceptances last at most 1 year
  acceptances of "rotation/" by "class surveyor, flag surveyor"
  gravity of "speed/tip-speed" is error
}
`;
const STATEMENTS = `  certificate { power 320 kW }
  require speed at least 15 kn at full power "owner"
  require speed at most 9 kn at idle ahead
  accept shafting/diameter on proposed because "trial runs" by "class surveyor" dated 2026-01-10 until 2027-01-01
  trial "sea trial" dated 2026-02-24 { run Centre at full throttle { engine speed 2290 rpm [measured]  speed 15.1 kn } }
`;
const SPEC = `${PRACTICE}${changed(
  SINGLE_LINE,
  ['  arrangement proposed {', `${STATEMENTS}  arrangement proposed {`],
  [
    'diameter 65 mm [drawing]',
    'diameter 65 mm [drawing]  damage bent { at bearing  dated 2026-01-12  seen by "yard foreman" }',
  ],
)}`;

async function compared(...edits: [string, string][]) {
  const [before, after] = [await checkText(SPEC), await checkText(changed(SPEC, ...edits))];
  for (const { findings } of [before, after])
    expect(findings.filter(one => one.problem).map(one => one.message)).toEqual([]);
  return compareVessels(before.check.vessels[0]!, after.check.vessels[0]!);
}

describe('what a reviewer must not pass unread', () => {
  it.each([
    ['acceptances that may last longer', 'at most 1 year', 'at most 3 year', 'acceptance weakened'],
    ['acceptances of any length', '  acceptances last at most 1 year\n', '', 'acceptance weakened'],
    ['one more who may accept', 'flag surveyor"', 'flag surveyor, owner"', 'acceptance weakened'],
    ['who may accept, taken out', /.*"rotation.*\n/.exec(PRACTICE)![0], '', 'acceptance weakened'],
    ['a rule that is no longer an error', /.*gravity.*\n/.exec(PRACTICE)![0], '', 'criterion relaxed'],
    ['a rule that is a warning', 'is error', 'is warning', 'criterion relaxed'],
    ['no practice at all', PRACTICE, '', 'criterion relaxed'],
    ['a certificate for more power', 'power 320 kW', 'power 420 kW', 'criterion relaxed'],
    ['no certificate', '  certificate { power 320 kW }\n', '', 'criterion relaxed'],
    ['a requirement whose bound is open', 'at least 15 kn', 'at least unknown', 'criterion relaxed'],
    ['an acceptance dated anew', 'dated 2026-01-10', 'dated 2026-02-10', 'acceptance weakened'],
    ['no record of damage', / {2}damage[^}]*\}/.exec(SPEC)![0], '', 'newly unknown'],
    ['a lighter duty', 'duty medium', 'duty light', 'criterion relaxed'],
    ['fewer hours a year', 'hours 1500 per year', 'hours 900 per year', 'criterion relaxed'],
    ['a number whose unit became another', 'pitch 24 in', 'pitch 24 cm', 'newly unknown'],
    ['a rating in a larger unit', '0.18 kW/rpm', '0.18 PS/rpm', 'newly unknown'],
    ['damage of another kind', 'damage bent', 'damage worn', 'newly unknown'],
  ])('is %s', async (_, from, to, level) => {
    expect(vesselLevels(await compared([from, to]))).toContain(level);
  });

  it.each([
    ['acceptances that last less', 'at most 1 year', 'at most 0.99 year'],
    ['the same term in another unit', 'at most 1 year', 'at most 365.25 day'],
    ['one less who may accept', ', flag surveyor"', '"'],
    ['the same roles in another order', 'class surveyor, flag surveyor', 'flag surveyor, class surveyor'],
    ['a certificate for less power', 'power 320 kW', 'power 310 kW'],
    ['more hours a year', 'hours 1500 per year', 'hours 1510 per year'],
    ['a requirement of more', 'at least 15 kn', 'at least 15.01 kn'],
    [
      'one requirement more, that asks for less',
      '  require',
      '  require speed at least 5 kn at full power "crew"\n  require',
    ],
  ])('is not %s', async (_, from, to) => {
    const { changes } = await compared([from, to]);
    const stated = { changes: changes.filter(one => one.kind === 'statement') };
    expect(vesselLevels(stated as never)).toEqual([]);
  });

  it.each([
    ['80 %', ['criterion relaxed']],
    ['99 %', []],
  ])('is an assumption only where something holds by more for it: %s', async (share, levels) => {
    const assumed = changed(SINGLE_LINE, [
      '  arrangement proposed',
      `  assume gear efficiency ${share} because "as told"\n  arrangement proposed`,
    ]);
    const [before, after] = [await checkText(SINGLE_LINE), await checkText(assumed)];
    expect(vesselLevels(compareVessels(before.check.vessels[0]!, after.check.vessels[0]!))).toEqual(levels);
  });

  it.each([
    ['0.18', '0.1', '0.2', 'Alder 63 technical sheet, issue 4', true],
    ['0.18', '0.1', '0.2', 'Alder 63 technical sheet, issue 5', false],
    ['0.18', '0.18', '0.2', 'Alder 63 technical sheet, issue 4', false],
  ])(
    'is a failure that goes by a figure of one document: %s as %s, then %s by %s',
    async (said, first, then, source, told) => {
      const rated = (rating: string) =>
        changed(SINGLE_LINE, [`rated medium ${said} kW`, `rated medium ${rating} kW`]);
      const [before, after] = [
        await checkText(rated(first)),
        await checkText(rated(then).replace('Alder 63 technical sheet, issue 4', source)),
      ];
      const comparison = compareVessels(before.check.vessels[0]!, after.check.vessels[0]!);
      expect(vesselLevels(comparison).includes('criterion relaxed')).toBe(told);
      expect(comparison.changes.map(one => one.words).join()).toContain(
        'gear Alder-63 keeps its name, other facts: rated medium',
      );
    },
  );

  it('is a criterion of the practice that asks for less, also where the vessel chose a milder one', async () => {
    const own = SPEC.replace('  require', '  criteria { tip speed at most 60 m/s }\n  require');
    const [before, milder, stricter] = await Promise.all(
      [45, 55, 40].map(async speed => {
        const { check } = await checkText(own.replace('tip speed at most 45', `tip speed at most ${speed}`));
        return check.vessels[0]!;
      }),
    );
    expect(vesselLevels(compareVessels(before!, milder!))).toContain('criterion relaxed');
    const tightened = compareVessels(before!, stricter!).changes.filter(one => one.kind === 'statement');
    expect(tightened.map(one => one.words)).toEqual([
      'practice Harbour-Office: tip speed at most 45 m/s → tip speed at most 40 m/s',
    ]);
    expect(vesselLevels({ changes: tightened } as never)).toEqual([]);
  });

  it('is a requirement turned round with what it is about', async () => {
    const turned = (way: string) => SPEC.replace('  require', `  require propellers turn ${way}\n  require`);
    const [before, after] = [await checkText(turned('outward')), await checkText(turned('inward'))];
    const comparison = compareVessels(before.check.vessels[0]!, after.check.vessels[0]!);
    expect(vesselLevels(comparison)).toContain('criterion relaxed');
  });

  it('is a criterion in the place of the default, where it makes a margin larger', async () => {
    const usual = changed(`${PRACTICE}${SINGLE_LINE}`, [
      'diameter 65 mm [drawing]',
      'diameter 65 mm [drawing]  overhang 60 mm',
    ]);
    const of = async (overhang: string) => {
      const chosen = changed(usual, ['tip speed at most 45 m/s', `tip speed at most 45 m/s  ${overhang}`]);
      const [before, after] = [await checkText(usual), await checkText(chosen)];
      return vesselLevels(compareVessels(before.check.vessels[0]!, after.check.vessels[0]!));
    };
    expect(await of('overhang at most 9')).toEqual(['criterion relaxed']);
    expect(await of('overhang at most 0.95')).toEqual([]);
  });
});

describe('a record that reads otherwise under the same evidence is easily missed', () => {
  const rewritten = async (...edits: [string, string][]) =>
    (await compared(...edits)).changes.flatMap(one =>
      one.kind === 'silent' && one.what === 'record rewritten'
        ? [one.words.split(': ').slice(0, -1).join(': ')]
        : [],
    );

  it('at a part, and in a trial', async () => {
    expect(await rewritten(['diameter 65 mm [drawing]', 'diameter 66 mm [drawing]'])).toEqual([
      'shaft, diameter: 65 mm → 66 mm, drawing as before',
    ]);
    expect(await rewritten(['speed 15.1 kn', 'speed 15.3 kn'])).toEqual([
      'trial "sea trial": Centre at full throttle: speed: 15.1 kn → 15.3 kn',
    ]);
  });

  it('not under other evidence, nor as the same value in another unit', async () => {
    expect(await rewritten(['diameter 65 mm [drawing]', 'diameter 66 mm [measured]'])).toEqual([]);
    expect(await rewritten(['diameter 65 mm [drawing]', 'diameter 6.5 cm [drawing]'])).toEqual([]);
  });
});

it('the published schema has the words that a comparison uses', () => {
  const file = join(import.meta.dirname, '../packages/cli/schema/compare.schema.json');
  const lists = [...readFileSync(file, 'utf8').matchAll(/"enum": \[([^\]]*)\]/g)].map(one =>
    [...one[1]!.matchAll(/"([^"]+)"/g)].map(word => word[1]).sort(),
  );
  expect(lists).toContainEqual([...STATED].sort());
  expect(lists).toContainEqual([...EASILY_MISSED].sort());
});
