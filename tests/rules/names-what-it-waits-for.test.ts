import { describe, expect, it } from 'vitest';
import { randomSpecs, writtenSpecs } from '../silence/base-specs.js';
import { Bench } from '../silence/rejudge.js';
import { share, times } from '../support/share.js';

describe('what cannot be told', () => {
  it('names the datum that it waits for, in words and by its property', async () => {
    const wrong: string[] = [];
    let open = 0;
    const waiting = writtenSpecs().filter(one => one.name.endsWith('cannotTell'));
    for (const spec of [...share(waiting, 60), ...randomSpecs(9000, times(6, 60))]) {
      const { told, check } = await new Bench().judge(spec.text);
      open += told.filter(one => one.outcome === 'cannot tell').length;
      for (const one of [...check.vessels, ...check.entries].flatMap(({ verdicts }) => verdicts)) {
        for (const { outcome, rule, missing, message } of [one, ...(one.folds ?? [])]) {
          if (outcome !== 'cannot tell') continue;
          const named = missing.length > 0 && missing.every(({ what, property }) => what && property);
          if (!named || /Needed: ?\./.test(message)) wrong.push(`${spec.name}: ${rule}: ${message}`);
        }
      }
    }
    expect(open).toBeGreaterThan(30);
    expect(wrong).toEqual([]);
  });
});
