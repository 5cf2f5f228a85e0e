import { analysesOf, findRule, lineFigures } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { checkText } from './support/check.js';

async function figures(text: string): Promise<ReadonlyMap<string, number>> {
  const { vessel } = (await checkText(text)).check.vessels[0]!;
  const line = vessel.arrangements.at(-1)!.lines[0]!;
  return new Map(lineFigures(analysesOf(vessel)(line)).map(one => [one.label, one.si]));
}
const passing = (rule: string) => findRule(rule)!.examples().passing;

/** By hand, beside each: 286 kW (383.5 hp) at 1125.8 rpm, 30 in by 27 in at apparent slip 0.2362; the 65 mm shaft turns up to 1238 rpm. */
it.each([
  [
    'pitch for that speed at the expected slip',
    'propeller/absorbed-power',
    27.88 * 0.0254,
    '27 (1 − 0.2362)/(1 − 0.2603) in',
  ],
  [
    'diameter for that power and shaft speed, handbook',
    'propeller/absorbed-power',
    30.7 * 0.0254,
    '632.7 × 383.5^0.2 / 1125.8^0.6 in',
  ],
  [
    'bollard thrust by momentum theory, upper bound',
    'propeller/absorbed-power',
    42_450,
    '∛(π/2 × 1025 × 0.762² × 286000²) N',
  ],
  ['bollard thrust, handbook', 'propeller/absorbed-power', 27_770, '62.72 (383.5 × 2.5)^0.67 lbf'],
  [
    'bearing span that whirls at the greatest shaft speed',
    'shafting/bearing-span',
    2.473,
    '1.45 m √(3603/1238)',
  ],
  ['longest bearing span by class, from memory', 'shafting/bearing-span', 1.1915, '5200 √(65/1238) mm'],
] as const)('%s', async (label, rule, expected, byHand) => {
  expect((await figures(passing(rule))).get(label)! / expected, byHand).toBeCloseTo(1, 2.5);
});

it('says up to which speed a motor gives its torque, where its sheet does not', async () => {
  const text = passing('capacity/motor-equivalent').replace(/^ *base speed .*\n/m, '');
  const [, power] = / power ([\d.]+) kW/.exec(text) ?? [];
  const [, torque] = / torque ([\d.]+) N\.m/.exec(text) ?? [];
  const speed = (await figures(text)).get('base speed of a motor');
  expect(speed).toBeCloseTo((Number(power) * 1000) / Number(torque), 1);
});

it('holds a nozzle to its own bound, the cube root of two above', async () => {
  const open = passing('propeller/absorbed-power');
  const label = 'bollard thrust by momentum theory, upper bound';
  const ducted = open.replace('cup none', 'cup none  series Ka  nozzle N19A');
  const [one, other] = [await figures(open), await figures(ducted)];
  expect(other.get(label)!).toBeGreaterThan(one.get(label)!);
  expect(other.has('bollard thrust, handbook')).toBe(false);
});
