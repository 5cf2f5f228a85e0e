import { startNodeServer } from '@tailshaft/language/node';
import { CannotRun } from '../cannot-run.js';
import type { Command } from '../command.js';
import { installedPages } from '../installed-pages.js';
import { VERSION } from '../version.js';

export const serve: Command = {
  usage: ['tailshaft serve [--stdio]'],
  about:
    'Runs the language server. An editor starts it and speaks the Language Server Protocol over stdin and stdout.',
  options: [
    { name: 'stdio', means: 'Speak over stdin and stdout; the default, and the only way.' },
    { name: 'clientProcessId', takes: '<id>', means: 'Process id of the editor, as editors pass it.' },
  ],
  notes: [],
  async run(_io, _given, words) {
    if (words.length > 0) throw new CannotRun('serve takes no paths: the editor names the files');
    // The protocol library looks for the way of speaking among the arguments of the process.
    if (!process.argv.includes('--stdio')) process.argv.push('--stdio');
    const pages = installedPages();
    startNodeServer({ version: VERSION, ...(pages ? { pages } : {}) });
    // The server ends the process itself, with the status that the protocol asks for.
    return new Promise<number>(() => {});
  },
};
