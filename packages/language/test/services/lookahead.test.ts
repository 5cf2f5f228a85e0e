import { EmptyFileSystem } from 'langium';
import { describe, expect, it } from 'vitest';
import { createTailshaftCore } from '../../src/index.js';

/** What the parser library keeps to itself. */
interface Inner {
  readonly gastProductionsCache: Readonly<Record<string, unknown>>;
  readonly tokensMap: Readonly<Record<string, unknown>>;
  readonly lookaheadStrategy: {
    validate(of: { rules: unknown[]; tokenTypes: unknown[]; grammarName: string }): { message: string }[];
  };
}

describe('the grammar', () => {
  it('lets two words decide what is read: where they do not, the first alternative would be taken', () => {
    const { language } = createTailshaftCore(EmptyFileSystem);
    const { LangiumParser, ParserConfig } = language.parser;
    expect(ParserConfig?.maxLookahead).toBe(2);
    const { wrapper } = LangiumParser as unknown as { wrapper: Inner };
    const rules = Object.values(wrapper.gastProductionsCache);
    expect(rules.length).toBeGreaterThan(30);
    const tokenTypes = Object.values(wrapper.tokensMap);
    const said = wrapper.lookaheadStrategy.validate({ rules, tokenTypes, grammarName: 'Tailshaft' });
    expect(said.map(one => one.message)).toEqual([]);
  });
});
