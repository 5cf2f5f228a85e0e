import { EmptyFileSystemProvider, type FileSystemNode, URI } from 'langium';

/** A folder of files that exists in memory only. */
export class MemoryFiles extends EmptyFileSystemProvider {
  readonly texts = new Map<string, string>();
  reads = 0;
  /** Files that are there and may not be read. */
  readonly closed = new Set<string>();
  /** Milliseconds that looking into a folder takes, as on a slow disk. */
  delay = 0;
  /** Whether large and small letters are the same, as on most disks of Windows and macOS. */
  blind = false;

  constructor(files: Readonly<Record<string, string>>) {
    super();
    for (const [path, text] of Object.entries(files)) this.texts.set(uriOf(path), text);
  }

  override async exists(uri?: URI): Promise<boolean> {
    return this.find(uri!) !== undefined;
  }

  override async stat(uri: URI): Promise<FileSystemNode> {
    const found = this.find(uri);
    if (!found) throw new Error('no such file');
    return found;
  }

  override async readFile(uri?: URI): Promise<string> {
    const text = this.texts.get(this.spelled(uri!.toString()));
    this.reads += 1;
    if (this.closed.has(uri!.toString())) throw new Error('may not be read');
    if (text === undefined) throw new Error('no such file');
    return text;
  }

  override async readDirectory(uri?: URI): Promise<FileSystemNode[]> {
    if (this.delay > 0) await new Promise(done => setTimeout(done, this.delay));
    const base = `${this.spelled(uri!.toString().replace(/\/$/, ''))}/`;
    const names = new Set<string>();
    for (const one of this.texts.keys())
      if (one.startsWith(base)) names.add(one.slice(base.length).split('/')[0]!);
    return [...names].map(name => this.find(URI.parse(base + name))!);
  }

  /** Where a path really lies, spelled as the disk does. */
  async realPath(uri: URI): Promise<URI> {
    return URI.parse(this.spelled(uri.toString()));
  }

  /** The spelling of a blind disk; what is not there stays as it is. */
  private spelled(address: string): string {
    if (!this.blind) return address;
    const small = address.toLowerCase();
    const found = [...this.texts.keys()].find(
      one => one.toLowerCase() === small || one.toLowerCase().startsWith(`${small}/`),
    );
    return found?.slice(0, address.length) ?? address;
  }

  private find(uri: URI): FileSystemNode | undefined {
    const key = this.spelled(uri.toString().replace(/\/$/, ''));
    if (this.texts.has(key)) return { uri, isFile: true, isDirectory: false };
    const isFolder = [...this.texts.keys()].some(one => one.startsWith(`${key}/`));
    return isFolder ? { uri, isFile: false, isDirectory: true } : undefined;
  }
}

export const FOLDER = 'file:///yard';

/** `parts/gears.shaft` as an address. */
export function uriOf(path: string): string {
  return `${FOLDER}/${path}`;
}
