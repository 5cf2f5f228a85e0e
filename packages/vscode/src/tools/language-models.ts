import * as vscode from 'vscode';

/*
 * The little that is needed of the editor's language-model tools. Older editors that this extension runs in have none, so
 * their types are not among those it is built with.
 */

export interface LanguageModels {
  registerTool<T>(name: string, tool: Tool<T>): vscode.Disposable;
}

export interface Tool<T> {
  invoke(options: { readonly input: T }, token: vscode.CancellationToken): Promise<unknown>;
  prepareInvocation?(options: { readonly input: T }): {
    readonly invocationMessage: string;
    readonly confirmationMessages: { readonly title: string; readonly message: vscode.MarkdownString };
  };
}

/** A result of one text; the classes are the editor's, and there only where it has tools. */
export function textResult(text: string): unknown {
  const classes = vscode as unknown as Record<string, new (given: unknown) => unknown>;
  return new classes.LanguageModelToolResult!([new classes.LanguageModelTextPart!(text)]);
}
