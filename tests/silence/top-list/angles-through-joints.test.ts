import { describe, expect, it } from 'vitest';
import { WITH_ANGLES } from '../../../packages/drivetrain/src/rules/shafting/angle-specs.js';
import { changed, saidBy } from './verdicts.js';

/** Engine 3°, gear 8° down, a universal joint, and the shaft at this angle. */
const jointed = (joint: string, shaftAngle: string) =>
  changed(
    WITH_ANGLES,
    ['      shaft {', `      coupling { ${joint} }\n      shaft {`],
    ['angle 11 deg', `angle ${shaftAngle} deg`],
  );

describe('the angles of a line with universal joints in it', () => {
  // Worked by hand: 3 + 8 = 11 against the shaft; one joint bends by its angle, two by any angle from difference to sum.
  it.each([
    [
      'one that takes up the difference',
      'kind joint  joint angle 4 deg',
      '15',
      'holds',
      /joint between may bend by 4°/,
    ],
    ['either way', 'kind joint  joint angle 4 deg', '7', 'holds', /4°/],
    ['one that bends less', 'kind joint  joint angle 2 deg', '15', 'fails', /4° apart/],
    [
      'a pair laid straight',
      'kind joint  joint angle 4 deg  second joint angle 4 deg',
      '11',
      'holds',
      /may bend/,
    ],
    [
      'a pair that bends less',
      'kind joint  joint angle 4 deg  second joint angle 4 deg',
      '20',
      'fails',
      /9° apart/,
    ],
    ['one of no stated angle', 'kind joint', '11', 'cannot tell', /joint angle/],
    ['one of unknown angle', 'kind joint  joint angle unknown', '15', 'cannot tell', /joint angle/],
    [
      'a pair half known',
      'kind joint  joint angle 4 deg  second joint angle unknown',
      '11',
      'cannot tell',
      /second joint/,
    ],
    [
      'one that bends more: some of it lies athwart',
      'kind joint  joint angle 4 deg',
      '11',
      'cannot tell',
      /lies in height/,
    ],
    ['one of no stated kind', 'joint angle 4 deg', '15', 'cannot tell', /kind/],
  ] as const)('%s', async (_, joint, shaftAngle, outcome, words) => {
    const [said] = await saidBy('shafting/angle-stack', jointed(joint, shaftAngle));
    expect([said!.outcome, said!.message]).toEqual([outcome, expect.stringMatching(words)]);
  });
});
