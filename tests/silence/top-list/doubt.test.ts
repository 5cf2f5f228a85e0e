import { describe, expect, it } from 'vitest';
import { ruleOutcomes, SINGLE_LINE, WRONG_HAND } from './doubted-specs.js';

describe('doubt', () => {
  it.each(['hearsay', 'assumed'])(
    '[%s] on the rotation of the engine leaves a wrong hand an error',
    async kind => {
      const doubted = WRONG_HAND.replace('rotation standard viewed from flywheel', `$& [${kind}]`);
      const [said] = await ruleOutcomes(doubted, 'rotation/propeller-hand');
      expect(said).toMatchObject({ outcome: 'fails', severity: 'error' });
      expect(said!.message).toContain(`(${kind}) is true.`);
    },
  );

  it.each(['hearsay', 'assumed'])(
    '[%s] on it withholds what would hold, and says what to prove',
    async kind => {
      const doubted = SINGLE_LINE.replace('rotation standard viewed from flywheel', `$& [${kind}]`);
      const [said] = await ruleOutcomes(doubted, 'rotation/propeller-hand');
      expect(said).toMatchObject({ outcome: 'cannot tell' });
      expect(said!.message).toMatch(/holds only if the rotation .* is true: prove it/);
      expect(said!.missing.map(one => one.property)).toContain('rotation');
    },
  );

  it('withholds a requirement on turning that rests on it', async () => {
    const doubted = SINGLE_LINE.replace('rotation standard viewed from flywheel', '$& [hearsay]');
    for (const said of await ruleOutcomes(doubted, 'rotation/turning-requirement'))
      expect(said.outcome).not.toBe('holds');
  });

  it('proof lets it hold again', async () => {
    const proven = SINGLE_LINE.replace('rotation standard viewed from flywheel', '$& [plate]');
    expect(await ruleOutcomes(proven, 'rotation/propeller-hand')).toMatchObject([{ outcome: 'holds' }]);
  });
});

describe('an open selector', () => {
  it.each([
    ['propeller { hand', 'propeller { kind unknown  hand', 'rotation/propeller-hand', 'kind'],
    ['at medium', 'at unknown', 'capacity/gear-input-torque', 'at'],
  ])('%s become %s: %s asks for %s', async (from, to, rule, property) => {
    expect(SINGLE_LINE).toContain(from);
    const said = await ruleOutcomes(SINGLE_LINE.replace(from, to), rule);
    expect(said.map(one => one.outcome)).toEqual(['cannot tell']);
    expect(said[0]!.missing.map(one => one.property)).toContain(property);
  });
});
