import { applyEdits } from '@tailshaft/language';
import { expect, it } from 'vitest';
import { FRESH } from './fresh-vessels.js';
import { offeredFor } from './offered.js';

/** A mark says how a figure is known: one that nobody has measured yet has none. */
it.each([
  ['shaft diameter', 'diameter 45 mm', 'diameter 28 mm [measured 2026-01-10]'],
  ['pitch', 'pitch 17.5 in', 'pitch 23 in [drawing "S-201 rev C"]'],
  ['hand', 'hand right', 'hand left [measured 2026-01-10]'],
  ['clutch', 'ahead clutch A', 'ahead clutch B [plate]'],
] as const)('takes the mark of a %s with its value away', async (_, right, wrong) => {
  expect(FRESH.leg).toContain(right);
  const text = FRESH.leg.replace(right, wrong);
  const mark = wrong.slice(wrong.indexOf('['));
  const offered = (await offeredFor(text)).flatMap(one => one.cures);
  expect(offered.length).toBeGreaterThan(0);
  for (const one of offered) {
    const after = applyEdits(text, one.edits);
    if (!after.includes(wrong)) expect([one.title, after.includes(mark)]).toEqual([one.title, false]);
  }
  expect(offered.some(one => !applyEdits(text, one.edits).includes(wrong))).toBe(true);
});

it('says the pump setting from where the other was seen', async () => {
  const text = FRESH['V-drives'].replace(
    'gear ahead clutch B { pump set for standard',
    'gear ahead clutch B { pump set for opposite',
  );
  const [first] = (await offeredFor(text)).find(one => one.finding.code === 'rotation/pump-index')!.cures;
  expect(applyEdits(text, first!.edits)).toBe(FRESH['V-drives']);
});

/** What was found aboard is a record: another shaft or propeller is written where it is proposed. */
it('designs nothing anew in the arrangement as found', async () => {
  const found = FRESH.leg.replace('diameter 45 mm', 'diameter 28 mm').replace('pitch 17.5 in', 'pitch 23 in');
  const text = found.replace(
    /\n {2}criteria/,
    `
  arrangement later revises built {
    shaftline Centre {
      retain engine
      retain gear
      replace shaft { material bar-stainless  diameter 45 mm  length 0.3 m }
      replace propeller { hand right  blades 4  diameter 17 in  pitch 17.5 in  area ratio 0.75  cup none }
    }
  }

  criteria`,
  );
  const failing = (await offeredFor(text)).filter(one => one.finding.verdict?.asFound);
  expect(failing.map(one => one.finding.code).sort()).toEqual([
    'propeller/absorbed-power',
    'shafting/diameter',
  ]);
  expect(failing.flatMap(one => one.cures.map(cure => cure.title))).toEqual([]);
});
