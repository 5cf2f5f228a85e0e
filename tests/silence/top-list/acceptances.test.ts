import { daysFrom, judgeVessel, RULES, rolesFrom } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { checkText, TODAY } from '../../support/check.js';
import { changed, verdictsBy, withStatements } from './spec-of.js';

const WRONG_HAND = changed(SINGLE_LINE, ['hand right [drawing]', 'hand left [drawing]']);
const OVERLOADED = changed(SINGLE_LINE, ['rated medium 0.18 kW/rpm', 'rated medium 0.09 kW/rpm']);
const accepted = (spec: string, rule: string, clauses: string) =>
  withStatements(spec, `  accept ${rule} ${clauses}`);
const state = async (spec: string, rule: string) => [
  (await verdictsBy(spec, rule))[0]?.outcome,
  (await checkText(spec)).check.vessels[0]!.verdicts.filter(one => one.rule === 'paper/acceptance').map(
    one => `${one.outcome} ${one.severity}`,
  ),
];

describe.each([
  ['a failure of rotation', WRONG_HAND, 'rotation/propeller-hand'],
  ['a margin below nil', OVERLOADED, 'capacity/gear-input-torque'],
])('%s', (_what, spec, rule) => {
  it.each([
    [
      'on Centre because "proven at the dock" by "class surveyor" dated 2026-02-20 until 2027-02-20',
      'accepted',
      'holds error',
    ],
    [
      'on Centre because "proven at the dock" by "me" dated 2026-02-20 until 2027-02-20',
      'fails',
      'fails error',
    ],
    ['on Centre because "" by "class surveyor" dated 2026-02-20 until 2027-02-20', 'fails', 'fails error'],
    ['on Centre by "class surveyor" dated 2026-02-20 until 2027-02-20', 'fails', 'fails error'],
    ['on Centre because "proven at the dock" dated 2026-02-20 until 2027-02-20', 'fails', 'fails error'],
    [
      'on Centre because "proven at the dock" by "class surveyor" dated 2026-02-20',
      'accepted',
      'fails warning',
    ],
    [
      'on Centre because "proven at the dock" by "class surveyor" dated 2026-06-20 until 2027-02-20',
      'fails',
      'fails error',
    ],
    [
      'on Centre because "proven at the dock" by "class surveyor" dated unknown until 2027-02-20',
      'fails',
      'fails error',
    ],
    [
      'on Centre because "proven at the dock" by "class surveyor" dated 2026-02-20 until 2027-02-30',
      'fails',
      'fails error',
    ],
  ])('%s', async (clauses, outcome, paper) => {
    expect(await state(accepted(spec, rule, clauses), rule)).toEqual([outcome, [paper]]);
  });
});

it('an acceptance of no place is a finding', async () => {
  const spec = accepted(
    OVERLOADED,
    'capacity/gear-input-torque',
    'because "asked for" by "class surveyor" until 2027-02-20',
  );
  expect(await state(spec, 'capacity/gear-input-torque')).toEqual(['fails', ['fails warning']]);
});

it('is given by whom the workspace lets, and for as long', async () => {
  const clauses =
    'on Centre because "rating asked for" by "class surveyor" dated 2026-02-20 until 2027-02-20';
  const { vessel, catalogue } = (await checkText(accepted(OVERLOADED, 'capacity/gear-input-torque', clauses)))
    .check.vessels[0]!;
  const outcome = (roles: string, longestDays?: number) =>
    judgeVessel(vessel, catalogue, TODAY, RULES, {
      roles: rolesFrom(roles),
      ...(longestDays === undefined ? {} : { longestDays }),
    }).find(one => one.rule === 'capacity/gear-input-torque' && one.subject === 'proposed.Centre')?.outcome;
  expect(outcome('')).toBe('accepted');
  expect(outcome('rotation/ flag surveyor')).toBe('accepted');
  expect(outcome('capacity/ class surveyor, gear maker')).toBe('accepted');
  expect(outcome('capacity/ gear maker')).toBe('fails');
  expect(outcome('capacity/ gear maker; class surveyor')).toBe('fails');
  expect(outcome('class surveyor')).toBe('accepted');
  expect(outcome('', 365)).toBe('accepted');
  expect(outcome('', 180)).toBe('fails');
});

it.each([
  ['90 days', 90],
  ['18 months', 558],
  ['1 year', 366],
  ['soon', undefined],
  ['', undefined],
])('a time of %s is read as days', (written, days) => {
  expect(daysFrom(written)).toBe(days);
});

describe('an acceptance of one part', () => {
  const RULE = 'capacity/coupling-torque';
  const GEAR = '      gear Alder-63 ratio 2.04:1 ahead clutch B';
  const entry = (name: string) => `coupling ${name} { kind flexible  torque at most 90 N.m }\n`;
  const by = 'because "watched at every haul-out" by "class surveyor" dated 2026-02-20 until 2027-02-20';
  const spec = `${entry('Elm-4')}${entry('Elm-6')}${changed(SINGLE_LINE, [
    GEAR,
    `${GEAR}\n      coupling Elm-4\n      coupling Elm-6`,
  ])}`;
  const outcomesWith = async (on: string) =>
    (await verdictsBy(accepted(spec, RULE, `on ${on} ${by}`), RULE)).map(one => one.outcome);

  it('leaves another one of its kind in the same line as it is', async () => {
    expect((await verdictsBy(spec, RULE)).map(one => one.outcome)).toEqual(['fails', 'fails']);
    expect(await outcomesWith('Centre.Elm-4')).toEqual(['accepted', 'fails']);
    expect(await outcomesWith('Centre.Elm-6')).toEqual(['fails', 'accepted']);
  });

  it('says how many failures it covers where it covers several', async () => {
    expect(await outcomesWith('Centre')).toEqual(['accepted', 'accepted']);
    const [one] = await verdictsBy(accepted(spec, RULE, `on Centre ${by}`), RULE);
    expect(one!.message).toContain('covers 2 failures');
  });
});
