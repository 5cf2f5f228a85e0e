import type { AstNode, AsyncParser, LangiumCoreServices, LangiumParser, ParseResult } from 'langium';
import { isTooLarge } from '../project/size.js';

/** A text whose syntax tree is made when somebody asks for it: most questions are answered from readings. */
export class LazyParse implements ParseResult {
  value: AstNode;
  private made: ParseResult | undefined;

  constructor(
    readonly text: string,
    private readonly parser: LangiumParser,
  ) {
    const full = () => this.full;
    this.value = {
      $type: 'Document',
      get statements() {
        return (full().value as AstNode & { statements: AstNode[] }).statements;
      },
      get $cstNode() {
        return full().value.$cstNode;
      },
    } as AstNode;
  }

  /** Lets go of the tree; it is made again when somebody looks at it. */
  forget(): void {
    this.made = undefined;
  }

  get lexerErrors() {
    return this.full.lexerErrors;
  }

  get parserErrors() {
    return this.full.parserErrors;
  }

  private get full(): ParseResult {
    // What is too large to be read has no tree that could be asked for.
    this.made ??= this.parser.parse(isTooLarge(this.text) ? '' : this.text);
    return this.made;
  }
}

/** Puts parsing off until the tree is looked at. */
export class LazyParser implements AsyncParser {
  constructor(private readonly services: LangiumCoreServices) {}

  parse<T extends AstNode>(text: string): Promise<ParseResult<T>> {
    return Promise.resolve(
      new LazyParse(text, this.services.parser.LangiumParser) as ParseResult as ParseResult<T>,
    );
  }
}
