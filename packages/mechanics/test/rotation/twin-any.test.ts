import { type Hand, type TwinChoice, type TwinLine, twinCombinations } from '@tailshaft/mechanics';
import fc from 'fast-check';
import { expect, it } from 'vitest';

/* Any two lines, by what a combination is: every choice of machinery, rotation and clutch once, and what it changes. */

const sense = fc.constantFrom(1 as const, -1 as const);
const clutch = fc.record({
  factor: fc.option(sense, { nil: undefined, freq: 8 }),
  ahead: fc.constantFrom('continuous' as const, 'never' as const, undefined),
});
const line = (side: 'port' | 'starboard') =>
  fc
    .record({
      engine: fc.option(sense, { nil: undefined, freq: 12 }),
      eitherRotation: fc.boolean(),
      clutches: fc.array(clutch, { maxLength: 2 }),
      clutch: fc.constantFrom('A', 'B', undefined),
      hand: fc.constantFrom<Hand | undefined>('left', 'right', undefined),
    })
    .map(
      (one): TwinLine => ({
        ...one,
        side,
        clutches: one.clutches.map((each, at) => ({ ...each, name: 'AB'[at]! })),
      }),
    );

const RANK = { yes: 0, 'cannot tell': 1, no: 2 };
const WORDS = { outward: 'outward', inward: 'inward', 'same hand': 'the same way' };
const pairOf = (port: Hand, starboard: Hand) => {
  if (port === starboard) return 'same hand' as const;
  return starboard === 'right' ? ('outward' as const) : ('inward' as const);
};

it('lists every combination once, what each changes, the allowed and cheapest first', () => {
  let seen = 0;
  fc.assert(
    fc.property(line('port'), line('starboard'), fc.boolean(), (port, other, alike) => {
      const starboard: TwinLine = alike ? { ...port, side: 'starboard', hand: other.hand } : other;
      const lines = { port, starboard };
      const { combinations, missing } = twinCombinations(port, starboard);
      seen += combinations.length;

      const known = (one: TwinLine) =>
        one.engine ? one.clutches.filter(each => each.factor).length * (one.eitherRotation ? 2 : 1) : 0;
      const shape = ({ engine, eitherRotation, clutches }: TwinLine) =>
        JSON.stringify([engine, eitherRotation, clutches]);
      const plain = known(port) * known(starboard);
      expect(combinations).toHaveLength(shape(port) === shape(starboard) ? plain : 2 * plain);
      const keys = combinations.map(one =>
        JSON.stringify([one.port, one.starboard].map(c => [c.machineryOf, c.engine, c.clutch])),
      );
      expect(new Set(keys).size).toBe(keys.length);

      for (const { port: p, starboard: s, pair, allowed, costs } of combinations) {
        expect(pair).toBe(pairOf(p.hand, s.hand));
        const permissions = [p.permission, s.permission];
        const silent = permissions.includes(undefined) ? 'cannot tell' : 'yes';
        expect(allowed).toBe(permissions.includes('never') ? 'no' : silent);
        const swapped = p.machineryOf === 'starboard';
        expect(s.machineryOf).toBe(swapped ? 'port' : 'starboard');
        const changes = ({ side, machineryOf, engine, clutch, hand }: TwinChoice) => {
          const machinery = lines[machineryOf];
          return [
            ...(engine === machinery.engine ? [] : [`${side} engine turns the other way`]),
            ...(machinery.clutch === undefined || clutch === machinery.clutch
              ? []
              : [`${side} runs ahead on clutch ${clutch} instead of ${machinery.clutch}`]),
            ...(lines[side].hand === undefined || lines[side].hand === hand
              ? []
              : [`${side} propeller becomes ${hand}-hand`]),
          ];
        };
        const was = port.hand && starboard.hand && pairOf(port.hand, starboard.hand);
        expect(costs.map(one => one.text)).toEqual([
          ...(swapped ? ['port and starboard machinery change places'] : []),
          ...changes(p),
          ...changes(s),
          ...(was && was !== pair ? [`propellers turn ${WORDS[pair]} instead of ${WORDS[was]}`] : []),
        ]);
        for (const choice of [p, s]) {
          const own = lines[choice.machineryOf].clutches.find(one => one.name === choice.clutch)!;
          expect(choice.shaftAhead).toBe(choice.engine * own.factor!);
          expect(choice.permission).toBe(own.ahead);
        }
      }
      const order = combinations.map(one => 100 * RANK[one.allowed] + one.costs.length);
      expect(order).toEqual([...order].sort((a, b) => a - b));

      for (const one of [port, starboard]) {
        expect(missing.includes(`sense of the ${one.side} engine`)).toBe(!one.engine);
        expect(missing.includes(`clutches of the ${one.side} gear`)).toBe(one.clutches.length === 0);
        for (const each of one.clutches)
          expect(missing.includes(`output sense of clutch ${each.name} on the ${one.side} side`)).toBe(
            !each.factor,
          );
      }
    }),
    { numRuns: 400 },
  );
  expect(seen).toBeGreaterThan(500);
});
