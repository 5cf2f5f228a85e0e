import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { MessageChannel, receiveMessageOnPort, Worker } from 'node:worker_threads';
import { buildSync } from 'esbuild';
import type { Answer } from './run.js';

const cli = resolve(import.meta.dirname, '../../packages/cli');

export interface Asked {
  readonly args: readonly string[];
  readonly cwd: string;
  readonly input: Uint8Array;
  readonly env: Readonly<Record<string, string>>;
}

/** Far more than any command takes; a command that hangs must fail its test, not stop the suite. */
const LONGEST = 30_000;

/**
 * The program of the command line in a thread that stays: its sources are bundled and loaded once, and each answer
 * takes as long as the work does. The caller waits, as it would for a process.
 */
export class ProgramThread {
  private readonly woken = new Int32Array(new SharedArrayBuffer(4));
  private readonly channel = new MessageChannel();
  private readonly worker: Worker;

  constructor() {
    const { port2 } = this.channel;
    this.worker = new Worker(`${programText()}\n${ANSWERING}`, {
      eval: true,
      workerData: { port: port2, woken: this.woken },
      transferList: [port2],
      // As the main thread of a process has it: text nested too deep must be met, not carried by a larger stack.
      resourceLimits: { stackSizeMb: 1 },
    });
    // It stays for the other suites of this process, and goes with it.
    this.worker.unref();
  }

  run(asked: Asked): Answer {
    Atomics.store(this.woken, 0, 0);
    this.channel.port1.postMessage(asked);
    if (Atomics.wait(this.woken, 0, 0, LONGEST) === 'timed-out')
      throw new Error(`No answer to: tailshaft ${asked.args.join(' ')}`);
    return receiveMessageOnPort(this.channel.port1)!.message as Answer;
  }
}

function programText(): string {
  const { version } = JSON.parse(readFileSync(join(cli, 'package.json'), 'utf8'));
  const built = buildSync({
    stdin: {
      contents: `export { runProgram } from './program.js'; export { ioOf } from './terminal/io.js';`,
      resolveDir: join(cli, 'src'),
    },
    bundle: true,
    write: false,
    platform: 'node',
    target: 'node20',
    format: 'iife',
    globalName: 'program',
    define: { __TAILSHAFT_VERSION__: JSON.stringify(version) },
    inject: [join(cli, '../language/scripts/group-by.mjs')],
  });
  return built.outputFiles[0]!.text;
}

const ANSWERING = `
const { workerData: { port, woken } } = require('node:worker_threads');
port.on('message', async ({ args, cwd, input, env }) => {
  const said = { stdout: '', stderr: '' };
  const sink = name => ({ write: text => { said[name] += text; } });
  const io = program.ioOf({
    cwd, env, keyboard: false,
    stdin: (async function* () { yield input; })(),
    stdout: sink('stdout'), stderr: sink('stderr'),
  });
  const status = await program.runProgram(args, io).catch(error => (said.stderr += String(error), null));
  port.postMessage({ status, ...said });
  Atomics.store(woken, 0, 1);
  Atomics.notify(woken, 0);
});
`;
