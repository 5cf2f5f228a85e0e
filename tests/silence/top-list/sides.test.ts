import { describe, expect, it } from 'vitest';
import { TWIN_LINES } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { checkText } from '../../support/check.js';
import { changed, verdictsBy, withStatements } from './spec-of.js';

const OUTWARD = withStatements(TWIN_LINES, '  require propellers turn outward');
const INWARD = [
  ['ahead clutch A', 'ahead clutch X'],
  ['ahead clutch B', 'ahead clutch A'],
  ['ahead clutch X', 'ahead clutch B'],
  ['hand left', 'hand other'],
  ['hand right', 'hand left'],
  ['hand other', 'hand right'],
] as const;

describe('the sides of a pair', () => {
  it.each([
    ['both to port', 'shaftline Starboard {', 'shaftline Starboard {\n      side port'],
    ['one amidships', 'shaftline Starboard {', 'shaftline Centre {'],
  ])('%s: how they turn cannot be told', async (_what, from, to) => {
    const spec = changed(OUTWARD, [from, to]);
    for (const rule of ['rotation/turning-requirement', 'rotation/inward-turning'])
      expect((await verdictsBy(OUTWARD, rule)).map(one => one.outcome)).toEqual(['holds']);
    const { check } = await checkText(spec);
    const told = check.vessels[0]!.verdicts.flatMap(one => [one, ...(one.folds ?? [])]);
    for (const rule of ['rotation/turning-requirement', 'rotation/inward-turning'])
      expect(told.filter(one => one.rule === rule).map(one => one.outcome)).toEqual(['cannot tell']);
  });

  it('a reason of no words is none', async () => {
    const spec = changed(changed(TWIN_LINES, ...INWARD), [
      '  arrangement proposed {',
      '  arrangement proposed {\n    reason for inward turning "  "',
    ]);
    expect((await verdictsBy(spec, 'rotation/inward-turning')).map(one => one.outcome)).toEqual(['fails']);
  });
});
