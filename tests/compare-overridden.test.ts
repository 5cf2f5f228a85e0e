import { compareVessels, RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { checkText } from './support/check.js';

/** An engine whose entry says six cylinders, and whose place says what its entry says, or eight. */
const { passing: AS_ENTRY, failing: OVERRIDDEN } = RULES.find(
  one => one.id === 'paper/place-against-entry',
)!.examples();

async function told(from: string, to: string): Promise<string[]> {
  const [before, after] = [await checkText(from), await checkText(to)];
  return compareVessels(before.check.vessels[0]!, after.check.vessels[0]!).changes.flatMap(one =>
    one.kind === 'silent' && one.what === 'overridden at its place' ? [one.words] : [],
  );
}

describe('a comparison lists the values of the catalogue that a place overrides', () => {
  it('with what the place says and what the entry says', async () => {
    expect(await told(AS_ENTRY, OVERRIDDEN)).toEqual([
      'engine Kittiwake-9: cylinders 8 at its place, where its entry says 6',
    ]);
  });

  it('again where the place comes to say something else', async () => {
    expect(await told(OVERRIDDEN, OVERRIDDEN.replace('cylinders 8', 'cylinders 4'))).toEqual([
      'engine Kittiwake-9: cylinders 4 at its place, where its entry says 6',
    ]);
  });

  it('and none that stood before, nor one that is taken out', async () => {
    expect(await told(OVERRIDDEN, OVERRIDDEN)).toEqual([]);
    expect(await told(OVERRIDDEN, AS_ENTRY)).toEqual([]);
  });
});
