import { Readable } from 'node:stream';
import { runProgram } from '../program.js';
import { ioOf } from '../terminal/io.js';

export interface Printed {
  readonly status: number;
  readonly out: string;
  readonly complaints: string;
}

/** Runs a command of this program and keeps what it prints: standard output belongs to the protocol. */
export async function runQuietly(args: readonly string[], cwd: string, input: string): Promise<Printed> {
  const printed = { out: '', complaints: '' };
  const io = ioOf({
    cwd,
    env: { NO_COLOR: '1' },
    stdin: Readable.from([Buffer.from(input)]),
    keyboard: false,
    stdout: {
      write: text => {
        printed.out += text;
      },
    },
    stderr: {
      write: text => {
        printed.complaints += text;
      },
    },
  });
  return { status: await runProgram(args, io), ...printed };
}
