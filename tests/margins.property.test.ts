import { RULES } from '@tailshaft/drivetrain';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkText } from './support/check.js';
import { times } from './support/share.js';

const POWER = 'power 300 kW at 2300 rpm';
/** Counts from 1300 N·m on: below that the torque at rated power, 1246 N·m, is the greater. */
const PEAK = 'peak torque 1480 N.m';
const SHAFT = 'diameter 65 mm';
const SCREW = 'blades 4  diameter 26 in';

/** Rule, what stands in its passing example, the number in it that moves, from and to, and what more of it does. */
const MOVES: readonly (readonly [
  rule: string,
  written: string,
  number: string,
  from: number,
  to: number,
  more: 'larger margin' | 'smaller margin',
])[] = [
  ['shafting/diameter', SHAFT, '65', 20, 200, 'larger margin'],
  // Between the powers that the declared peak torque of 1480 N·m at 1500 rpm allows at this speed.
  ['shafting/diameter', POWER, '300', 245, 350, 'smaller margin'],
  ['shafting/diameter', 'torsional yield 70000 psi', '70000', 10_000, 150_000, 'larger margin'],
  ['shafting/diameter', 'factor 5.0', '5.0', 2, 10, 'smaller margin'],
  ['shafting/combined-stress', PEAK, '1480', 1300, 9000, 'smaller margin'],
  ['shafting/bearing-span', SHAFT, '65', 25, 120, 'larger margin'],
  ['shafting/bearing-span', 'high idle 2530 rpm', '2530', 2301, 6000, 'smaller margin'],
  ['shafting/overhang', 'overhang 60 mm', '60', 5, 400, 'smaller margin'],
  ['shafting/propeller-whirl', 'overhang 60 mm', '60', 20, 300, 'smaller margin'],
  ['shafting/key-strength', 'length 5 in', '5', 1, 7, 'larger margin'],
  ['shafting/key-strength', 'height 7/16 in', '7/16', 0.2, 0.6, 'larger margin'],
  ['shafting/key-strength', PEAK, '1480', 1300, 9000, 'smaller margin'],
  ['shafting/coupling-bolts', PEAK, '1480', 1300, 9000, 'smaller margin'],
  ['shafting/thrust-capacity', 'thrust at most 36 kN', '36', 5, 90, 'larger margin'],
  ['capacity/gear-input-torque', 'rated medium 0.18 kW/rpm', '0.18', 0.02, 0.6, 'larger margin'],
  ['capacity/gear-input-torque', PEAK, '1480', 1300, 9000, 'smaller margin'],
  ['capacity/clutch-holding', 'friction 0.1', '0.1', 0.04, 0.14, 'larger margin'],
  ['capacity/clutch-holding', 'oil pressure 20 bar', '20', 5, 30, 'larger margin'],
  ['capacity/clutch-holding', 'outer diameter 160 mm', '160', 120, 200, 'larger margin'],
  ['capacity/clutch-holding', 'spring force 900 N', '900', 0, 9000, 'smaller margin'],
  ['capacity/clutch-holding', PEAK, '1480', 1300, 9000, 'smaller margin'],
  ['capacity/coupling-torque', 'torque at most 3600 N.m', '3600', 500, 9000, 'larger margin'],
  ['capacity/coupling-torque', PEAK, '1480', 1300, 9000, 'smaller margin'],
  ['speed/gear-input-maximum', 'high idle 2530 rpm', '2530', 2301, 6000, 'smaller margin'],
  ['speed/tip-speed', SCREW, '26', 10, 60, 'smaller margin'],
  ['propeller/tip-clearance', SCREW, '26', 10, 30, 'smaller margin'],
  ['propeller/tip-clearance', 'axis to hull 430 mm', '430', 350, 900, 'larger margin'],
  ['propeller/blade-area', 'area ratio 0.9', '0.9', 0.6, 1.0, 'larger margin'],
  ['propeller/blade-area', 'shaft depth 0.7 m', '0.7', 0.3, 4, 'larger margin'],
  ['capacity/engine-duty', 'hours 1500 per year', '1500', 100, 8000, 'smaller margin'],
];

describe('in a whole spec, more of the one leaves more or less of the other', () => {
  it.each(MOVES)(
    '%s: more in "%s" (the %s, from %d to %d) leaves a %s',
    async (id, written, number, from, to, more) => {
      const rule = RULES.find(one => one.id === id)!;
      expect(rule.examples().passing).toContain(written);
      await fc.assert(
        fc.asyncProperty(
          fc.double({ min: 0, max: 0.95, noNaN: true }),
          fc.double({ min: 0.05, max: 1, noNaN: true }),
          async (low, step) => {
            const at = (share: number) => (from + share * (to - from)).toPrecision(6);
            const small = await margins(id, rule.examples().passing, written, number, at(low));
            const large = await margins(
              id,
              rule.examples().passing,
              written,
              number,
              at(Math.min(1, low + step)),
            );
            expect(small.length).toBeGreaterThan(0);
            expect(large).toHaveLength(small.length);
            // Some of several verdicts of one rule may stand on other facts: none may move the wrong way, one must move.
            const moved = large.map((one, index) =>
              more === 'larger margin' ? one - small[index]! : small[index]! - one,
            );
            expect(Math.min(...moved)).toBeGreaterThanOrEqual(0);
            expect(Math.max(...moved)).toBeGreaterThan(0);
          },
        ),
        { numRuns: times(5, 25) },
      );
    },
  );
});

/** Margins that a rule finds in a spec in which one number of one fact is another. */
async function margins(
  id: string,
  spec: string,
  written: string,
  number: string,
  other: string,
): Promise<number[]> {
  const { check } = await checkText(spec.replaceAll(written, written.replace(number, other)));
  return check.vessels
    .flatMap(one => one.verdicts)
    .filter(one => one.rule === id)
    .flatMap(one => one.margin ?? []);
}
