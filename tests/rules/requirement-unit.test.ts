import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';

const spec = (requirement: string) =>
  `vessel Testcraft {\n  arrangement proposed { shaftline Centre { engine { flywheel aft } } }\n  ${requirement}\n}`;

describe.each([
  ['require speed at least 8 at full power', 'units/miles', '8'],
  ['require speed at least 8 miles at full power', 'units/miles', '8 miles'],
  ['require speed at most 5 kW at idle ahead', 'units/miles', '5 kW'],
  ['require trolling speed at most 2', 'units/miles', '2'],
  ['require shaft torque at most 2600', 'units/torque-unit', '2600'],
  ['require shaft speed at most 900 at rated power', 'units/unit-needed', '900'],
  ['require bollard thrust at least 4 tonf', 'units/unit-needed', '4 tonf'],
])('%s', (requirement, code, on) => {
  it('is an error at its number and nothing holds or fails by it', async () => {
    const { findings, text, check } = await checkText(spec(requirement));
    const found = findings.filter(one => one.code === code);
    expect(found.map(one => [one.verdict?.severity, text.slice(one.place.start, one.place.end)])).toEqual([
      ['error', on],
    ]);
    expect(findings.map(one => one.code)).not.toContain('trace/requirement-unverified');
    const judged = check.vessels[0]!.verdicts.filter(one =>
      [
        'trace/requirement-met',
        'trace/requirement-unverified',
        'speed/idle-in-gear',
        'speed/slow-running',
      ].includes(one.rule),
    );
    expect(judged.map(one => one.outcome).filter(one => one !== 'cannot tell')).toEqual([]);
  });
});

it('leaves a share without a sign as it is: a ratio needs no unit', async () => {
  const { findings } = await checkText(spec('require propeller demand at most 0.95'));
  expect(findings.filter(one => one.code.startsWith('units/'))).toEqual([]);
});
