import { Transform, type TransformCallback } from 'node:stream';

const HEAD_END = Buffer.from('\r\n\r\n');
const NAME = /content-length/i;
const LONGEST_NAME = 'content-lengt'.length;
/** No message is longer; a number beyond is a slip, and waiting for so much would be waiting for ever. */
const LONGEST = 512 * 1024 * 1024;
/** No head is longer. */
const LONGEST_HEAD = 64 * 1024;

/**
 * Lets whole messages through, and leaves out what no reader could find the end of: a head without a length, or with one
 * that is no number, negative or beyond all measure. Reading goes on at the next head; the server does not fall silent.
 */
export class HeaderGuard extends Transform {
  private waiting: Buffer = Buffer.alloc(0);
  /** Bytes of the message underway that are still to come. */
  private body = 0;
  /** Whether it was told that something is left out. */
  private lost = false;

  constructor(private readonly told: (message: string) => void) {
    super();
  }

  override _transform(chunk: Buffer, _encoding: BufferEncoding, done: TransformCallback): void {
    this.waiting = this.waiting.length > 0 ? Buffer.concat([this.waiting, chunk]) : chunk;
    while (this.step());
    done();
  }

  /** Takes one piece out of what waits; says whether another may follow. */
  private step(): boolean {
    if (this.waiting.length === 0) return false;
    if (this.body > 0) {
      const piece = this.waiting.subarray(0, this.body);
      this.waiting = this.waiting.subarray(piece.length);
      this.body -= piece.length;
      this.push(piece);
      return true;
    }
    const end = this.waiting.indexOf(HEAD_END);
    if (end < 0) return this.waiting.length > LONGEST_HEAD && this.skip();
    const head = this.waiting.subarray(0, end).toString('latin1');
    const length = /^content-length:[ \t]*(\d{1,12})[ \t]*$/im.exec(head)?.[1];
    if (length === undefined || Number(length) > LONGEST || !/^[\w-]+:/.test(head)) return this.skip();
    this.push(this.waiting.subarray(0, end + HEAD_END.length));
    this.waiting = this.waiting.subarray(end + HEAD_END.length);
    this.body = Number(length);
    this.lost = false;
    return true;
  }

  /** Leaves out everything up to the next place that begins like a head. */
  private skip(): boolean {
    if (!this.lost)
      this.told(
        'A message was left out: its head has no Content-Length that could be one. Reading goes on at the next head.',
      );
    this.lost = true;
    const next = this.waiting.subarray(1).toString('latin1').search(NAME) + 1;
    // The beginning of one may stand at the end of what came so far.
    this.waiting = this.waiting.subarray(next > 0 ? next : Math.max(1, this.waiting.length - LONGEST_NAME));
    return next > 0;
  }
}
