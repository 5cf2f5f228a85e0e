import {
  DefaultWorkspaceManager,
  type FileSystemNode,
  type LangiumSharedCoreServices,
  URI,
  UriUtils,
  type WorkspaceFolder,
} from 'langium';
import type { InitializeParams } from 'vscode-languageserver';
import { EXTENSION } from '../../project/imports.js';
import { isLink } from '../../project/links.js';
import type { Project } from '../../project/project.js';
import type { Later } from './builder.js';

/** How far the search for specs goes; a folder of a whole disk must not stop the editor. */
const SCAN_LIMITS = { depth: 12, files: 5000, folders: 20000 };

/**
 * Finds the specs of the workspace without making anybody wait: the server is ready at once, open files come first,
 * and the files found are read in the background.
 */
export class WorkspaceScan extends DefaultWorkspaceManager {
  background: Later | undefined;
  private scans: Promise<unknown> = Promise.resolve();
  private searches = 0;

  constructor(
    services: LangiumSharedCoreServices,
    private readonly project: () => Project,
    private readonly tell: (message: string) => void,
  ) {
    super(services);
  }

  override initialize(params: InitializeParams): void {
    const root = params.rootUri
      ? [{ uri: params.rootUri, name: UriUtils.basename(URI.parse(params.rootUri)) }]
      : [];
    this.folders = params.workspaceFolders ?? root;
    this.setRoots();
  }

  override async initializeWorkspace(folders: WorkspaceFolder[]): Promise<void> {
    this.startScan(folders);
    this._ready.resolve();
  }

  /** Whether folders are still being looked into. */
  get searching(): boolean {
    return this.searches > 0;
  }

  /** Resolves when the folders told of so far have been searched, and what was found waits to be read. */
  async found(): Promise<void> {
    for (let scans: unknown; scans !== this.scans; ) {
      scans = this.scans;
      await this.scans;
    }
  }

  /** Folders that came to the workspace or left it. */
  changeFolders(added: readonly WorkspaceFolder[], removed: readonly WorkspaceFolder[]): void {
    const gone = new Set(removed.map(folder => folder.uri));
    this.folders = [...(this.folders ?? []).filter(folder => !gone.has(folder.uri)), ...added];
    this.setRoots();
    this.startScan(added);
  }

  override shouldIncludeEntry(entry: FileSystemNode): boolean {
    const name = UriUtils.basename(entry.uri);
    // What a link leads to is read where it lies, or when it is opened or imported.
    if (isLink(entry)) return false;
    if (name.startsWith('.') || name === 'node_modules') return false;
    return entry.isDirectory || (entry.isFile && name.endsWith(EXTENSION));
  }

  override async searchFolder(folder: URI): Promise<URI[]> {
    const found: URI[] = [];
    let waiting = [{ folder, depth: 0 }];
    let folders = 0;
    while (waiting.length > 0) {
      const next: typeof waiting = [];
      for (const one of waiting) {
        folders += 1;
        if (folders > SCAN_LIMITS.folders || found.length >= SCAN_LIMITS.files) {
          this.tell(
            `The workspace is large: ${found.length} specs of ${folder.path} were read ahead of time; the others are read when they are opened or imported.`,
          );
          return found;
        }
        for (const entry of await this.entriesOf(one.folder)) {
          if (!this.shouldIncludeEntry(entry)) continue;
          if (entry.isFile) found.push(entry.uri);
          else if (one.depth < SCAN_LIMITS.depth) next.push({ folder: entry.uri, depth: one.depth + 1 });
        }
      }
      waiting = next;
    }
    return found;
  }

  private startScan(folders: readonly WorkspaceFolder[]): void {
    this.searches += 1;
    const scan = this.scan(folders).finally(() => {
      this.searches -= 1;
    });
    this.scans = Promise.all([this.scans, scan]);
  }

  private async scan(folders: readonly WorkspaceFolder[]): Promise<void> {
    for (const folder of folders) {
      const found = await this.searchFolder(URI.parse(folder.uri));
      this.background?.later(found);
    }
  }

  private async entriesOf(folder: URI): Promise<FileSystemNode[]> {
    try {
      return await this.fileSystemProvider.readDirectory(folder);
    } catch {
      return [];
    }
  }

  private setRoots(): void {
    this.project().roots = (this.folders ?? []).map(folder => URI.parse(folder.uri));
  }
}
