import { spawnSync } from 'node:child_process';
import { realpathSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { EXTENSION } from '@tailshaft/language';
import { type FileSystemNode, type FileSystemProvider, URI } from 'langium';
import { CannotRun } from '../cannot-run.js';
import { decodeSpec, LARGEST } from './read-text.js';

/** The folder of the repository around a path. */
export function repositoryOf(folder: string, shown: string): string {
  const answer = git(folder, ['rev-parse', '--show-toplevel']);
  if (answer.status !== 0) throw new CannotRun(`${shown} is not in a git repository`);
  return realpathSync(answer.text.trim());
}

/** Where both branches parted: what a review of `first...second` compares with. */
export function mergeBaseOf(top: string, first: string, second: string): string {
  for (const one of [first, second]) refuseOption(one);
  const answer = git(top, ['merge-base', first, second]);
  if (answer.status !== 0)
    throw new CannotRun(`git knows no common revision of "${first}" and "${second}" here`);
  return answer.text.trim();
}

/** Whether git knows a revision by this name. */
export function isRevision(top: string, word: string): boolean {
  return (
    !word.startsWith('-') && git(top, ['rev-parse', '--verify', '--quiet', `${word}^{tree}`]).status === 0
  );
}

function refuseOption(revision: string): void {
  if (revision.startsWith('-')) throw new CannotRun(`"${revision}" is not a git revision`);
}

/** What is staged for the next commit, by the name that it is asked for. */
export const STAGED = 'the index';

/** The specs of one revision, or of the index, as a disk that can only be read. */
export class RevisionFiles implements FileSystemProvider {
  private readonly texts = new Map<string, Buffer | undefined>();
  private readonly folders = new Map<string, FileSystemNode[]>();
  /** Specs by their path that this revision names and does not hold, each with why. */
  private readonly withheld = new Map<string, string>();

  constructor(
    private readonly top: string,
    private readonly revision: string,
  ) {
    const listed =
      revision === STAGED
        ? git(top, ['ls-files', '--stage', '-z'])
        : git(top, ['ls-tree', '-r', '-l', '-z', this.treeOf()]);
    const rows = listed.text.split('\0');
    const blobs = rows.flatMap(revision === STAGED ? stagedOf : blobOf);
    const contents = contentsOf(
      top,
      blobs.filter(one => one.size <= LARGEST).map(one => one.id),
    );
    for (const blob of blobs) {
      const bytes = contents.get(blob.id);
      this.add(join(top, ...blob.path.split('/')), bytes && bytes.length <= LARGEST ? bytes : undefined);
    }
    for (const [path, why] of rows.flatMap(withheldOf)) this.withheld.set(join(top, ...path.split('/')), why);
  }

  /** Specs of this revision at or below a path. */
  specsUnder(path: string): string[] {
    return [...this.texts.keys()].filter(isAtOrBelow(path)).sort();
  }

  /** What this revision names as a spec at or below a path and does not hold, in a sentence each. */
  withheldUnder(path: string): string[] {
    const at = isAtOrBelow(path);
    return [...this.withheld]
      .filter(([one]) => at(one))
      .map(([one, why]) => `${relative(this.top, one).split(sep).join('/')} at ${this.revision} ${why}`)
      .sort();
  }

  async readFile(uri: URI): Promise<string> {
    return this.readFileSync(uri);
  }

  readFileSync(uri: URI): string {
    const shown = `${relative(this.top, uri.fsPath).split(sep).join('/')} at ${this.revision}`;
    if (!this.texts.has(uri.fsPath)) throw new CannotRun(`there is no ${shown}`);
    const bytes = this.texts.get(uri.fsPath);
    if (!bytes) throw new CannotRun(`${shown} is too large to be read as a spec`);
    return decodeSpec(bytes, shown);
  }

  async readBinary(uri: URI): Promise<Uint8Array> {
    return this.readBinarySync(uri);
  }

  readBinarySync(uri: URI): Uint8Array {
    return new TextEncoder().encode(this.readFileSync(uri));
  }

  async exists(uri: URI): Promise<boolean> {
    return this.existsSync(uri);
  }

  existsSync(uri: URI): boolean {
    return this.texts.has(uri.fsPath) || this.folders.has(uri.fsPath);
  }

  async stat(uri: URI): Promise<FileSystemNode> {
    return this.statSync(uri);
  }

  statSync(uri: URI): FileSystemNode {
    const isFile = this.texts.has(uri.fsPath);
    return { isFile, isDirectory: !isFile, uri };
  }

  async readDirectory(uri: URI): Promise<FileSystemNode[]> {
    return this.readDirectorySync(uri);
  }

  readDirectorySync(uri: URI): FileSystemNode[] {
    return this.folders.get(uri.fsPath) ?? [];
  }

  private treeOf(): string {
    refuseOption(this.revision);
    const answer = git(this.top, ['rev-parse', '--verify', '--quiet', `${this.revision}^{tree}`]);
    if (answer.status !== 0) throw new CannotRun(`git knows no revision "${this.revision}" here`);
    return answer.text.trim();
  }

  private add(path: string, bytes: Buffer | undefined): void {
    this.texts.set(path, bytes);
    let node: FileSystemNode = { isFile: true, isDirectory: false, uri: URI.file(path) };
    for (let folder = dirname(path); folder.startsWith(this.top); folder = dirname(folder)) {
      const nodes = this.folders.get(folder);
      if (nodes) {
        nodes.push(node);
        return;
      }
      this.folders.set(folder, [node]);
      node = { isFile: false, isDirectory: true, uri: URI.file(folder) };
    }
  }
}

function isAtOrBelow(path: string): (one: string) => boolean {
  const inside = path.endsWith(sep) ? path : `${path}${sep}`;
  return one => one === path || one.startsWith(inside);
}

interface Blob {
  readonly id: string;
  readonly size: number;
  readonly path: string;
}

/** Of a file with conflicts the index holds the sides apart; a link holds a path and no spec. */
function withheldOf(row: string): [path: string, why: string][] {
  const [, head = '', path] = /^([^\t]+)\t([\s\S]+)$/.exec(row) ?? [];
  if (!path?.endsWith(EXTENSION)) return [];
  if (head.startsWith('120000 ')) return [[path, 'is a symbolic link, which is not followed']];
  const conflict = /^100\d{3} [0-9a-f]+ [123]$/.test(head);
  return conflict ? [[path, 'has conflicts that are not resolved, so that nothing of it is staged']] : [];
}

/** `100644 blob <id> <size>\t<path>`; links, submodules and other files are left out. */
function blobOf(row: string): Blob[] {
  const [, id, size, path] = /^100\d{3} blob ([0-9a-f]+) +(\d+)\t([\s\S]+)$/.exec(row) ?? [];
  return id && size && path?.endsWith(EXTENSION) ? [{ id, size: Number(size), path }] : [];
}

/** `100644 <id> 0\t<path>`; of a file with conflicts, which has other stages, nothing is staged yet. */
function stagedOf(row: string): Blob[] {
  const [, id, path] = /^100\d{3} ([0-9a-f]+) 0\t([\s\S]+)$/.exec(row) ?? [];
  return id && path?.endsWith(EXTENSION) ? [{ id, size: 0, path }] : [];
}

/** All blobs in one process: `<id> blob <size>\n<bytes>\n`, one behind the other. */
function contentsOf(top: string, ids: readonly string[]): Map<string, Buffer> {
  const contents = new Map<string, Buffer>();
  if (ids.length === 0) return contents;
  const { bytes } = git(top, ['cat-file', '--batch'], `${ids.join('\n')}\n`);
  for (let at = 0; at < bytes.length; ) {
    const end = bytes.indexOf(10, at);
    if (end < 0) break;
    const [id = '', , size = ''] = bytes.subarray(at, end).toString('latin1').split(' ');
    const length = Number(size);
    if (!Number.isFinite(length)) break;
    contents.set(id, bytes.subarray(end + 1, end + 1 + length));
    at = end + 1 + length + 1;
  }
  return contents;
}

function git(folder: string, words: readonly string[], input?: string) {
  const answer = spawnSync('git', words, {
    cwd: folder,
    maxBuffer: 1024 * 1024 * 1024,
    ...(input === undefined ? {} : { input }),
  });
  if (answer.error) {
    const missing = (answer.error as NodeJS.ErrnoException).code === 'ENOENT';
    throw new CannotRun(
      missing ? 'git is not installed, or not on the path' : `git did not run: ${answer.error.message}`,
    );
  }
  return { status: answer.status, bytes: answer.stdout, text: answer.stdout.toString('utf8') };
}
