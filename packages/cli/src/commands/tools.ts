import { spawn } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { CannotRun } from '../cannot-run.js';
import { type Command, textOf } from '../command.js';

export const tools: Command = {
  usage: ['tailshaft tools [--root <folder>]'],
  about:
    'Offers checks to agents: runs a server of the Model Context Protocol over stdin and stdout. Its tools judge specs, ' +
    'explain a rule, list open questions and compare two revisions. They read and never write, and nothing outside the folder.',
  options: [
    {
      name: 'root',
      takes: '<folder>',
      means: 'The workspace folder, outside which nothing is read; the current folder without it.',
    },
  ],
  notes: [
    'A program that knows the protocol starts it, such as: { "command": "tailshaft", "args": ["tools"] }',
  ],
  async run(io, given, words) {
    if (words.length > 0) throw new CannotRun('tools takes no paths: name the folder with --root');
    const root = resolve(io.cwd, textOf(given, 'root') ?? '.');
    if (!statSync(root, { throwIfNoEntry: false })?.isDirectory())
      throw new CannotRun(`${textOf(given, 'root') ?? root} is not a folder`);
    const bundle = join(__dirname, 'tools.cjs');
    if (!existsSync(bundle))
      throw new CannotRun('tools.cjs is missing beside this program: install it whole');
    const server = spawn(process.execPath, [bundle, root], { stdio: 'inherit', cwd: root });
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => server.kill(signal));
    return new Promise<number>((done, fail) => {
      server.once('error', fail);
      server.once('exit', status => done(status ?? 0));
    });
  },
};
