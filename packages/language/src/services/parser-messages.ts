import type { Spelling } from '@tailshaft/vocabulary';
import { LangiumParserErrorMessageProvider } from 'langium';

/** What becomes of a part: its role must follow. */
const ACTIONS: ReadonlySet<string> = new Set<Spelling>(['replace', 'retain', 'modify', 'remove']);

type Mismatch = Parameters<LangiumParserErrorMessageProvider['buildMismatchTokenMessage']>[0];
type NoAlternative = Parameters<LangiumParserErrorMessageProvider['buildNoViableAltMessage']>[0];
type NotAllRead = Parameters<LangiumParserErrorMessageProvider['buildNotAllInputParsedMessage']>[0];
type Early = Parameters<LangiumParserErrorMessageProvider['buildEarlyExitMessage']>[0];

/** What the parser says when a statement breaks off, in the words of the language. */
export class ParserMessages extends LangiumParserErrorMessageProvider {
  override buildMismatchTokenMessage({ expected, actual }: Mismatch): string {
    const wanted = expected.name === 'EOF' ? 'the end of the file' : `"${expected.LABEL ?? expected.name}"`;
    return actual.image
      ? `Expected ${wanted} before "${actual.image}".`
      : `The text ends where ${wanted} was expected.`;
  }

  override buildNoViableAltMessage({ actual, previous }: NoAlternative): string {
    if (ACTIONS.has(previous.image))
      return `State which part to ${previous.image}: ${previous.image} gear, for example.`;
    return unexpected(actual[0]?.image);
  }

  override buildNotAllInputParsedMessage({ firstRedundant }: NotAllRead): string {
    return unexpected(firstRedundant.image);
  }

  override buildEarlyExitMessage({ actual }: Early): string {
    return unexpected(actual[0]?.image);
  }
}

function unexpected(image: string | undefined): string {
  return image ? `"${image}" does not fit here.` : 'The text ends in the middle of a statement.';
}
