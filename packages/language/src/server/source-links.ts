import { type FileSystemProvider, type LangiumDocument, type URI, UriUtils } from 'langium';
import type { DocumentLink } from 'vscode-languageserver';
import { isWithin } from '../project/imports.js';
import { scan } from '../text/scan.js';
import { rangeIn } from './places.js';
import type { TailshaftServices } from './services.js';

/** `sheets/alder-63.pdf`: a document that lies with the specs. */
const FILE = /^[^\s:<>|?*"\\]+\.[a-z0-9]{2,5}$/i;
const ADDRESS = /^https?:\/\/\S+$/i;

/** Sources and drawings that are addresses, or files of the workspace beside the spec, as links. */
export async function sourceLinks(
  { project, shared }: TailshaftServices,
  document: LangiumDocument,
): Promise<DocumentLink[]> {
  const imports = new Set(project.reading(document).imports.map(one => one.place.start));
  const files = shared.workspace.FileSystemProvider;
  const links: DocumentLink[] = [];
  for (const token of scan(document.textDocument.getText())) {
    if (token.kind !== 'string' || imports.has(token.start)) continue;
    const said = token.text.replace(/^"|"$/g, '');
    const target = await targetOf(said, document.uri, project.roots, files);
    const range = rangeIn(document.textDocument, {
      start: token.start + 1,
      end: token.start + 1 + said.length,
    });
    if (target) links.push({ range, target, tooltip: `Open ${said}` });
  }
  return links;
}

async function targetOf(
  said: string,
  from: URI,
  roots: readonly URI[],
  files: FileSystemProvider,
): Promise<string | undefined> {
  if (ADDRESS.test(said)) return said;
  if (!FILE.test(said) || said.startsWith('/')) return undefined;
  const target = UriUtils.resolvePath(UriUtils.dirname(from), said);
  if (!roots.some(root => isWithin(root, target)) || !(await files.exists(target))) return undefined;
  return target.toString();
}
