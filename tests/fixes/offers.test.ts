import { describe, expect, it } from 'vitest';
import { randomSpecs, writtenSpecs } from '../silence/base-specs.js';
import { triedOn } from './apply.js';

const SEED = Number(process.env.FIXES_SEED ?? 1);

describe('every way out that is offered', () => {
  it(`keeps its promise on every spec of the rules, and on random ones from seed ${SEED}`, async () => {
    const wrong: string[] = [];
    for (const { name, text } of [
      ...writtenSpecs().filter(one => !one.name.endsWith('passing')),
      ...randomSpecs(SEED * 5000, 12),
    ]) {
      const { faults } = await triedOn(text);
      wrong.push(...faults.map(one => `${name}: ${one}`));
    }
    expect(wrong).toEqual([]);
  });
});
