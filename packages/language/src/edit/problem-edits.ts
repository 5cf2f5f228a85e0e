import type { Problem, ProblemChoice } from '../reading/problem.js';
import { lineBreakOf } from '../text/tokens.js';
import { indentAt, startOfLine } from './layout.js';
import type { TextEdit } from './text-edit.js';

/** What one of a problem's ways out writes. */
export function problemEdits(problem: Problem, choice: ProblemChoice, uri: string, text: string): TextEdit[] {
  const start = choice.start ?? problem.start;
  const end = choice.end ?? problem.end;
  if (start === end && text[start] === '}' && choice.text.endsWith('\n'))
    return [beforeBrace(uri, text, start, choice.text.trim())];
  return [{ uri, start, end, text: choice.text.replace(/\n/g, lineBreakOf(text)) }];
}

/** A statement in front of a closing brace, on a line of its own where the brace has one. */
function beforeBrace(uri: string, text: string, brace: number, statement: string): TextEdit {
  const line = startOfLine(text, brace);
  if (text.slice(line, brace).trim() === '') {
    const words = `${indentAt(text, brace)}  ${statement}${lineBreakOf(text)}`;
    return { uri, start: line, end: line, text: words };
  }
  const end = text.slice(0, brace).trimEnd().length;
  const first = text[end - 1] === '{';
  return { uri, start: end, end: brace, text: `${first ? ' ' : '  '}${statement} ` };
}
