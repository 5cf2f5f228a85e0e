import * as vscode from 'vscode';

/** The little that is needed of the editor's own git extension. */
interface Repository {
  show(revision: string, path: string): Promise<string>;
}

interface GitExtension {
  getAPI(version: 1): { getRepository(uri: vscode.Uri): Repository | null };
}

/** The repository around a file; nothing in a browser, where the editor has no git. */
export async function repositoryOf(file: vscode.Uri): Promise<Repository | undefined> {
  const extension = vscode.extensions.getExtension<GitExtension>('vscode.git');
  if (!extension) return undefined;
  const git = extension.isActive ? extension.exports : await extension.activate();
  return git.getAPI(1).getRepository(file) ?? undefined;
}

/** Texts of files at a revision; those that were not there then are left out. */
export async function textsAt(
  repository: Repository,
  revision: string,
  files: readonly string[],
): Promise<Record<string, string>> {
  const texts: Record<string, string> = {};
  for (const file of new Set(files)) {
    try {
      texts[file] = await repository.show(revision, vscode.Uri.parse(file).fsPath);
    } catch {
      // It came later.
    }
  }
  return texts;
}
