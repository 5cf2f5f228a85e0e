import { applyEdits } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';
import { joinedExample } from '../support/examples.js';
import { offeredFor } from './offered.js';

/** A tug that has outward propellers by requirement, with one mistake in her starboard line. */
const TUG = joinedExample('harbour-tug/wrack.shaft');

async function curesOf(text: string, code: string) {
  const [found] = (await offeredFor(text)).filter(one => one.finding.code === code);
  return found?.cures ?? [];
}

describe('the first way out', () => {
  it('is the one that puts the other failures of the same mistake right too', async () => {
    const starboard = TUG.lastIndexOf('ahead clutch A');
    const wrong = `${TUG.slice(0, starboard)}ahead clutch B${TUG.slice(starboard + 'ahead clutch B'.length)}`;
    const failing = async (text: string) =>
      (await checkText(text)).findings.filter(one => one.severity === 'error').map(one => one.code);
    expect(await failing(wrong)).toEqual(['rotation/propeller-hand', 'rotation/turning-requirement']);
    const [first, ...others] = await curesOf(wrong, 'rotation/propeller-hand');
    expect(first!.title).toMatch(/^Run Starboard ahead on clutch A/);
    expect(await failing(applyEdits(wrong, first!.edits))).toEqual([]);
    // What keeps the requirement failing is offered, and behind it.
    expect(others.map(one => one.title).join('\n')).toMatch(/left-hand/);
    const [turning] = await curesOf(wrong, 'rotation/turning-requirement');
    expect(turning!.title).toMatch(/^Starboard runs ahead on clutch A instead of B: /);
  });
});

describe('the shaft that is too thin', () => {
  it.each([
    [
      'pilot-cutter/ternhaven.shaft',
      'duty medium',
      'duty continuous',
      / (Fit|shaft diameter at least) ([\d.]+ in)/g,
    ],
    [
      'hybrid-ferry/teasel.shaft',
      'diameter 50 mm',
      'diameter 40 mm',
      / (Fit|shaft diameter at least) ([\d.]+ mm)/g,
    ],
  ])('is told one figure, in the unit of its author: %s', async (path, from, to, figure) => {
    const { findings } = await checkText(joinedExample(path).replace(from, to));
    const thin = findings.find(
      one => one.code === 'shafting/diameter' && one.verdict?.outcome === 'fails' && !one.verdict.asFound,
    );
    const said = [...thin!.message.matchAll(figure)].map(one => one[2]);
    expect(said).toHaveLength(2);
    expect(new Set(said).size).toBe(1);
  });
});
