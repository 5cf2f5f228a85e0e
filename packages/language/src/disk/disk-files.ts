import { promises as fs } from 'node:fs';
import { type FileSystemNode, URI, UriUtils } from 'langium';
import { NodeFileSystemProvider } from 'langium/node';

/** A file that no person wrote by hand, nor means as a spec. */
const UNREADABLE = 64 * 1024 * 1024;

/** The disk, with symbolic links told apart from what they lead to. */
export class DiskFiles extends NodeFileSystemProvider {
  override async readFile(uri: URI): Promise<string> {
    const { size } = await fs.stat(uri.fsPath);
    if (size > UNREADABLE) throw new Error(`${UriUtils.basename(uri)} is too large to be read`);
    return super.readFile(uri);
  }

  /** What a link leads to is listed as a file or folder, and marked; one that leads nowhere is neither. */
  override async readDirectory(uri: URI): Promise<FileSystemNode[]> {
    const entries = await fs.readdir(uri.fsPath, { withFileTypes: true });
    return Promise.all(
      entries.map(async entry => {
        const child = UriUtils.joinPath(uri, entry.name);
        if (!entry.isSymbolicLink())
          return { uri: child, isFile: entry.isFile(), isDirectory: entry.isDirectory() };
        const target = await fs.stat(child.fsPath).catch(() => undefined);
        return {
          uri: child,
          isFile: target?.isFile() === true,
          isDirectory: target?.isDirectory() === true,
          isLink: true,
        };
      }),
    );
  }

  /** Where a path really lies, all links followed. */
  async realPath(uri: URI): Promise<URI> {
    return URI.file(await fs.realpath(uri.fsPath));
  }
}
