import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from '../../support/check.js';
import { changed, verdictsBy } from './spec-of.js';

/** The engine's torque is too much for the gear; a small motor stands beside it. */
const OVERLOADED = changed(SINGLE_LINE, ['rated medium 0.18 kW/rpm', 'rated medium 0.09 kW/rpm']);
const MOTOR = 'motor Eider-40 { power 40 kW at 3000 rpm  torque 130 N.m }\n';
const HYBRID = `${MOTOR}${changed(OVERLOADED, ['      gear Alder-63 ratio', '      motor Eider-40\n      gear Alder-63 ratio'])}`;
const STRENGTH = ['capacity/gear-input-torque', 'rotation/propeller-hand', 'shafting/diameter'];

describe('an engine and a motor in one line', () => {
  it('fail and hold nothing that rests on either of them', async () => {
    expect((await verdictsBy(OVERLOADED, STRENGTH[0]!))[0]?.outcome).toBe('fails');
    for (const rule of STRENGTH) {
      const [verdict] = await verdictsBy(HYBRID, rule);
      expect([rule, verdict?.outcome]).toEqual([rule, 'cannot tell']);
      expect(verdict?.message).toContain('which of engine Kittiwake-9 and motor Eider-40 drives Centre');
    }
  });

  it('is itself told', async () => {
    const { findings } = await checkText(HYBRID);
    expect(findings.map(one => one.code)).toContain('interface/load-path');
  });
});

it.each([
  ['engine Kittiwake-9 at medium { flywheel aft }', 'capacity/gear-input-torque'],
  ['gear Alder-63 ratio 2.52:1 ahead clutch A', 'rotation/propeller-hand'],
  ['propeller { hand left  diameter 20 in }', 'rotation/propeller-hand'],
])('a second part of a line is refused, and nothing rests on the first: %s', async (statement, rule) => {
  const spec = changed(SINGLE_LINE, [
    '      gear Alder-63 ratio',
    `      ${statement}\n      gear Alder-63 ratio`,
  ]);
  const { findings } = await checkText(spec);
  const refused = findings.filter(one => one.code === 'interface/load-path');
  expect(refused.map(one => [one.severity, one.verdict?.outcome])).toEqual([['error', 'fails']]);
  expect((await verdictsBy(spec, rule)).map(one => one.outcome)).toEqual(['cannot tell']);
});

describe('a box between propeller and gear', () => {
  const boxed = (thrust: string) => `transfer Chain-12 {
  kind chain
  layout parallel
  exact 1:1
  output same
  torque at most 4000 N.m
${thrust}}
${changed(
  SINGLE_LINE,
  ['  input housing SAE-3\n', '  input housing SAE-3\n  thrust at most 60 kN\n'],
  ['      shaft {', '      transfer Chain-12\n      shaft {'],
)}`;
  const outcome = async (thrust: string) =>
    (await verdictsBy(boxed(thrust), 'shafting/thrust-capacity')).map(one => one.outcome);

  it('that states no thrust rating does not hold by the rating of what stands ahead of it', async () => {
    expect(await outcome('')).toEqual(['cannot tell']);
    expect(await outcome('  thrust at most unknown\n')).toEqual(['cannot tell']);
    expect(await outcome('  thrust at most 60 kN\n')).toEqual(['holds']);
    expect(await outcome('  thrust at most 10 kN\n')).toEqual(['fails']);
  });
});
