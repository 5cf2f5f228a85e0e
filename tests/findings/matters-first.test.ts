import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { byGravity } from '@tailshaft/drivetrain';
import { findingsOf } from '@tailshaft/language';
import { expect, it } from 'vitest';
import { FRESH } from '../fixes/fresh-vessels.js';
import { applied } from '../support/changed-example.js';
import { checkText } from '../support/check.js';

const TERNHAVEN = 'pilot-cutter/ternhaven.shaft';
const TEXT = readFileSync(join(import.meta.dirname, '../../examples', TERNHAVEN), 'utf8');

function broken(changes: readonly (readonly [string, string])[]): ReturnType<typeof applied> {
  const text = changes.reduce((all, [from, to]) => all.replace(from, to), TEXT);
  expect(text).not.toBe(TEXT);
  return applied(TERNHAVEN, text);
}

it.each([
  [
    'a wrong hand',
    [['      propeller hand right\n', '      propeller hand left\n']],
    'rotation/propeller-hand',
    1,
  ],
  [
    'a ratio that overloads the gear and slows the vessel',
    [['2.04:1 ahead', '2.52:1 ahead']],
    'capacity/gear-input-torque',
    2,
  ],
  ['a ratio written the wrong way round', [['2.04:1 ahead', '1:2.04 ahead']], 'ratio/not-offered', 3],
  ['inches written as millimetres', [['diameter 2 1/4 in', 'diameter 2.25 mm']], 'text/out-of-range', 1],
] as const)('what matters stands first, and once: %s', async (_what, changes, code, errors) => {
  const { check } = await broken(changes);
  const findings = findingsOf(check).filter(one => one.severity === 'error');
  const order = [...findings].sort((one, other) =>
    one.verdict && other.verdict
      ? byGravity(one.verdict, other.verdict)
      : Number(one.verdict !== undefined) - Number(other.verdict !== undefined),
  );
  expect(order.map(one => one.code)[0]).toBe(code);
  expect(order.length).toBeLessThanOrEqual(errors);
  // What fails for a slip of the pen is told under it, and lost nowhere.
  const folded = (order[0]?.folded ?? []).map(one => one.code);
  if (code === 'text/out-of-range')
    expect(folded).toEqual(expect.arrayContaining(['shafting/bearing-span', 'shafting/material-changed']));
});

it('offers a ratio that is written the wrong way round as the gear has it', async () => {
  const { check } = await broken([['2.04:1 ahead', '1:2.04 ahead']]);
  const finding = findingsOf(check).find(one => one.code === 'ratio/not-offered');
  expect(finding?.verdict?.routes()[0]?.title).toMatch(/^Use 2.04:1, the same turned round/);
});

it('tells a propeller that loads the engine before a ratio that is rounded, both warnings', async () => {
  const text = FRESH.tug
    .replace('ratio 4.037:1 ahead', 'ratio 4:1 ahead')
    .replace('pitch 1110 mm', 'pitch 1250 mm');
  const { findings } = await checkText(text);
  const told = findings
    .filter(one => one.severity === 'warning')
    .sort((a, b) => byGravity(a.verdict!, b.verdict!));
  expect(told.map(one => one.code)).toEqual(['propeller/absorbed-power', 'ratio/nominal-for-exact']);
});

it('names no figure that is far from what stands there beside one that is near', async () => {
  const { findings } = await checkText(FRESH.leg.replace('diameter 45 mm', 'diameter 28 mm'));
  const { verdict } = findings.find(one => one.code === 'shafting/diameter')!;
  expect(verdict!.needed!.length).toBeGreaterThan(1);
  expect(verdict!.message).toMatch(/ This meets it: shaft diameter at least 36\.8 mm\.$/);
});

it('wants no other diameter where the gap was measured with the one there is', async () => {
  const { findings } = await checkText(FRESH.tug.replace('nozzle gap 8 mm', 'nozzle gap 20 mm'));
  const { verdict } = findings.find(one => one.code === 'propeller/nozzle-gap')!;
  expect(verdict!.needed!.map(one => one.quantity)).toEqual(['propeller nozzle gap']);
});

it.each([
  ['clutch A', 'left'],
  ['clutch B', 'right'],
])('says which hand the other clutch would need by how the shaft turns: %s', async (clutch, other) => {
  const never = FRESH.hybrid
    .replaceAll('ahead continuous', 'ahead never')
    .replace('ahead clutch A', `ahead ${clutch}`);
  for (const text of [never, never.replace('hand right', 'hand left')]) {
    const { findings } = await checkText(text);
    const { message } = findings.find(one => one.code === 'rotation/ahead-clutch')!;
    expect(message).toMatch(new RegExp(`turns the shaft the other way needs a ${other}-hand propeller\\.$`));
  }
});
