import { describe, expect, it } from 'vitest';
import { vesselMargins } from '../../packages/cli/src/report/margins.js';
import { randomSpecs, writtenSpecs } from '../silence/base-specs.js';
import { checkText } from '../support/check.js';

/** `tube bore of housing aft`, of `tube bore of housing aft 3.7 % and 5 %`. */
const nameOf = (words: string) => words.replace(/ [\d.−]+ %(?:, [\d.−]+ %)*(?: and [\d.−]+ %)?$/, '');

describe('the margins of a line', () => {
  it('stand each under a name of its own, and no figure twice under one', async () => {
    const passing = writtenSpecs().filter(one => one.name.endsWith('passing') || one.name.endsWith('.shaft'));
    for (const { name, text } of [...passing.slice(0, 60), ...randomSpecs(5000, 10)]) {
      const { check } = await checkText(text);
      for (const { margins } of check.vessels.flatMap(vesselMargins)) {
        const names = margins.map(nameOf);
        expect(new Set(names).size, `${name}: ${margins.join('; ')}`).toBe(names.length);
        for (const one of margins) {
          const figures = one.match(/[\d.−]+ %/g)!;
          expect(new Set(figures).size, `${name}: ${one}`).toBe(figures.length);
        }
      }
    }
  });
});
