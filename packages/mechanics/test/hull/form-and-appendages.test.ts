import {
  appendageEfficiencyFromShare,
  blockCoefficient,
  displacedVolume,
  given,
  midshipFromPrismatic,
  outsideRange,
  resistanceWithAppendages,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_1982 } from './holtrop-examples.js';

describe('form coefficients and appendages', () => {
  it('finds the block coefficient of the published example hull', () => {
    // Holtrop and Mennen, International Shipbuilding Progress 29, 1982: CP is printed as 0.5833 and CM given as 0.98.
    const block = blockCoefficient({
      displacedVolume: displacedVolume({
        displacement: given('displacement', 'Δ', 'mass', EXAMPLE_1982.displacedVolume * 1025),
        density: given('density', 'ρ', 'density', 1025),
      }),
      waterlineLength: given('length', 'L', 'length', EXAMPLE_1982.waterlineLength),
      beam: given('beam', 'B', 'length', EXAMPLE_1982.beam),
      draught: given('draught', 'T', 'length', EXAMPLE_1982.draughtAft),
    });
    const midship = midshipFromPrismatic({
      blockCoefficient: block,
      prismaticCoefficient: given('CP', 'CP', 'ratio', 0.5833),
    });
    expect(midship.si).toBeCloseTo(0.98, 4);
    expect(outsideRange(midship)).toEqual([]);
  });

  it('says when a hull does not fit in its own box', () => {
    const block = blockCoefficient({
      displacedVolume: given('volume', '∇', 'volume', 90),
      waterlineLength: given('length', 'L', 'length', 10),
      beam: given('beam', 'B', 'length', 3),
      draught: given('draught', 'T', 'length', 1),
    });
    expect(outsideRange(block)).toHaveLength(1);
  });

  it('adds appendages to the bare hull', () => {
    const efficiency = appendageEfficiencyFromShare({ share: given('share', 'a', 'ratio', 0.25) });
    expect(efficiency.si).toBeCloseTo(0.8, 12);
    const whole = resistanceWithAppendages({
      bareResistance: given('bare', 'R0', 'force', 8000),
      appendageEfficiency: efficiency,
    });
    expect(whole.si).toBeCloseTo(10000, 9);
  });
});
