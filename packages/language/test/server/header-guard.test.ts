import { describe, expect, it } from 'vitest';
import { HeaderGuard } from '../../src/server/header-guard.js';
import { randomFrom } from './random.js';

const message = (text: string) => `Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`;
const GOOD = ['{"id":1}', '{"text":"Fløy, Content-Length: 3\\r\\n"}', '{}'].map(message);
const BAD = [
  'Content-Length: -5\r\n\r\n{"a":1}',
  'Content-Length: many\r\n\r\n{"a":1}',
  'Content-Length: 999999999999\r\n\r\n{"a":1}',
  'Content-Type: application/json\r\n\r\n{"a":1}',
  'Content-Length:\r\n\r\n{"a":1}',
  '{"a":1}',
  '\r\n\r\n',
  'nonsense\r\n',
  `${'x'.repeat(70_000)}`,
];

/** What comes out of the guard when a text comes in pieces. */
async function through(text: string, size: () => number): Promise<{ out: string; told: number }> {
  let told = 0;
  const guard = new HeaderGuard(() => {
    told += 1;
  });
  const pieces: Buffer[] = [];
  guard.on('data', (piece: Buffer) => pieces.push(piece));
  const bytes = Buffer.from(text);
  for (let at = 0; at < bytes.length; ) {
    const piece = bytes.subarray(at, at + size());
    guard.write(piece);
    at += piece.length;
  }
  await new Promise<void>(done => guard.end(done));
  return { out: Buffer.concat(pieces).toString(), told };
}

describe('messages whose end nobody could find', () => {
  it('pass unchanged where there are none', async () => {
    const text = GOOD.join('');
    for (const size of [1, 3, 7, 1000])
      expect(await through(text, () => size)).toEqual({ out: text, told: 0 });
  });

  it.each(BAD)('are left out, and the next ones pass: %j', async bad => {
    const { out, told } = await through(GOOD[0]! + bad + GOOD[1]! + GOOD[2]!, () => 11);
    expect(out).toBe(GOOD.join(''));
    expect(told).toBe(1);
  });

  it('whatever is mixed, in whatever pieces it comes', async () => {
    const random = randomFrom(5);
    for (let run = 0; run < 200; run++) {
      const mixed = Array.from({ length: 8 }, () =>
        random(3) === 0 ? BAD[random(BAD.length - 1)]! : GOOD[random(GOOD.length)]!,
      );
      const good = mixed.filter(one => GOOD.includes(one)).join('');
      const { out } = await through(mixed.join('') + GOOD[0]!, () => 1 + random(60));
      expect(out, JSON.stringify(mixed)).toBe(good + GOOD[0]!);
    }
  });
});
