import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createRequire, wrap } from 'node:module';
import { dirname } from 'node:path';
import { Script } from 'node:vm';
import { cacheFolder } from './cache-folder.js';
import { keep, readKept } from './kept-code.js';

/** Those whose runs are many. */
const COMMANDS = new Set(['check', 'compare', 'describe', 'format', 'serve', 'sheet']);

type Program = (
  exports: object,
  require: NodeJS.Require,
  module: { exports: object },
  file: string,
  folder: string,
) => void;

/**
 * Runs a bundle as `require` would, with the code that an earlier run of the same command compiled: two fifths of a short
 * run are compiling. Whatever is wrong with the kept code, the program is compiled afresh and does the same.
 */
export function runCompiled(path: string, command = ''): void {
  const text = readFileSync(path);
  const folder = cacheFolder(process.env, process.platform);
  const name = keptName(text, command);
  const kept = folder === undefined ? undefined : readKept(folder, name);
  const script = new Script(wrap(text.toString()), { filename: path, ...(kept ? { cachedData: kept } : {}) });
  if (folder !== undefined && (!kept || script.cachedDataRejected))
    // What was needed is known only when the command is done.
    process.once('exit', () => keep(folder, name, script.createCachedData()));
  const module = { exports: {} };
  const program = script.runInThisContext() as Program;
  program(module.exports, createRequire(path), module, path, dirname(path));
}

/** Code fits one program, one version of Node and its switches; each command needs another part of it. */
function keptName(text: Buffer, command: string): string {
  const switches = [process.version, process.arch, ...process.execArgv, process.env.NODE_OPTIONS ?? ''].join(
    ' ',
  );
  const made = createHash('sha256').update(text).update(switches).digest('hex').slice(0, 16);
  return `${made}-${COMMANDS.has(command) ? command : 'other'}`;
}
