import { formatValue } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { FRESH } from '../fixes/fresh-vessels.js';
import { checkText } from '../support/check.js';

/*
 * A planing hull meets more resistance on the way up than where it first planes, so that there may be two balances of which only
 * the slower one is reached from rest: common practice, no source. Both are worked out by Savitsky, whose method is held
 * against its source in mechanics.
 */
const LEG = FRESH.leg.replace('    deadrise 19 deg\n', '    deadrise 19 deg\n    appendage resistance 7 %\n');
const pitched = (pitch: string, more = '') =>
  LEG.replace('pitch 17.5 in', `pitch ${pitch}`).replace('  criteria {', `${more}  criteria {`);

async function said(text: string, rule: string) {
  const { check } = await checkText(text);
  return check.vessels[0]!.verdicts.find(one => one.rule === rule)!;
}

describe('a planing hull that its engine does not bring over the hump', () => {
  it.each([
    ['16 in', 'holds'],
    ['17.5 in', 'holds'],
    ['18 in', 'fails'],
    ['19 in', 'fails'],
  ])('with a pitch of %s: %s', async (pitch, outcome) => {
    const verdict = await said(pitched(pitch), 'propeller/absorbed-power');
    expect(verdict.outcome).toBe(outcome);
    // Where it fails the balance at rated speed alone would have held.
    if (outcome === 'fails')
      expect(verdict.message).toMatch(
        /^Centre: full throttle ends at about [23]\d{3} rpm and 1\d\.\d kn, below the resistance hump .* would absorb only (?:9\d|10[0-6]) %, /,
      );
    else expect(verdict.message).toMatch(/at full throttle about 36\d\d rpm/);
  });

  it('is told the greatest pitch with which it comes over, and one more finds nothing to tell', async () => {
    const verdict = await said(pitched('19 in'), 'propeller/absorbed-power');
    expect(verdict.routes()[0]!.title).toMatch(
      /^Change the pitch of Centre to 17 1\/2 in: .* about 3[56]\d\d rpm and (?:19|2\d)\.\d kn$/,
    );
    expect((await said(pitched('17.5 in'), 'propeller/absorbed-power')).routes()).toEqual([]);
  });

  it('is held at rated power to the speed that it reaches', async () => {
    const wanted = '  require speed at least 18 kn at rated power\n';
    const over = await said(pitched('17.5 in', wanted), 'trace/requirement-met');
    const below = await said(pitched('18 in', wanted), 'trace/requirement-met');
    expect([over.outcome, below.outcome]).toEqual(['holds', 'fails']);
    expect(below.workings.map(one => formatValue(one, 3)).join()).toMatch(/1[3-5]\.\d kn/);
  });
});
