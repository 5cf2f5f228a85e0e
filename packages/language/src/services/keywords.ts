import { AstUtils, GrammarAST } from 'langium';
import { TailshaftGrammar } from '../generated/grammar.js';

/** Every word that the grammar itself knows, for colouring and for refusing names. */
export const KEYWORDS: ReadonlySet<string> = new Set(
  AstUtils.streamAst(TailshaftGrammar())
    .filter(GrammarAST.isKeyword)
    .map(keyword => keyword.value)
    .filter(word => /^[a-z]+$/.test(word)),
);
