import { type LangiumDocument, URI, UriUtils } from 'langium';
import type { RenameFilesParams, WorkspaceEdit } from 'vscode-languageserver';
import { workspaceEdit } from '../actions/workspace-edit.js';
import type { TextEdit } from '../edit/text-edit.js';
import { EXTENSION, importTarget, relativePath, withoutExtension } from '../project/imports.js';
import type { TailshaftServices } from './services.js';

/** Imports rewritten so that they still find what they found, after files or folders get other names or places. */
export function importsAfterRename(
  services: TailshaftServices,
  { files }: RenameFilesParams,
): WorkspaceEdit | undefined {
  const moves = files.map(one => ({ from: URI.parse(one.oldUri).path, to: URI.parse(one.newUri).path }));
  const moved = (path: string) => {
    for (const { from, to } of moves) {
      if (path === from) return to;
      if (path.startsWith(`${from}/`)) return to + path.slice(from.length);
    }
    return path;
  };
  const { workspace } = services.shared;
  const edits = workspace.LangiumDocuments.all.toArray().flatMap(one => editsIn(services, one, moved));
  return edits.length > 0 ? workspaceEdit(edits, workspace) : undefined;
}

function editsIn(
  { project }: TailshaftServices,
  document: LangiumDocument,
  moved: (path: string) => string,
): TextEdit[] {
  const folder = UriUtils.dirname(document.uri.with({ path: moved(document.uri.path) })).path;
  return project.summary(document).imports.flatMap(wanted => {
    const found = project.importedFiles(document, wanted.path);
    if (found.length === 0) return [];
    const written = importTarget(document.uri, wanted).path;
    // `import "gears"` may mean gears.shaft.
    const bare = found.length === 1 && found[0]!.path === `${written}${EXTENSION}`;
    const target = moved(bare ? found[0]!.path : written);
    const unmoved =
      target === (bare ? found[0]!.path : written) && moved(document.uri.path) === document.uri.path;
    const path = relativePath(folder, bare ? withoutExtension(target) : target);
    if (unmoved || path === wanted.path) return [];
    const start = wanted.place.start + 1;
    return [{ uri: document.uri.toString(), start, end: start + wanted.path.length, text: path }];
  });
}
