import {
  compareTapers,
  diameterOnTaper,
  given,
  hubSeatShift,
  inchShaftEnd,
  inchShaftEnds,
  type TaperedSeat,
  taperLargeEnd,
  taperSmallEnd,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { published } from '../published.js';
import { IN, MM } from '../tables/factors.js';

published(
  taperSmallEnd,
  'SAE J755, small end of every row, printed to 0.001 in',
  inchShaftEnds.map(row => ({
    case: `${row.size} in`,
    inputs: { largeEnd: row.diameter, taperLength: row.taperLength, taper: row.taper },
    gives: row.smallEnd.nominal / IN,
    within: 0.0005 + 1e-9,
    unit: IN,
  })),
);
published(
  diameterOnTaper,
  'SAE J755, small end of every row by the same cone, printed to 0.001 in',
  inchShaftEnds.map(row => ({
    case: `${row.size} in`,
    inputs: { largeEnd: row.diameter, distance: row.taperLength, taper: row.taper },
    gives: row.smallEnd.nominal / IN,
    within: 0.0005 + 1e-9,
    unit: IN,
  })),
);
published(
  taperLargeEnd,
  'SAE J755, shaft diameter back from the small end',
  inchShaftEnds.map(row => ({
    case: `${row.size} in`,
    inputs: { smallEnd: row.smallEnd.nominal, taperLength: row.taperLength, taper: row.taper },
    gives: row.diameter / IN,
    within: 0.0005 + 1e-9,
    unit: IN,
  })),
);
published(hubSeatShift, 'geometry of a cone: 0.5 mm of bore is 8 mm of seat at 1:16', [
  {
    case: 'hub bored 0.5 mm large',
    inputs: { hubLargeEnd: 40.5 * MM, shaftLargeEnd: 40 * MM, taper: 1 / 16 },
    gives: 8,
    within: 1e-9,
    unit: MM,
  },
]);

describe('a propeller bore against a shaft taper', () => {
  const end = inchShaftEnd('1 3/4')!;
  const shaft: TaperedSeat = {
    taper: given('taper', 't', 'ratio', end.taper),
    largeEnd: given('large end', 'd', 'length', end.diameter),
    length: given('taper length', 'L', 'length', end.taperLength),
    keywayWidth: given('keyway width', 'b', 'length', end.keywayWidth.nominal),
  };

  it('finds nothing between equal standard ends', () => {
    expect(compareTapers(shaft, shaft)).toEqual([]);
  });

  it('finds a metric 1:10 hub of 45 mm on a 1 3/4 in shaft', () => {
    const hub: TaperedSeat = {
      ...shaft,
      taper: given('taper', 't', 'ratio', 1 / 10),
      largeEnd: given('large end', 'd', 'length', 0.045),
    };
    expect(compareTapers(shaft, hub)).toMatchObject([
      { feature: 'taper', result: 'differs', prevents: true },
      { feature: 'large end of the taper', result: 'differs', prevents: true },
    ]);
  });

  it('says what it could not compare', () => {
    expect(compareTapers(shaft, { ...shaft, keywayWidth: undefined })).toEqual([
      { feature: 'keyway width', result: 'not stated', on: 'other' },
    ]);
    expect(compareTapers({}, {}).every(one => one.result === 'not stated')).toBe(true);
  });
});
