import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { changed, verdictsBy } from '../silence/top-list/spec-of.js';

const DRIVES =
  '  hull displacement { resistance 3 kN at 8 kn  resistance 9 kN at 12 kn  wake fraction 0.1  thrust deduction 0.1 }';
/** The single line with a leg's two propellers, one behind the other. */
const PAIR = changed(
  SINGLE_LINE,
  [
    'hand right [drawing]',
    'kind counter-rotating pair  hand right  after hand left  after diameter 27 in  after blades 3',
  ],
  ['  slip device offered', '  slip device offered\n  thrust at most 60 kN'],
  ['area ratio 0.72', 'area ratio 0.72  cup none'],
  ['  arrangement proposed', `${DRIVES}\n  arrangement proposed`],
);
const of = async (spec: string, rule: string) => {
  const [verdict, ...others] = await verdictsBy(spec, rule);
  if (!verdict) throw new Error(`no verdict of ${rule}`);
  expect(others).toEqual([]);
  return verdict;
};
const HAND = 'rotation/propeller-hand';

describe('a counter-rotating pair on one leg', () => {
  it.each([
    [
      'is right with the forward one by its shaft and the after one of the other hand',
      [],
      'holds',
      /after one, of the other hand/,
    ],
    [
      'drives astern with its after propeller of the same hand',
      ['after hand left', 'after hand right'],
      'fails',
      /both .* right-hand.* must be left-hand/,
    ],
    [
      'drives astern with both exchanged',
      ['hand right  after hand left', 'hand left  after hand right'],
      'fails',
      /go astern/,
    ],
    [
      'cannot be told without the after hand',
      ['after hand left  ', ''],
      'cannot tell',
      /after one of the pair/,
    ],
    ['fails on the forward hand alone', ['hand right  after hand left', 'hand left'], 'fails', /go astern/],
  ] as const)('%s', async (_, change, outcome, words) => {
    const verdict = await of(change.length > 0 ? changed(PAIR, [change[0]!, change[1]!]) : PAIR, HAND);
    expect(verdict.outcome).toBe(outcome);
    expect(verdict.message).toMatch(words);
  });

  it('is exchanged as a whole where its hands are wrong', async () => {
    const verdict = await of(
      changed(PAIR, ['hand right  after hand left', 'hand left  after hand right']),
      HAND,
    );
    const edits = verdict
      .routes()
      .map(route => route.edits.flatMap(one => ('property' in one ? one.property : [])));
    expect(edits).toContainEqual(['hand', 'after hand']);
  });

  it('is not taken for a single propeller of a series', async () => {
    for (const rule of ['propeller/absorbed-power', 'trace/requirement-met']) {
      const asked = changed(PAIR, [
        '\n  arrangement',
        '\n  require bollard thrust at least 3 kN\n  arrangement',
      ]);
      const verdict = await of(asked, rule);
      expect(verdict.outcome).toBe('cannot tell');
      expect(verdict.missing.map(one => one.what).join()).toMatch(/no published series covers one/);
    }
  });

  it('turns its greater tips at the speed that is judged', async () => {
    const limit = (spec: string) =>
      changed(spec, ['\n  arrangement', '\n  criteria { tip speed at most 60 m/s }\n  arrangement']);
    const tips = async (spec: string) => (await of(limit(spec), 'speed/tip-speed')).demand!.si;
    const single = await tips(PAIR);
    expect(
      (await tips(changed(PAIR, ['after diameter 27 in', 'after diameter 20 in']))) / single,
    ).toBeCloseTo(26 / 27, 9);
    expect((await of(limit(changed(PAIR, ['after diameter 27 in', ''])), 'speed/tip-speed')).outcome).toBe(
      'cannot tell',
    );
  });

  it('loads its thrust bearing by what no disc of its size exceeds', async () => {
    const { demand } = await of(PAIR, 'shafting/thrust-capacity');
    // 300 kW at the crankshaft less the loss of the gear; by hand, ∛(π/2 ρ D² P²).
    const power = 300_000 * 0.97;
    const bound = Math.cbrt((Math.PI / 2) * 1025.9 * (27 * 0.0254) ** 2 * power ** 2);
    expect(demand!.si / bound).toBeCloseTo(1, 3);
  });
});
