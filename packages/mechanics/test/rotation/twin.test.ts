import { type TwinLine, twinCombinations } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';

const gear = (aheadB: 'continuous' | 'never' | undefined): TwinLine['clutches'] => [
  { name: 'A', factor: 1, ahead: 'continuous' },
  { name: 'B', factor: -1, ahead: aheadB },
];
const line = (side: 'port' | 'starboard', more: Partial<TwinLine> = {}): TwinLine => ({
  side,
  engine: -1,
  clutches: gear('continuous'),
  clutch: side === 'port' ? 'A' : 'B',
  hand: side === 'port' ? 'left' : 'right',
  ...more,
});

describe('twin combinations', () => {
  it('lists each clutch pair once when both sides have the same machinery, the spec as written first', () => {
    const { combinations, missing } = twinCombinations(line('port'), line('starboard'));
    expect(missing).toEqual([]);
    expect(combinations).toHaveLength(4);
    expect(combinations[0]).toMatchObject({ pair: 'outward', allowed: 'yes', costs: [] });
    expect(combinations.map(one => [one.port.clutch, one.starboard.clutch, one.pair])).toEqual(
      expect.arrayContaining([
        ['A', 'B', 'outward'],
        ['B', 'A', 'inward'],
        ['A', 'A', 'same hand'],
        ['B', 'B', 'same hand'],
      ]),
    );
  });

  it('puts what a never-ahead clutch would need last, and offers the hand instead', () => {
    const clutches = gear('never');
    const { combinations } = twinCombinations(line('port', { clutches }), line('starboard', { clutches }));
    expect(combinations[0]).toMatchObject({ pair: 'same hand', allowed: 'yes' });
    expect(combinations[0]!.costs.map(cost => cost.what)).toEqual(['clutch', 'hand', 'turning']);
    expect(combinations.filter(one => one.allowed === 'no')).toHaveLength(3);
  });

  it('does not take silence for permission', () => {
    const clutches = gear(undefined);
    const { combinations } = twinCombinations(line('port', { clutches }), line('starboard', { clutches }));
    expect(combinations.find(one => one.starboard.clutch === 'B' && one.port.clutch === 'A')!.allowed).toBe(
      'cannot tell',
    );
  });

  it('swaps sides only where that makes a difference', () => {
    const only = (factor: 1 | -1): TwinLine['clutches'] => [{ name: 'A', factor, ahead: 'continuous' }];
    const { combinations } = twinCombinations(
      line('port', { engine: -1, clutches: only(1), clutch: 'A' }),
      line('starboard', { engine: 1, clutches: only(1), clutch: 'A' }),
    );
    expect(combinations).toHaveLength(2);
    expect(combinations[0]).toMatchObject({ pair: 'outward', costs: [] });
    expect(combinations[1]!.costs.map(cost => cost.text)).toEqual([
      'port and starboard machinery change places',
      'port propeller becomes right-hand',
      'starboard propeller becomes left-hand',
      'propellers turn inward instead of outward',
    ]);
  });

  it('offers the other rotation of an engine that can be had either way', () => {
    const one: TwinLine['clutches'] = [{ name: 'A', factor: -1, ahead: 'continuous' }];
    const port = line('port', { clutches: one, clutch: 'A', eitherRotation: true });
    const starboard = line('starboard', { clutches: one, clutch: 'A', eitherRotation: true });
    const outward = twinCombinations(port, starboard).combinations.find(each => each.pair === 'outward')!;
    expect(outward.costs.map(cost => cost.text)).toEqual(['port engine turns the other way']);
  });

  it('gives both propellers a hand that drives ahead, always', () => {
    for (const engines of [
      [1, 1],
      [1, -1],
      [-1, 1],
      [-1, -1],
    ] as const) {
      const { combinations } = twinCombinations(
        line('port', { engine: engines[0] }),
        line('starboard', { engine: engines[1] }),
      );
      for (const one of combinations) {
        for (const side of [one.port, one.starboard]) {
          expect(side.hand === 'right' ? 1 : -1).toBe(side.shaftAhead);
          // Outward means right-hand to starboard, left-hand to port.
          expect(side.turning === 'outward').toBe((side.side === 'starboard') === (side.hand === 'right'));
        }
      }
    }
  });

  it('says what is missing instead of listing half the combinations as all', () => {
    const result = twinCombinations(
      line('port', { engine: undefined }),
      line('starboard', { clutches: [{ name: 'A', factor: undefined, ahead: undefined }] }),
    );
    expect(result.combinations).toEqual([]);
    expect(result.missing).toEqual([
      'sense of the port engine',
      'output sense of clutch A on the starboard side',
    ]);
  });
});
