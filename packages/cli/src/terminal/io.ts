import { isatty } from 'node:tty';
import { reasonOf } from '../cannot-run.js';
import { type Paint, painter } from './paint.js';
import { visible, visibleReport } from './visible.js';

/** What a command may use of the process around it. */
export interface Io {
  readonly cwd: string;
  readonly paint: Paint;
  /** Whether `paint` gives colours. */
  readonly colours: boolean;
  /** Whether a person looks at the results. */
  readonly screen: boolean;
  /** Columns to fill. */
  readonly width: number;
  /** Results: to stdout, ended by a line break. */
  out(text: string): void;
  /** Text as it is. */
  print(text: string): void;
  /** What is no text. */
  bytes(data: Uint8Array): void;
  /** Chatter and complaints: to stderr, after the name of the program. */
  complain(text: string): void;
  /** Where long work stands; overwrites itself, and only where a person is looking. */
  progress(text: string): void;
  readStdin(): Promise<Buffer>;
  /** Hears of a person who wants long work to end, until the answer is called; a second time ends the program. */
  onInterrupt(heard: () => void): () => void;
}

const WIDEST = 100;

/** Where a command runs: the process, or whoever stands in for it. */
export interface Streams {
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly stdin: AsyncIterable<Uint8Array>;
  /** Whether a person types the input. */
  readonly keyboard: boolean;
  readonly stdout: Sink;
  readonly stderr: Sink;
  /** As `onInterrupt` of `Io`; nobody interrupts where it is absent. */
  readonly onInterrupt?: (heard: () => void) => () => void;
}

interface Sink {
  write(text: string | Uint8Array): unknown;
  readonly isTTY?: boolean;
  readonly columns?: number;
}

/** The process itself. */
export function processStreams(): Streams {
  // A reader that has seen enough, like head, is no failure, and changes nothing of what the status says.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') return;
    // A report that was cut off must not end with the status of a whole one.
    process.stderr.write(`tailshaft: what it says could not be written: ${reasonOf(error)}\n`);
    process.exit(2);
  });
  // Where nobody can be told, the status still says it.
  process.stderr.on('error', () => {});
  return {
    cwd: process.cwd(),
    env: process.env,
    // Opened only by a command that reads it.
    get stdin() {
      return process.stdin;
    },
    keyboard: isatty(0),
    stdout: process.stdout,
    stderr: process.stderr,
    onInterrupt: heard => {
      process.once('SIGINT', heard);
      return () => process.off('SIGINT', heard);
    },
  };
}

export function ioOf(streams: Streams): Io {
  const { cwd, env, keyboard, stdout, stderr } = streams;
  const watched = stderr.isTTY === true;
  let shown = 0;
  const clear = () => {
    if (shown > 0) stderr.write(`\r${' '.repeat(shown)}\r`);
    shown = 0;
  };
  const colours = wantsColour(env, stdout.isTTY === true);
  return {
    cwd,
    paint: painter(colours),
    colours,
    screen: stdout.isTTY === true,
    width: Math.max(40, Math.min(stdout.columns ?? WIDEST, WIDEST)),
    out(text) {
      this.print(visibleReport(text.endsWith('\n') ? text : `${text}\n`));
    },
    print(text) {
      clear();
      stdout.write(text);
    },
    bytes(data) {
      clear();
      stdout.write(data);
    },
    complain(text) {
      clear();
      stderr.write(`tailshaft: ${visible(text)}\n`);
    },
    progress(text) {
      if (!watched) return;
      clear();
      stderr.write(visible(text));
      shown = text.length;
    },
    onInterrupt: heard => streams.onInterrupt?.(heard) ?? (() => {}),
    async readStdin() {
      if (keyboard) this.complain('reading a spec from the keyboard; end it with Ctrl-D');
      const pieces: Uint8Array[] = [];
      for await (const piece of streams.stdin) pieces.push(piece);
      return Buffer.concat(pieces);
    },
  };
}

/** NO_COLOR and FORCE_COLOR decide when they are set to anything; otherwise whether a terminal is there. */
function wantsColour(env: Streams['env'], terminal: boolean): boolean {
  if (env.NO_COLOR) return false;
  if (env.FORCE_COLOR) return env.FORCE_COLOR !== '0' && env.FORCE_COLOR !== 'false';
  return terminal && env.TERM !== 'dumb';
}
