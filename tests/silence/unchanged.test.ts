import { describe, expect, it } from 'vitest';
import { share } from '../support/share.js';
import { randomSpecs, writtenSpecs } from './base-specs.js';
import { listed } from './known.js';
import { runOver } from './run.js';

const SEED = Number(process.env.SILENCE_SEED ?? 1);
const gallery = writtenSpecs().filter(one => one.name.endsWith(' failing'));

describe('an arrangement that changes nothing', () => {
  it.each([
    ['every mistake of the gallery', share(gallery, 12)],
    // Hybrids, two engines on a gear, boxes and nozzles are among them.
    [`random lines of every sort, seed ${SEED}`, share(randomSpecs(SEED * 1000 + 500, 60), 8)],
  ])(
    'fails in nothing that the one before it does not fail in: %s',
    async (_, specs) => {
      const { convictions, judged, left } = await runOver(specs, {
        seed: SEED,
        share: 1,
        seconds: 600,
        letters: ['b', 'c'],
      });
      expect([left, (judged.b ?? 0) >= specs.length]).toEqual([0, true]);
      expect(listed(convictions)).toEqual([]);
    },
    600_000,
  );
});
