import { expect, it } from 'vitest';
import { changed, REPOWER, verdictsBy, withStatements } from './spec-of.js';

/** 15 % of 26 in is 99 mm, of 27 in 103 mm. */
const CLEAR = withStatements(
  changed(REPOWER, [
    'area ratio 0.72 }',
    'area ratio 0.72  tip clearance 102 mm [measured]  rudder clearance 130 mm [measured] }',
  ]),
  '  criteria { tip clearance at least 15 %  rudder clearance at least 12 % }',
);
const modified = (facts: string) => changed(CLEAR, ['retain propeller', `modify propeller { ${facts} }`]);
const verdict = async (spec: string, rule: string) => (await verdictsBy(spec, rule))[0];

it('holds as long as the propeller is the one that it was measured with', async () => {
  expect((await verdict(CLEAR, 'propeller/tip-clearance'))?.outcome).toBe('holds');
  expect((await verdict(modified('material bronze'), 'propeller/tip-clearance'))?.outcome).toBe('holds');
});

it('of a tip is worked out anew for another diameter: half the change', async () => {
  // 102 mm less half of an inch is 89.3 mm, which is 13 % of 27 in.
  const larger = await verdict(modified('diameter 27 in'), 'propeller/tip-clearance');
  expect(larger?.outcome).toBe('fails');
  expect(larger?.capacity?.si).toBeCloseTo(0.102 - 0.0127, 4);
  // Said anew, it counts as said.
  const said = await verdict(
    modified('diameter 27 in  tip clearance 104 mm [measured]'),
    'propeller/tip-clearance',
  );
  expect(said?.outcome).toBe('holds');
});

it('of which nothing follows by itself is unknown, and says with what it was measured', async () => {
  const rudder = (await verdictsBy(modified('diameter 27 in'), 'propeller/other-clearances'))[0];
  expect(rudder?.outcome).toBe('cannot tell');
  expect(rudder?.missing[0]?.what).toContain('measured with diameter 26 in, which is 27 in now');
});

it('lapses in a later step too, and stays worked out', async () => {
  const later = withStatements(
    modified('diameter 27 in'),
    '  arrangement painted revises proposed { shaftline Centre { retain engine  retain gear  retain shaft  retain propeller } }',
  );
  const [verdict] = await verdictsBy(later, 'propeller/tip-clearance', 'painted');
  expect(verdict?.outcome).toBe('fails');
});
