import { type FSWatcher, watch } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { EXTENSION } from '@tailshaft/language';
import { CannotRun, reasonOf } from '../cannot-run.js';
import { shownPath } from '../specs/find.js';
import { isPattern, patternBase } from '../specs/pattern.js';
import type { Io } from '../terminal/io.js';

/** Editors write a file in several steps; they are one change. */
const SETTLES = 150;

/**
 * Runs a check, and again whenever a spec in one of its folders changes, until the process is told to stop. Ends with
 * the status of the last run. What cannot be read is told, and may be there the next time.
 */
export async function againWhenChanged(
  io: Io,
  words: readonly string[],
  once: () => Promise<{ status: number; read: ReadonlySet<string> }>,
): Promise<number> {
  const stopped = new Promise<void>(done => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => done());
  });
  let last = { status: 2, read: new Set<string>() as ReadonlySet<string> };
  for (;;) {
    // Watched before it is read: a change meanwhile is not missed.
    const watched = new Watched(await foldersOf(io, words, last.read));
    try {
      last = await once();
    } catch (error) {
      if (!(error instanceof CannotRun)) throw error;
      io.complain(error.message);
      last = { status: 2, read: last.read };
    }
    watched.add(await foldersOf(io, words, last.read));
    io.complain('waiting for a change; Ctrl-C ends');
    const changed = await Promise.race([stopped, watched.change]);
    watched.close();
    if (changed === undefined) return last.status;
    io.out(`\n${new Date().toTimeString().slice(0, 8)}  ${shownPath(changed, io.cwd)} changed`);
  }
}

class Watched {
  readonly change: Promise<string>;
  private readonly watchers = new Map<string, FSWatcher>();
  private changed!: (path: string) => void;
  private timer: NodeJS.Timeout | undefined;

  constructor(folders: ReadonlySet<string>) {
    this.change = new Promise(done => {
      this.changed = done;
    });
    this.add(folders);
  }

  add(folders: ReadonlySet<string>): void {
    for (const folder of folders) {
      if (this.watchers.has(folder)) continue;
      try {
        const watcher = watch(folder, (_, name) => this.see(folder, name));
        // A folder that is deleted ends its own watch, and its parent tells of it.
        watcher.on('error', () => watcher.close());
        this.watchers.set(folder, watcher);
      } catch (error) {
        throw new CannotRun(`the folder ${folder} cannot be watched: ${reasonOf(error)}`);
      }
    }
  }

  close(): void {
    clearTimeout(this.timer);
    for (const one of this.watchers.values()) one.close();
  }

  private see(folder: string, name: string | null): void {
    // What we write beside a file before it takes its place, and what editors keep beside it, is no spec.
    if (name !== null && (name.startsWith('.') || (name.includes('.') && !name.endsWith(EXTENSION)))) return;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.changed(join(folder, name ?? '')), SETTLES);
  }
}

/** Every folder that a change of which may concern: those named with all below, and those of files that were read. */
async function foldersOf(io: Io, words: readonly string[], read: ReadonlySet<string>): Promise<Set<string>> {
  const folders = new Set([...read].map(dirname));
  for (const word of words) {
    if (word.startsWith('!')) continue;
    const path = resolve(io.cwd, isPattern(word) ? patternBase(word) : word);
    const node = await stat(path).catch(() => undefined);
    if (node?.isDirectory()) await addBelow(path, folders);
    else if (node) folders.add(dirname(path));
  }
  return folders;
}

async function addBelow(folder: string, folders: Set<string>): Promise<void> {
  folders.add(folder);
  const inside = await readdir(folder, { withFileTypes: true }).catch(() => []);
  for (const one of inside)
    if (one.isDirectory() && !one.name.startsWith('.') && one.name !== 'node_modules')
      await addBelow(join(folder, one.name), folders);
}
