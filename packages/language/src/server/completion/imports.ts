import { type FileSystemProvider, type URI, UriUtils } from 'langium';
import { CompletionItemKind } from 'vscode-languageserver';
import { EXTENSION, isWithin } from '../../project/imports.js';
import type { Offer } from './items.js';

const MOST = 200;

/** Files and folders beside this one, for the path of an import as far as it is typed. */
export async function importOffers(
  files: FileSystemProvider,
  from: URI,
  typed: string,
  start: number,
  roots: readonly URI[],
): Promise<Offer[]> {
  const slash = typed.lastIndexOf('/') + 1;
  const folder = UriUtils.resolvePath(UriUtils.dirname(from), typed.slice(0, slash) || '.');
  if (roots.length > 0 && !roots.some(root => isWithin(root, folder) || root.path === folder.path)) return [];
  try {
    const found = await files.readDirectory(folder);
    return found
      .map(node => ({ node, name: UriUtils.basename(node.uri) }))
      .filter(
        ({ node, name }) => !name.startsWith('.') && name !== 'node_modules' && node.uri.path !== from.path,
      )
      .filter(({ node, name }) => node.isDirectory || name.endsWith(EXTENSION))
      .slice(0, MOST)
      .map(({ node, name }) => ({
        label: node.isDirectory ? `${name}/` : name,
        insert: node.isDirectory ? name : name.slice(0, -EXTENSION.length),
        filter: name,
        from: start + slash,
        kind: node.isDirectory ? CompletionItemKind.Folder : CompletionItemKind.File,
        detail: node.isDirectory ? 'every spec in the folder' : 'one file',
      }));
  } catch {
    return [];
  }
}
