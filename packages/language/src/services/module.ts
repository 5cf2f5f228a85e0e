import {
  createDefaultCoreModule,
  createDefaultSharedCoreModule,
  type DefaultSharedCoreModuleContext,
  inject,
  type LangiumCoreServices,
  type LangiumSharedCoreServices,
  type Module,
  type PartialLangiumCoreServices,
} from 'langium';
import { TailshaftGeneratedModule, TailshaftGeneratedSharedModule } from '../generated/module.js';
import { LazyParser } from '../incremental/lazy-parse.js';
import { Project } from '../project/project.js';
import { BraceRepairLexer } from './brace-repair.js';
import { ParserMessages } from './parser-messages.js';

/** Services that every host of the language shares: editor server, command line, tests. */
export interface TailshaftAdded {
  readonly project: Project;
}

export type TailshaftCore = LangiumCoreServices & TailshaftAdded;

/** What this language puts in the place of the library's defaults, without any editor protocol. */
export const tailshaftCoreModule = (
  project: Project,
): Module<TailshaftCore, PartialLangiumCoreServices & TailshaftAdded> => ({
  project: () => project,
  parser: {
    AsyncParser: services => new LazyParser(services),
    Lexer: services => new BraceRepairLexer(services),
    ParserErrorMessageProvider: () => new ParserMessages(),
    // Two words decide everywhere, and a block belongs to what stands before it. Asked to look on as far as it takes, the
    // parser reads every block twice, and gives up one in which a word is wrong.
    ParserConfig: () => ({ maxLookahead: 2 }),
  },
});

/** Parser, documents and checks, for hosts that speak no editor protocol. */
export function createTailshaftCore(context: DefaultSharedCoreModuleContext): {
  shared: LangiumSharedCoreServices;
  language: TailshaftCore;
} {
  const shared = inject(createDefaultSharedCoreModule(context), TailshaftGeneratedSharedModule);
  const project = new Project(shared);
  const language = inject(
    createDefaultCoreModule({ shared }),
    TailshaftGeneratedModule,
    tailshaftCoreModule(project),
  ) as TailshaftCore;
  shared.ServiceRegistry.register(language);
  return { shared, language };
}
