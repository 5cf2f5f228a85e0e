import { asSpelling } from '@tailshaft/vocabulary';
import type { LangiumDocument } from 'langium';
import type { FoldingRangeProvider } from 'langium/lsp';
import { type FoldingRange, FoldingRangeKind } from 'vscode-languageserver';
import { bracesOf, scan, type Token } from '../text/scan.js';

/** Blocks, comments of several lines, and the imports at the top. */
export class FoldingRanges implements FoldingRangeProvider {
  getFoldingRanges(document: LangiumDocument): FoldingRange[] {
    const tokens = scan(document.textDocument.getText());
    const ranges: FoldingRange[] = [];
    for (const { openLine, closeLine } of bracesOf(tokens)) {
      // The closing brace stays in sight.
      if (closeLine - 1 > openLine) ranges.push({ startLine: openLine, endLine: closeLine - 1 });
    }
    const starts = tokens.filter((token, index) => tokens[index - 1]?.line !== token.line);
    ranges.push(
      ...runs(starts, token => token.kind === 'comment', FoldingRangeKind.Comment),
      ...runs(starts, token => asSpelling(token.text) === 'import', FoldingRangeKind.Imports),
    );
    return ranges;
  }
}

/** Stretches of lines, one after the other, that begin in such a way. */
function runs(
  starts: readonly Token[],
  wanted: (token: Token) => boolean,
  kind: FoldingRangeKind,
): FoldingRange[] {
  const found: FoldingRange[] = [];
  let from: number | undefined;
  let to = 0;
  const end = () => {
    if (from !== undefined && to > from) found.push({ startLine: from, endLine: to, kind });
    from = undefined;
  };
  for (const token of starts) {
    const last = token.line + token.text.split('\n').length - 1;
    if (!wanted(token)) end();
    else {
      if (from === undefined || token.line > to + 1) {
        end();
        from = token.line;
      }
      to = last;
    }
  }
  end();
  return found;
}
