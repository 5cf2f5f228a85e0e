import { EmptyFileSystemProvider, type FileSystemNode, type URI, UriUtils } from 'langium';
import type { Connection } from 'vscode-languageserver';

/*
 * Files by way of the client, for a server that can open none itself. The client answers three requests:
 *   tailshaft/fs/stat           { uri } -> { isFile, isDirectory } | null
 *   tailshaft/fs/readFile       { uri } -> { text } | null
 *   tailshaft/fs/readDirectory  { uri } -> { entries: { name, isFile, isDirectory }[] } | null
 * `null` says that there is no such thing, or that it may not be read.
 */
export const FS_STAT = 'tailshaft/fs/stat';
export const FS_READ_FILE = 'tailshaft/fs/readFile';
export const FS_READ_DIRECTORY = 'tailshaft/fs/readDirectory';

export interface FsParams {
  readonly uri: string;
}
export interface FsStat {
  readonly isFile: boolean;
  readonly isDirectory: boolean;
}
export interface FsText {
  readonly text: string;
}
export interface FsEntries {
  readonly entries: readonly (FsStat & { readonly name: string })[];
}

export class ClientFileSystem extends EmptyFileSystemProvider {
  constructor(private readonly connection: Pick<Connection, 'sendRequest'>) {
    super();
  }

  override async stat(uri: URI): Promise<FileSystemNode> {
    return { ...(await this.wanted<FsStat>(FS_STAT, uri)), uri };
  }

  override async exists(uri?: URI): Promise<boolean> {
    return uri !== undefined && (await this.ask<FsStat>(FS_STAT, uri)) !== null;
  }

  override async readFile(uri?: URI): Promise<string> {
    return (await this.wanted<FsText>(FS_READ_FILE, uri!)).text;
  }

  override async readDirectory(uri?: URI): Promise<FileSystemNode[]> {
    const { entries } = await this.wanted<FsEntries>(FS_READ_DIRECTORY, uri!);
    return entries.map(({ name, isFile, isDirectory }) => ({
      isFile,
      isDirectory,
      uri: UriUtils.joinPath(uri!, name),
    }));
  }

  private async wanted<T>(method: string, uri: URI): Promise<T> {
    const answer = await this.ask<T>(method, uri);
    if (answer === null) throw new Error(`${uri.path} cannot be read`);
    return answer;
  }

  private ask<T>(method: string, uri: URI): Promise<T | null> {
    return this.connection.sendRequest<T | null>(method, { uri: uri.toString() } satisfies FsParams);
  }
}
