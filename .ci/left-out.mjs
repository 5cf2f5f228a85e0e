/**
 * What bundles leave out of the parser library: the lookahead that reads on as far as it takes, with the collection library
 * that only it uses. The grammar needs two words (`maxLookahead` in `services/module.ts`), so that it is never made.
 */
export const leftOut = {
  name: 'left-out',
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /^chevrotain-allstar$/ }, ({ path }) => ({ path, namespace: 'left-out' }));
    onLoad({ filter: /.*/, namespace: 'left-out' }, () => ({
      contents: `export class LLStarLookaheadStrategy {
        constructor() { throw new Error('The parser is made with maxLookahead.'); }
      }`,
      loader: 'js',
    }));
  },
};
