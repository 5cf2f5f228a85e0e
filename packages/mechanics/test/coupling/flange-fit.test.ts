import {
  compareFlanges,
  compareHousings,
  type Flange,
  flywheelHousing,
  flywheelHousings,
  given,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { IN } from '../tables/factors.js';

const mm = (label: string, value: number) => given(label, label, 'length', value / 1000);
const four: Flange = {
  outsideDiameter: mm('outside diameter', 101.6),
  boltCircle: mm('bolt circle', 82.55),
  bolts: given('bolts', 'n', 'number', 4),
  boltSize: given('bolt', 'd', 'length', (3 / 8) * IN),
  pilot: 'male',
  pilotDiameter: mm('pilot', 63.5),
  thickness: mm('thickness', 10),
};

describe('two flanges', () => {
  const mate: Flange = { ...four, pilot: 'female' };

  it('that mate have no differences, whichever is named first', () => {
    expect(compareFlanges(four, mate)).toEqual([]);
    expect(compareFlanges(mate, four)).toEqual([]);
  });

  it('of 6 x 5.75 in and 4 x 4.25 in do not meet', () => {
    const gear = {
      ...four,
      bolts: given('bolts', 'n', 'number', 6),
      boltCircle: mm('bolt circle', 5.75 * 25.4),
    };
    const shaft = { ...mate, boltCircle: mm('bolt circle', 4.25 * 25.4) };
    const differences = compareFlanges(gear, shaft);
    expect(differences).toMatchObject([
      { feature: 'bolt circle', result: 'differs', prevents: true },
      { feature: 'number of bolts', result: 'differs', by: 2, prevents: true },
    ]);
    expect(differences[0]).toHaveProperty('by', expect.closeTo(0.0381, 6));
  });

  it('both with a spigot do not go together', () => {
    expect(compareFlanges(four, four)).toMatchObject([
      { feature: 'pilot', one: 'male', other: 'male', prevents: true },
    ]);
  });

  it('without pilots are centred by their bolts', () => {
    expect(compareFlanges({ ...four, pilot: 'none' }, { ...mate, pilot: 'none' })).toEqual([]);
    expect(compareFlanges({ ...four, pilot: 'none' }, mate)).toMatchObject([
      { feature: 'pilot', prevents: true },
    ]);
  });

  it('of unequal outside diameter bolt together, but somebody must know', () => {
    const turned = { ...mate, outsideDiameter: mm('outside diameter', 127) };
    expect(compareFlanges(four, turned)).toMatchObject([{ feature: 'outside diameter', prevents: false }]);
  });

  it('with data missing are never called equal', () => {
    expect(compareFlanges(four, { ...mate, boltCircle: undefined })).toEqual([
      { feature: 'bolt circle', result: 'not stated', on: 'other' },
    ]);
    expect(compareFlanges({}, {})).toHaveLength(6);
    expect(compareFlanges({ ...four, pilotDiameter: undefined }, mate)).toEqual([
      { feature: 'pilot diameter', result: 'not stated', on: 'one' },
    ]);
  });

  it('take a rounded millimetre print of an inch size for the same', () => {
    expect(compareFlanges(four, { ...mate, boltCircle: mm('bolt circle', 82.6) })).toEqual([]);
  });
});

describe('flywheel housings', () => {
  it('mate with their own size and no other', () => {
    for (const engine of flywheelHousings)
      for (const gear of flywheelHousings)
        expect(compareHousings(engine, gear).length === 0, `${engine.size} and ${gear.size}`).toBe(
          engine === gear,
        );
  });

  it('3 and 4 differ in pilot bore and bolt circle, not in holes or thread', () => {
    expect(compareHousings(flywheelHousing('SAE 3')!, flywheelHousing('SAE 4')!)).toEqual([
      'pilot bore',
      'bolt circle',
    ]);
  });
});
