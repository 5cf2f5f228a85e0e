import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import { ProgramThread } from './program-thread.js';

const root = resolve(import.meta.dirname, '../..');
export const bundle = join(root, 'packages/cli/dist/tailshaft.cjs');

/** Builds the command line that is handed out, for tests of the process itself, from the sources as they are. */
export function builtBefore(): void {
  beforeAll(() => {
    execFileSync(process.execPath, [join(root, 'packages/cli/build.mjs')], { stdio: 'inherit' });
  }, 120_000);
}

export interface Answer {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

interface Around {
  readonly cwd: string;
  readonly input?: string | Buffer;
  readonly env?: Readonly<Record<string, string>>;
}

const wordsOf = (words: string) => words.split(' ').filter(Boolean);

function environment(more: Readonly<Record<string, string>>) {
  const { NO_COLOR: _no, FORCE_COLOR: _force, ...rest } = process.env;
  // Tests leave nothing in the caches of who runs them.
  return { ...rest, TAILSHAFT_CACHE: '', ...more } as Record<string, string>;
}

/** Runs the built command line as a process of its own: half a second, so only where the process is what is tested. */
export function tailshaftProcess(words: string, { cwd, input, env = {} }: Around): Answer {
  const { status, stdout, stderr } = spawnSync(process.execPath, [bundle, ...wordsOf(words)], {
    cwd,
    encoding: 'utf8',
    env: environment(env),
    input: input ?? '',
    maxBuffer: 64 * 1024 * 1024,
  });
  return { status, stdout, stderr };
}

let thread: ProgramThread | undefined;

/** Runs the program of the command line, without the process around it, with its words. */
export function tailshaft(words: string, { cwd, input, env = {} }: Around): Answer {
  thread ??= new ProgramThread();
  return thread.run({ args: wordsOf(words), cwd, input: Buffer.from(input ?? ''), env: environment(env) });
}

/** What no answer may ever hold: a trace, or the name of something inside the program. */
export const TRACE = /\n\s+at \S+ \(|node:internal|TypeError|RangeError|call stack|(?<!-)undefined|\[object/;

/** Folders that go when the tests of the file are done. */
export function folders(): (files?: Readonly<Record<string, string | Buffer>>) => string {
  const made: string[] = [];
  afterAll(() => {
    for (const one of made) rmSync(one, { recursive: true, force: true });
  });
  return (files = {}) => {
    const folder = realpathSync(mkdtempSync(join(tmpdir(), 'tailshaft-')));
    made.push(folder);
    for (const [path, text] of Object.entries(files)) put(folder, path, text);
    return folder;
  };
}

/** Writes a file with the folders it needs. */
export function put(folder: string, path: string, text: string | Buffer): void {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), text);
}
