import { describe, expect, it } from 'vitest';
import { changed, passing, saidBy } from './verdicts.js';

const RULE = 'shafting/length-stack';
const spec = passing(RULE);
const box = (name: string, facts: string) =>
  `transfer ${name} {\n  source "Test" dated 2025-02-10\n  kind gears\n  output same seen from aft\n  exact 1:1\n  ${facts}\n}\n`;

/** A box behind the gear as found, and what a revision does with it. */
function boxed(old: string, now: string, does: string, gear = 'length 520 mm'): string {
  return changed(
    spec,
    ['vessel Ternhaven', `${box('Old-2', old)}${box('New-2', now)}vessel Ternhaven`],
    ['      shaft {', '      transfer Old-2\n      shaft {'],
    ['      retain shaft', `      ${does}\n      retain shaft`],
    ['length 520 mm', gear],
  );
}

describe('a box between gear and shaft', () => {
  const STRAIGHT = 'turns the line back no';
  it.each([
    [
      'counts with its length',
      `${STRAIGHT}  length 300 mm`,
      `${STRAIGHT}  length 300 mm`,
      'replace transfer New-2',
      'holds',
    ],
    [
      'moves the propeller when it is longer',
      `${STRAIGHT}  length 300 mm`,
      `${STRAIGHT}  length 340 mm`,
      'replace transfer New-2',
      'fails',
    ],
    [
      'is asked for its length',
      `${STRAIGHT}  length 300 mm`,
      STRAIGHT,
      'replace transfer New-2',
      'cannot tell',
    ],
    [
      'is asked for what it was',
      STRAIGHT,
      `${STRAIGHT}  length 300 mm`,
      'replace transfer New-2',
      'cannot tell',
    ],
    ['takes itself out where it is kept', STRAIGHT, STRAIGHT, 'retain transfer', 'holds'],
    [
      'that turns the line back is not covered',
      'turns the line back yes  length 300 mm',
      'turns the line back yes  length 340 mm',
      'replace transfer New-2',
      'cannot tell',
    ],
    [
      'that turns it back and is kept moves nothing',
      'turns the line back yes',
      STRAIGHT,
      'retain transfer',
      'holds',
    ],
  ])('%s', async (_, old, now, does, outcome) => {
    expect((await saidBy(RULE, boxed(old, now, does))).map(one => one.outcome)).toContain(outcome);
  });
});
