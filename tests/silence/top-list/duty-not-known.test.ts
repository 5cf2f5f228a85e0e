import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { changed, saidBy } from './verdicts.js';

const DUTY = 'duty medium { hours 1500 per year  passengers none }';
const shaft = (duty: string, diameter: number) =>
  changed(SINGLE_LINE, [DUTY, duty], ['diameter 65 mm', `diameter ${diameter} mm`]);

// The published factors begin at 3 for an average yacht, and stand at 5 for a commercial vessel and more for others. By the
// formula d goes as the cube root of the factor: 51 mm suffices for 5 here, 43 mm for 3.
describe('the strength of a shaft in a vessel of which the duty is not known', () => {
  it.each([
    ['duty unknown { hours 1500 per year  passengers none }', 40, 'fails'],
    ['duty unknown { hours 1500 per year  passengers none }', 46, 'cannot tell'],
    ['duty unknown { hours 1500 per year  passengers none }', 65, 'cannot tell'],
    ['duty medium { hours 1500 per year  passengers unknown }', 46, 'fails'],
    ['duty medium { hours 1500 per year  passengers unknown }', 56, 'cannot tell'],
    ['', 40, 'fails'],
    ['', 65, 'cannot tell'],
    ['duty unknown { hours 1500 per year  passengers carried }', 56, 'fails'],
  ])('%s, %i mm: %s', async (duty, diameter, outcome) => {
    const said = await saidBy('shafting/diameter', shaft(duty, diameter));
    expect(said.map(one => one.outcome)).toEqual([outcome]);
    if (outcome === 'cannot tell')
      expect(said[0]!.message).toMatch(/has factor \d+\.\d against torsional yield, and meets/);
    else expect(said[0]!.message).toMatch(/small-craft formula, factor \d+/);
  });
});
