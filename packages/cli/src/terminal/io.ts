import { isatty } from 'node:tty';
import { type Paint, painter } from './paint.js';

/** What a command may use of the process around it. */
export interface Io {
  readonly cwd: string;
  readonly paint: Paint;
  /** Columns to fill. */
  readonly width: number;
  /** Results: to stdout, ended by a line break. */
  out(text: string): void;
  /** Text as it is. */
  print(text: string): void;
  /** Chatter and complaints: to stderr, after the name of the program. */
  complain(text: string): void;
  /** Where long work stands; overwrites itself, and only where a person is looking. */
  progress(text: string): void;
  readStdin(): Promise<Buffer>;
}

const WIDEST = 100;

/** The process itself. */
export function processIo(): Io {
  const watched = process.stderr.isTTY === true;
  let shown = 0;
  const clear = () => {
    if (shown > 0) process.stderr.write(`\r${' '.repeat(shown)}\r`);
    shown = 0;
  };
  // A reader that has seen enough, like head, is no failure.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    throw error;
  });
  return {
    cwd: process.cwd(),
    paint: painter(wantsColour(process.env, process.stdout.isTTY === true)),
    width: Math.max(40, Math.min(process.stdout.columns ?? WIDEST, WIDEST)),
    out(text) {
      this.print(text.endsWith('\n') ? text : `${text}\n`);
    },
    print(text) {
      clear();
      process.stdout.write(text);
    },
    complain(text) {
      clear();
      process.stderr.write(`tailshaft: ${text}\n`);
    },
    progress(text) {
      if (!watched) return;
      clear();
      process.stderr.write(text);
      shown = text.length;
    },
    async readStdin() {
      if (isatty(0)) this.complain('reading a spec from the keyboard; end it with Ctrl-D');
      const pieces: Buffer[] = [];
      for await (const piece of process.stdin) pieces.push(piece as Buffer);
      return Buffer.concat(pieces);
    },
  };
}

/** NO_COLOR and FORCE_COLOR decide when they are set to anything; otherwise whether a terminal is there. */
function wantsColour(env: NodeJS.ProcessEnv, terminal: boolean): boolean {
  if (env.NO_COLOR) return false;
  if (env.FORCE_COLOR) return env.FORCE_COLOR !== '0' && env.FORCE_COLOR !== 'false';
  return terminal && env.TERM !== 'dumb';
}
