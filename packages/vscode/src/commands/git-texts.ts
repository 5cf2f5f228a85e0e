import * as vscode from 'vscode';
import type { OtherTexts } from '../requests.js';
import type { Session } from '../session.js';

/** The little that is needed of the editor's own git extension. */
interface Repository {
  show(revision: string, path: string): Promise<string>;
  /** Files that differ between a revision and the disk, under the names that they had then. */
  diffWith(revision: string): Promise<readonly { readonly originalUri: vscode.Uri }[]>;
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

/**
 * A spec at a revision with all that it imported then, whatever it imports today. Nothing when the spec was not
 * there.
 */
export async function textsAt(
  session: Session,
  repository: Repository,
  revision: string,
  spec: vscode.Uri,
): Promise<OtherTexts | undefined> {
  const uri = spec.toString();
  const texts: Record<string, string> = {};
  const asked = new Set<string>();
  const take = async (file: vscode.Uri) => {
    const name = file.toString();
    if (asked.has(name)) return false;
    asked.add(name);
    try {
      texts[name] = await repository.show(revision, file.fsPath);
      return true;
    } catch {
      // It came later.
      return false;
    }
  };
  if (!(await take(spec))) return undefined;
  const changed = (await repository.diffWith(revision)).map(one => one.originalUri);
  for (let found = true; found; ) {
    found = false;
    for (const wanted of (await session.request('tailshaft/wanted', { uri, texts })) ?? [])
      for (const file of await filesAt(vscode.Uri.parse(wanted), changed)) if (await take(file)) found = true;
  }
  return { uri, texts };
}

/** The file of an address, or the specs that a folder of that address holds or held. */
async function filesAt(address: vscode.Uri, changed: readonly vscode.Uri[]): Promise<vscode.Uri[]> {
  if (address.path.endsWith(EXTENSION)) return [address];
  const held = changed.filter(
    ({ path }) => path.endsWith(EXTENSION) && path.slice(0, path.lastIndexOf('/')) === address.path,
  );
  try {
    const listed = await vscode.workspace.fs.readDirectory(address);
    return [
      ...held,
      ...listed
        .filter(([name]) => name.endsWith(EXTENSION))
        .map(([name]) => vscode.Uri.joinPath(address, name)),
    ];
  } catch {
    // No folder today.
    return held;
  }
}

const EXTENSION = '.shaft';
