import type { DefaultSharedCoreModuleContext } from 'langium';
import type { LangiumServices } from 'langium/lsp';
import type { Connection } from 'vscode-languageserver';
import type { TailshaftAdded } from '../services/module.js';
import type { EntryFindings } from './entry-findings.js';
import type { PageOf } from './rule-texts.js';
import type { Settings } from './settings.js';
import type { BuildQueue } from './workspace/build-queue.js';
import type { Days } from './workspace/days.js';

/** What the editor server has beside the services of the library. */
export interface ServerAdded extends TailshaftAdded {
  readonly settings: Settings;
  readonly queue: BuildQueue;
  readonly days: Days;
  readonly entryFindings: EntryFindings;
  /** Tells the client's log what went wrong; the server lives on. */
  readonly log: (what: string, error: unknown) => void;
  readonly pageOf: PageOf;
}

export type TailshaftServices = LangiumServices & ServerAdded;

export interface ServerContext extends DefaultSharedCoreModuleContext {
  readonly connection?: Connection;
  /** Shown to the client. */
  readonly version?: string;
  /** Address of the folder with the pages of the findings, where they are installed with the server. */
  readonly pages?: string;
  /** The client has their texts and answers for them: the server itself was built without. */
  readonly asksForPages?: boolean;
}
