import type { URI } from 'langium';
import { isWithin } from '../../project/imports.js';

/** Where a text can stand that is opened in a window without a folder. */
const ALONE = new Set(['file', 'vscode-vfs', 'vscode-remote', 'memfs']);

/**
 * Whether a text is one of the workspace, saved or not yet. Others are shown by the editor without being the spec: the
 * old side of a comparison with git, the history of a file, a file of another folder whose imports may not be read.
 */
export function belongs(uri: URI, roots: readonly URI[]): boolean {
  if (uri.scheme === 'untitled') return true;
  return roots.length === 0 ? ALONE.has(uri.scheme) : roots.some(root => isWithin(root, uri));
}
