import type { CstNode } from 'langium';
import { type Evidence, type FactBlock, isEvidence, isToken, type Token } from '../generated/ast.js';
import { type AtomTok, type BlockTok, type EvidenceTok, kindOfText, type Tok } from './token.js';

/** The tokens of a block, freed of the syntax tree. */
export function atomsOf(block: FactBlock): BlockTok {
  const span = spanOf(block.$cstNode);
  return { kind: 'block', atoms: block.atoms.flatMap(atom => toAtom(atom)), ...span };
}

export function evidenceOf(evidence: Evidence): EvidenceTok {
  return { kind: 'evidence', tokens: evidence.tokens.flatMap(tokOf), ...spanOf(evidence.$cstNode) };
}

/** A token, or nothing for one that error recovery left without text. */
export function tokOf(token: Token): Tok[] {
  const cst = token.$cstNode;
  return cst ? [{ kind: kindOfText(cst.text), text: cst.text, ...spanOf(cst) }] : [];
}

function toAtom(atom: FactBlock['atoms'][number]): AtomTok[] {
  if (isToken(atom)) return tokOf(atom);
  if (isEvidence(atom)) return [evidenceOf(atom)];
  return [atomsOf(atom)];
}

function spanOf(cst: CstNode | undefined): { start: number; end: number; line: number } {
  return cst
    ? { start: cst.offset, end: cst.end, line: cst.range.start.line }
    : { start: 0, end: 0, line: 0 };
}
