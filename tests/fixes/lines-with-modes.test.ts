import type { Offer } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { HYBRID } from '../../packages/drivetrain/src/rules/hybrid-specs.js';
import { changed } from '../silence/top-list/spec-of.js';
import { checkText } from '../support/check.js';
import { faultsOf } from './apply.js';
import { offeredFor } from './offered.js';

const ENGINE = '      engine Kittiwake-9 at medium { flywheel aft }\n';

/** Two engines of one sort on a gear that they drive by turns. */
const BY_TURNS = changed(
  SINGLE_LINE,
  [ENGINE, `${ENGINE}${ENGINE}`],
  [
    'ahead clutch B\n',
    `ahead clutch B
      mode passage { driven by first engine }
      mode harbour { driven by second engine }
`,
  ],
);

/** What is wrong, and with which rule. */
const MISTAKES = [
  ['shafting/diameter', ['diameter 65 mm', 'diameter 45 mm']],
  ['capacity/gear-input-torque', [/rated medium 0\.\d+ kW/, 'rated medium 0.12 kW']],
  ['speed/gear-input-maximum', ['input speed at most 3000 rpm', 'input speed at most 2400 rpm']],
  ['capacity/engine-duty', ['hours 3000 per year', 'hours 500 per year']],
  ['capacity/engine-duty', ['duty medium {', 'duty heavy {']],
] as const;

describe('a line that has modes', () => {
  for (const [name, spec] of [
    ['an engine and a motor', HYBRID],
    ['an engine and a motor behind the gear', motorBehind()],
    ['two engines by turns', BY_TURNS],
    ['two engines by turns and together', changed(BY_TURNS, ['second engine }', 'both engines }'])],
  ] as const)
    for (const [rule, [from, to]] of MISTAKES)
      it(`offers a way out of ${rule} (${to}) with ${name}`, async () => {
        const text = spec.replace(from, to);
        expect(text).not.toBe(spec);
        expect(await curesOf(text, rule)).not.toEqual([]);
      });
});

it('finds a motor that the engine may turn along', async () => {
  const cures = await curesOf(
    changed(HYBRID, ['top speed 2950 rpm', 'top speed 2400 rpm']),
    'speed/mover-turned-along',
  );
  expect(cures.map(one => one.title)).toEqual([
    expect.stringMatching(/^Fit a motor like Eider-40 with top speed 2[56]\d0 rpm \(margin/),
  ]);
});

function motorBehind(): string {
  const motor = '      motor Eider-40\n';
  return changed(
    changed(HYBRID, [motor, '']),
    ['ahead clutch B\n      mode', `ahead clutch B\n${motor}      mode`],
    ['top speed 2950 rpm', 'top speed 2000 rpm'],
  );
}

/** The ways out of each failure of a rule, each of which keeps its promise; there is one for each. */
async function curesOf(text: string, rule: string): Promise<Offer[]> {
  const before = await checkText(text);
  const found = (await offeredFor(text)).filter(
    one => one.finding.code === rule && one.finding.verdict?.outcome === 'fails',
  );
  expect(found).not.toEqual([]);
  for (const one of found) {
    expect(one.cures.map(cure => cure.title)).not.toEqual([]);
    for (const cure of one.cures) expect(await faultsOf(before, one, cure)).toEqual([]);
  }
  return found.flatMap(one => one.cures);
}
