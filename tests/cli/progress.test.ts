import { expect, it } from 'vitest';
import { ioOf } from '../../packages/cli/src/terminal/io.js';

function said(isTTY: boolean) {
  const written = { stdout: '', stderr: '' };
  const sink = (name: 'stdout' | 'stderr', terminal: boolean) => ({
    isTTY: terminal,
    write: (text: string) => {
      written[name] += text;
    },
  });
  const io = ioOf({
    cwd: '/',
    env: {},
    stdin: (async function* () {})(),
    keyboard: false,
    stdout: sink('stdout', true),
    stderr: sink('stderr', isTTY),
  });
  io.progress('7 of 30: a.shaft');
  io.progress('8 of 30: b.shaft');
  io.out('done');
  return written;
}

it('tells how far it is only where a person is looking, and leaves nothing of it', () => {
  expect(said(false)).toEqual({ stdout: 'done\n', stderr: '' });
  const { stdout, stderr } = said(true);
  expect(stdout).toBe('done\n');
  expect(stderr).toContain('7 of 30');
  expect(stderr).toMatch(/b\.shaft\r {16}\r$/);
});
