import {
  bearingLengthInDiameters,
  given,
  judgeSternBearing,
  strutBearingLength,
  strutBearingOutside,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { published } from '../published.js';
import { IN } from '../tables/factors.js';

published(bearingLengthInDiameters, 'definition', [
  { case: '8 in on a 2 in shaft', inputs: { length: 8 * IN, diameter: 2 * IN }, gives: 4, within: 1e-12 },
]);
published(strutBearingLength, "strut maker's page: four diameters", [
  { case: '2 in shaft', inputs: { diameter: 2 * IN }, gives: 8, within: 1e-9, unit: IN },
]);
published(strutBearingOutside, "strut maker's page: wall of a quarter diameter", [
  { case: '2 in shaft', inputs: { diameter: 2 * IN }, gives: 3, within: 1e-9, unit: IN },
]);

describe('aft stern bearing by IACS UR M52 and M85', () => {
  const length = (ratio: number) => given('length', 'L/d', 'ratio', ratio);
  const bar = (p: number) => given('pressure', 'p', 'pressure', p * 1e5);
  const cases = [
    ['oil, white metal', 2, undefined, 'long enough'],
    ['oil, white metal', 1.7, undefined, 'pressure needed'],
    ['oil, white metal', 1.7, 7.9, 'short, allowed on a condition'],
    ['oil, white metal', 1.7, 8, 'too short'],
    ['oil, white metal', 1.49, 1, 'too short'],
    ['oil, synthetic', 1.5, 6, 'short, allowed on a condition'],
    ['oil, synthetic', 1.5, 6.1, 'too short'],
    ['oil, synthetic', 1.5, Number.NaN, 'pressure needed'],
    ['water', 4, undefined, 'long enough'],
    ['water', 3.9, undefined, 'short, allowed on a condition'],
    ['water', 1.9, undefined, 'too short'],
    ['grease', 4, undefined, 'long enough'],
    ['grease', 3.9, 1, 'too short'],
    ['grease', Number.NaN, undefined, 'length needed'],
  ] as const;
  it.each(cases)('%s, %d diameters, %s bar: %s', (kind, ratio, pressure, result) => {
    const verdict = judgeSternBearing(
      kind,
      length(ratio),
      pressure === undefined ? undefined : bar(pressure),
    );
    expect(verdict.result).toBe(result);
    expect(verdict.rule.source.confidence).toBe('published');
  });
});

it('limits met exactly are met in any unit', () => {
  for (let inches = 0.5; inches < 8; inches += 0.125) {
    const ratio = bearingLengthInDiameters({
      length: given('length', 'L', 'length', 4 * inches * IN),
      diameter: given('diameter', 'd', 'length', inches * IN),
    });
    expect(judgeSternBearing('grease', ratio).result).toBe('long enough');
  }
});
