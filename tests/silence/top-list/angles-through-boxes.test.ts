import { describe, expect, it } from 'vitest';
import { WITH_ANGLES } from '../../../packages/drivetrain/src/rules/shafting/angle-specs.js';
import { changed, saidBy } from './verdicts.js';

/** Engine 3°, gear 8° down, and a box behind the gear; the shaft at this angle. */
function boxed(facts: string, shaftAngle: string, flywheel = 'aft'): string {
  return changed(
    WITH_ANGLES,
    [
      'vessel Ternhaven',
      `transfer Testbox {\n  source "Test" dated 2025-02-10\n  ${facts}\n}\n\nvessel Ternhaven`,
    ],
    ['      shaft {', '      transfer Testbox\n      shaft {'],
    ['angle 11 deg', `angle ${shaftAngle}`],
    ['{ flywheel aft', `{ flywheel ${flywheel}`],
  );
}

const V = 'kind gear V-drive  output same seen from aft';

describe('the angle of a box between engine and shaft', () => {
  // Worked by hand, aft end down: 3 + 8 + 10 = 21, and with an output that looks forward 3 − 8 + 14 = 9.
  it.each([
    ['counts', boxed('kind gears  turns the line back no  down-angle 10 deg', '21 deg'), 'holds', /21°/],
    [
      'fails where it was left out',
      boxed('kind gears  turns the line back no  down-angle 10 deg', '11 deg'),
      'fails',
      /10° apart/,
    ],
    [
      'of a V-drive turns the gear before it about',
      boxed(`${V}  down-angle 14 deg`, '9 deg', 'forward'),
      'holds',
      /9°/,
    ],
    [
      'of a V-drive is no longer left out',
      boxed(`${V}  down-angle 14 deg`, '25 deg', 'forward'),
      'fails',
      /16° apart/,
    ],
    ['is nil for a chain', boxed('kind chain  turns the line back no', '11 deg'), 'holds', /11°/],
  ])('%s', async (_, spec, outcome, words) => {
    const [said] = await saidBy('shafting/angle-stack', spec);
    expect(said!.outcome).toBe(outcome);
    expect(said!.message).toMatch(words);
  });

  it.each([
    ['of a V-drive', boxed(V, '11 deg', 'forward'), ['down-angle']],
    ['that is unknown', boxed(`${V}  down-angle unknown`, '11 deg', 'forward'), ['down-angle']],
    ['of gears of no stated angle', boxed('kind gears  turns the line back no', '11 deg'), ['down-angle']],
    ['of no stated kind', boxed('turns the line back no', '11 deg'), ['down-angle']],
    [
      'behind which nobody says where the line goes',
      boxed('kind gears  down-angle 10 deg', '21 deg', 'forward'),
      ['turns the line back'],
    ],
  ])('is asked for: %s', async (_, spec, asked) => {
    const [said] = await saidBy('shafting/angle-stack', spec);
    expect([said!.outcome, said!.asked]).toEqual(['cannot tell', asked]);
  });

  it.each([
    ['layout V-drive', 'cannot tell'],
    ['layout V-drive 8 deg', 'holds'],
    ['layout V-drive 10 deg', 'fails'],
    ['layout U-drive', 'fails'],
  ])('of a gear: %s', async (layout, outcome) => {
    const spec = changed(WITH_ANGLES, ['layout down-angle 8 deg', layout]);
    expect((await saidBy('shafting/angle-stack', spec)).map(one => one.outcome)).toEqual([outcome]);
  });
});
