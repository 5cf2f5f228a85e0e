import { type FileSystemNode, type FileSystemProvider, URI } from 'langium';
import type { Files } from './api.js';

/** Texts that lie nowhere but in memory, as a disk that can only be read. */
export class MemoryFiles implements FileSystemProvider {
  private readonly texts = new Map<string, string>();
  private readonly folders = new Map<string, Map<string, FileSystemNode>>([['/', new Map()]]);

  constructor(files: Files) {
    for (const [path, text] of Object.entries(files)) this.add(uriOf(path), text);
  }

  readFileSync(uri: URI): string {
    const text = this.texts.get(uri.path);
    if (text === undefined) throw new Error(`there is no ${uri.path.slice(1)} among the files`);
    return text;
  }

  readBinarySync(uri: URI): Uint8Array {
    return new TextEncoder().encode(this.readFileSync(uri));
  }

  existsSync(uri: URI): boolean {
    return this.texts.has(uri.path) || this.folders.has(uri.path);
  }

  statSync(uri: URI): FileSystemNode {
    const isFile = this.texts.has(uri.path);
    return { isFile, isDirectory: !isFile, uri };
  }

  readDirectorySync(uri: URI): FileSystemNode[] {
    return [...(this.folders.get(uri.path)?.values() ?? [])];
  }

  async readFile(uri: URI): Promise<string> {
    return this.readFileSync(uri);
  }

  async readBinary(uri: URI): Promise<Uint8Array> {
    return this.readBinarySync(uri);
  }

  async exists(uri: URI): Promise<boolean> {
    return this.existsSync(uri);
  }

  async stat(uri: URI): Promise<FileSystemNode> {
    return this.statSync(uri);
  }

  async readDirectory(uri: URI): Promise<FileSystemNode[]> {
    return this.readDirectorySync(uri);
  }

  private add(uri: URI, text: string): void {
    this.texts.set(uri.path, text);
    let node: FileSystemNode = { isFile: true, isDirectory: false, uri };
    for (let path = uri.path; path !== '/'; ) {
      path = path.slice(0, path.lastIndexOf('/')) || '/';
      const inside = this.folders.get(path) ?? new Map<string, FileSystemNode>();
      inside.set(node.uri.path, node);
      this.folders.set(path, inside);
      node = { isFile: false, isDirectory: true, uri: URI.from({ scheme: 'file', path }) };
    }
  }
}

/** Where a path lies. It may say `./`, and what leads out of the folder stays in it. */
export function uriOf(path: string): URI {
  const names: string[] = [];
  for (const name of path.split('/')) {
    if (name === '..') names.pop();
    else if (name !== '' && name !== '.') names.push(name);
  }
  return URI.from({ scheme: 'file', path: `/${names.join('/')}` });
}
