import { expect, it } from 'vitest';
import { IN_NOZZLE } from '../../packages/drivetrain/src/rules/propeller/example-place.js';
import { changed, verdictsBy } from '../silence/top-list/spec-of.js';

const HULL = `hull displacement {
    resistance 2 kN at 5 kn
    resistance 9 kN at 8 kn
    resistance 22 kN at 10 kn
    resistance 60 kN at 13 kn
    wake fraction 0.15
    thrust deduction 0.18
  }
  criteria { blade area by Keller }
  require bollard thrust at least 1 kN
  arrangement proposed {`;
/** The line of the rule, with a hull, a requirement at rest and a thrust bearing that all want the propeller. */
const TUG = changed(
  IN_NOZZLE,
  ['arrangement proposed {', HULL],
  ['  slip device offered\n', '  slip device offered\n  thrust at most 60 kN\n'],
  ['nozzle gap 4 mm', 'nozzle gap 4 mm  shaft depth 1.2 m'],
);
const SPEED = ['propeller/absorbed-power', 'trace/requirement-met', 'shafting/thrust-capacity'];
const outcomes = async (spec: string, rule: string) => (await verdictsBy(spec, rule)).map(one => one.outcome);

it('a propeller in nozzle 19A is computed at speed, at rest and on its bearing, and each says whose figures they are', async () => {
  for (const rule of SPEED) {
    const verdicts = await verdictsBy(TUG, rule);
    expect(
      verdicts.map(one => ['holds', 'fails'].includes(one.outcome)),
      rule,
    ).not.toContain(false);
    expect(verdicts.map(one => one.message).join(' '), rule).toMatch(/Ka polynomials/);
  }
});

it.each([
  ['nozzle 37', [['nozzle N19A', 'nozzle N37']]],
  ['another nozzle', [['nozzle N19A', 'nozzle other']]],
  ['a nozzle that nobody knows', [['nozzle N19A', 'nozzle unknown']]],
  ['a series of open propellers', [['nozzle N19A', 'series Wageningen B  nozzle N19A']]],
  ['blades that were not tested', [['area ratio 0.70', 'area ratio 0.55']]],
  ['Ka blades without a nozzle', [['nozzle N19A  nozzle gap 4 mm', 'series Ka']]],
] as [string, [string, string][]][])('of %s nothing is told at speed', async (_, edits) => {
  expect(await outcomes(changed(TUG, ...edits), 'propeller/absorbed-power')).toEqual(['cannot tell']);
});

it.each([
  ['nozzle 37', ['nozzle N19A', 'nozzle N37']],
  ['a nozzle that nobody knows', ['nozzle N19A', 'nozzle unknown']],
] as [string, [string, string]][])('of %s nothing is told at rest either', async (_, edit) => {
  const spec = changed(TUG, edit);
  for (const rule of SPEED) expect(await outcomes(spec, rule), rule).toEqual(['cannot tell']);
});

it('the blade area is not judged by a criterion of open propellers', async () => {
  expect(await outcomes(TUG, 'propeller/blade-area')).toEqual(['cannot tell']);
});

it('the room to the hull is that of the nozzle, and the gap inside it is judged', async () => {
  expect(
    await outcomes(
      changed(TUG, ['nozzle N19A', 'axis to hull 400 mm  nozzle N19A']),
      'propeller/tip-clearance',
    ),
  ).toEqual(['does not apply']);
  expect(await outcomes(TUG, 'propeller/nozzle-gap')).toEqual(['holds']);
});

it('the shaft gets half of the thrust at rest, and the vessel the whole', async () => {
  const [pull] = await verdictsBy(TUG, 'trace/requirement-met');
  const [bearing] = await verdictsBy(TUG, 'shafting/thrust-capacity');
  const share = bearing!.demand!.si / pull!.capacity!.si;
  // The bearing is judged at rated power and the pull with what the engine gives when the propeller holds it down.
  expect(share).toBeGreaterThan(0.45);
  expect(share).toBeLessThan(0.7);
});
