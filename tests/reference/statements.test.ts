import { STATEMENTS } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { checkText, shown } from '../support/check.js';

/** What each statement of the reference stands in, so that its example can be read as printed. */
const AROUND: Readonly<Record<string, readonly [before: string, after: string]>> = {
  anywhere: ['', '\nvessel T { }\n'],
  'in a file': ['', '\n'],
  'in a vessel': ['vessel T { arrangement proposed { }\n', '\n}\n'],
  'in an arrangement': ['vessel T { arrangement proposed {\n', '\n} }\n'],
  'in a shaft line': [
    'vessel T { arrangement existing { shaftline C { propeller { hand right } } }\narrangement proposed revises existing { shaftline C {\n',
    '\n} } }\n',
  ],
};

/** Names that the examples leave open: no file is beside them, and no part was there before. */
const OPEN = /^(text\/import|repower\/)/;

describe.each(STATEMENTS.map(one => [one.words, one] as const))('%s', (_, { stands, example }) => {
  it('has an example that reads as it is printed', async () => {
    const [before, after] = AROUND[stands]!;
    const statement = stands === 'in a vessel' && /^arrangement/m.test(example);
    const text = statement ? `vessel T {\n${example}\n}\n` : `${before}${example}${after}`;
    const found = shown(await checkText(text)).filter(
      line => /^(text|repower)\//.test(line) && !OPEN.test(line),
    );
    expect(found).toEqual([]);
  });
});
