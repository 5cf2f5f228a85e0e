import type * as vscode from 'vscode';
import type { Requests } from './requests.js';

export const LANGUAGE = 'tailshaft';

/** The server as the features of this extension see it; it stays the same when the server is started anew. */
export interface Session {
  /** Nothing where the server does not answer: it is starting, or it stopped. */
  request<Name extends keyof Requests>(
    name: Name,
    ...given: Requests[Name][0] extends undefined ? [] : [Requests[Name][0]]
  ): Promise<Requests[Name][1] | undefined>;
  /** Address of a file that was checked anew. */
  readonly onChecked: vscode.Event<string>;
}
