import { describe, expect, it } from 'vitest';
import { changed } from '../silence/top-list/spec-of.js';
import { checkText } from '../support/check.js';
import { joinedExample } from '../support/examples.js';

const SANDWORT = joinedExample('twin-engine/sandwort.shaft');
const TUG = joinedExample('harbour-tug/wrack.shaft');

async function by(spec: string, rule: string) {
  const { check } = await checkText(spec);
  return check.vessels.flatMap(one => one.verdicts).filter(one => one.rule === rule);
}

describe('a propeller whose pitch is set under way', () => {
  it('takes the power of one engine and of both, each at its own pitch', async () => {
    const [absorbed] = await by(SANDWORT, 'propeller/absorbed-power');
    expect(absorbed!.outcome).toBe('holds');
    const [power, available] = absorbed!.workings;
    // Twice 84 kW, or once, through 96 % of the gear.
    expect([1, 2].some(engines => Math.abs(available!.si / (engines * 84_000 * 0.96) - 1) < 1e-6)).toBe(true);
    expect(Math.abs(power!.si / available!.si - 1)).toBeLessThan(3e-3);
    expect(absorbed!.message).toMatch(/Its blades are set to a pitch of [\d.]+ mm\./);
  });

  it('is too light where its range ends before', async () => {
    const short = changed(
      SANDWORT,
      ['pitch 1000 mm', 'pitch 700 mm'],
      ['pitch range 200 mm .. 1700 mm', 'pitch range 200 mm .. 800 mm'],
    );
    const [absorbed] = await by(short, 'propeller/absorbed-power');
    expect([absorbed!.outcome, /too little/.test(absorbed!.message)]).toEqual(['fails', true]);
  });

  it('cannot be told where it would be set lower than the series covers, nor with a range that nobody knows', async () => {
    const large = changed(
      SANDWORT,
      ['diameter 1200 mm', 'diameter 1250 mm'],
      ['ratio 5.39:1 ahead', 'ratio 4.48:1 ahead'],
    );
    const [absorbed] = await by(large, 'propeller/absorbed-power');
    expect([absorbed!.outcome, /below what the series covers/.test(absorbed!.message)]).toEqual([
      'cannot tell',
      true,
    ]);
    const open = changed(SANDWORT, ['pitch range 200 mm .. 1700 mm', 'pitch range unknown']);
    expect((await by(open, 'propeller/absorbed-power')).map(one => one.outcome)).toEqual(['cannot tell']);
  });
});

it('tells no pull astern, in a nozzle or out of it', async () => {
  const asked = (spec: string) =>
    changed(spec, ['  require ', '  require bollard thrust at least 5 kN at full astern\n  require ']);
  for (const [spec, why] of [
    [TUG, /propeller in a nozzle/],
    [
      SANDWORT.replace('        kind controllable pitch\n', '').replace(/ {8}pitch range [^\n]*\n/, ''),
      /open propellers/,
    ],
  ] as const) {
    const found = (await by(asked(spec), 'trace/requirement-met')).filter(one => /astern/.test(one.message));
    expect(found.map(one => [one.outcome, why.test(one.message)])).toEqual([['cannot tell', true]]);
  }
});

describe('figures that would put a check right in several modes', () => {
  it('put it right in all of them', async () => {
    const heavy = SANDWORT.replaceAll('0.046 kW/rpm', '0.04 kW/rpm').replace(
      /(input shaft second \{[^}]*)0\.04 kW\/rpm( \}\n {2}\}\n\}\n)/,
      '$10.03 kW/rpm$2',
    );
    const [verdict] = await by(heavy, 'capacity/gear-input-torque');
    expect(verdict!.outcome).toBe('fails');
    // Of the ratings only the one of its own input stands in the way of each engine: neither alone meets both.
    expect(
      (verdict!.needed ?? []).filter(
        one => /rated/.test(one.property) || /power per speed/.test(one.property),
      ),
    ).toEqual([]);
    // Less peak torque of the one catalogue engine meets both, at what the weaker input takes: 0.03 kW/rpm.
    const torque = verdict!.needed?.find(one => /peak torque/.test(one.quantity));
    if (torque) expect(torque.si).toBeLessThanOrEqual(0.03 * 9549.3 * 1.001);
  });
});
