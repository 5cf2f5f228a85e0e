import type { ChildProcessWithoutNullStreams } from 'node:child_process';

export interface Message {
  readonly jsonrpc: string;
  readonly id?: number | string | null;
  readonly method?: string;
  readonly params?: unknown;
  readonly result?: unknown;
  readonly error?: { readonly code: number; readonly message: string };
}

/** What a server said: an answer to a request of that method, or a request or notification of its own. */
export interface Said {
  readonly kind: 'result' | 'params';
  readonly method: string;
  readonly value: unknown;
}

/** Listens to both directions between a client and a server process, and takes the messages apart. */
export class Tap {
  /** All that the server sent, errors left out. */
  readonly said: Said[] = [];
  /** Answers that were errors, by method. */
  readonly errors: { readonly method: string; readonly code: number; readonly message: string }[] = [];
  /** Anything that is no message of the protocol. */
  readonly broken: string[] = [];
  private readonly asked = new Map<string, string>();

  constructor({ stdin, stdout }: ChildProcessWithoutNullStreams) {
    const sent = new Frames(message => {
      if (message.method !== undefined && message.id !== undefined)
        this.asked.set(String(message.id), message.method);
    });
    const received = new Frames(message => this.take(message));
    stdout.on('data', (data: Buffer) => received.add(data));
    const write = stdin.write.bind(stdin) as (...args: unknown[]) => boolean;
    stdin.write = ((data: string | Buffer, ...rest: unknown[]) => {
      sent.add(Buffer.from(data as string));
      return write(data, ...rest);
    }) as typeof stdin.write;
  }

  private take(message: Message): void {
    if (message.jsonrpc !== '2.0') this.broken.push(JSON.stringify(message));
    if (message.method !== undefined) {
      this.said.push({ kind: 'params', method: message.method, value: message.params });
      return;
    }
    const method = this.asked.get(String(message.id));
    if (method === undefined || 'result' in message === 'error' in message)
      this.broken.push(JSON.stringify(message));
    else if (message.error) this.errors.push({ method, ...message.error });
    else this.said.push({ kind: 'result', method, value: message.result });
  }
}

/** Messages with their `Content-Length` headers, however the stream cuts them. */
class Frames {
  private rest = Buffer.alloc(0);

  constructor(private readonly take: (message: Message) => void) {}

  add(data: Buffer): void {
    this.rest = Buffer.concat([this.rest, data]);
    for (;;) {
      const end = this.rest.indexOf('\r\n\r\n');
      if (end < 0) return;
      const length = /Content-Length: (\d+)/i.exec(this.rest.toString('ascii', 0, end));
      const from = end + 4;
      const to = from + Number(length?.[1] ?? Number.NaN);
      if (!(this.rest.length >= to)) return;
      this.take(JSON.parse(this.rest.toString('utf8', from, to)));
      this.rest = this.rest.subarray(to);
    }
  }
}
