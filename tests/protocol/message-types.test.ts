import { expect, it } from 'vitest';
import { typeErrors } from './message-types.js';
import type { Said } from './tap.js';

const hover = (value: unknown): Said => ({ kind: 'result', method: 'textDocument/hover', value });
const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } };

it('tells right messages from wrong ones', async () => {
  const right = [
    hover({ contents: { kind: 'markdown', value: 'a' }, range }),
    hover(null),
    {
      kind: 'params',
      method: 'textDocument/publishDiagnostics',
      value: { uri: 'file:///a', diagnostics: [] },
    },
  ] satisfies Said[];
  expect(await typeErrors(right)).toEqual([]);
  const wrong = [
    hover({ contents: { kind: 'markdown' } }),
    hover({ contents: { kind: 'markdown', value: 'a' }, rnage: range }),
    {
      kind: 'params',
      method: 'textDocument/publishDiagnostics',
      value: { uri: 'file:///a', diagnostics: [{ range }] },
    },
    {
      kind: 'result',
      method: 'textDocument/documentSymbol',
      value: [{ name: 'a', kind: 99, range, selectionRange: range }],
    },
    { kind: 'params', method: 'textDocument/noSuchThing', value: {} },
  ] satisfies Said[];
  const found = await typeErrors(wrong);
  for (const one of wrong) expect(found.some(error => error.startsWith(one.method))).toBe(true);
  expect(found.filter(error => error.startsWith('textDocument/hover'))).toHaveLength(2);
});
