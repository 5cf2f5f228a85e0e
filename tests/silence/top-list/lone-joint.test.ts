import { describe, expect, it } from 'vitest';
import { passing, saidBy } from './verdicts.js';

const RULE = 'shafting/joint-angles';

describe('a joint without a second one', () => {
  const alone = (angle: string) =>
    passing(RULE)
      .replace(/second joint angle [\d.]+ deg/, '')
      .replace(/joint angle [\d.]+ deg/, `joint angle ${angle}`);

  it('at 8 deg is told of, with how uneven it is', async () => {
    const [said] = await saidBy(RULE, alone('8 deg'));
    expect(said!.outcome).toBe('fails');
    // 1/cos 8° = 1.0098: the output runs up to 1 % fast, twice in a turn.
    expect(said!.message).toMatch(/is at 8°, and no second joint is declared.*by 1(\.0)? %/);
  });

  it('at half a degree is even enough', async () => {
    expect((await saidBy(RULE, alone('0.5 deg')))[0]!.outcome).toBe('holds');
  });

  it('of unknown angle is asked for', async () => {
    const [said] = await saidBy(RULE, alone('unknown'));
    expect([said!.outcome, said!.asked]).toEqual(['cannot tell', ['joint angle']]);
  });
});
