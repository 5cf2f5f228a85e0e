import { spawnSync } from 'node:child_process';
import { afterAll, describe, expect, it } from 'vitest';
import { newerNode } from '../workbench/large-tools.js';
import { mistakenExample } from './mistaken-example.js';
import { cliPath, serverCommand } from './server-command.js';
import { StdioClient } from './stdio.js';

describe('the command line under the oldest and the newest Node we support', () => {
  const example = mistakenExample();
  afterAll(() => example.remove());

  it('meets a newer Node than the one running the tests', () => {
    expect(major(newerNode())).toBe(24);
    expect(major(newerNode())).toBeGreaterThan(major(process.execPath));
  });

  it.each(['check', 'check --json'])('says the same with %s', words => {
    const [here, there] = [process.execPath, newerNode()].map(node => check(node, words.split(' ')));
    expect(there).toEqual(here);
    expect(here!.status).toBe(1);
    expect(here!.stdout.length).toBeGreaterThan(0);
    expect(here!.stderr).not.toMatch(/TypeError|SyntaxError|Unhandled/);
  });

  it('serves an editor under the newer Node', async () => {
    const client = new StdioClient({ command: serverCommand(newerNode()) });
    try {
      expect((await client.initialize(example.folder)).capabilities.hoverProvider).toBeTruthy();
      expect(await client.shutdown()).toBe(0);
    } finally {
      client.kill();
    }
  });

  function check(node: string, words: readonly string[]) {
    const { status, stdout, stderr } = spawnSync(node, [cliPath(), ...words, example.spec], {
      cwd: example.folder,
      encoding: 'utf8',
      env: { ...process.env, NO_COLOR: '1' },
    });
    return { status, stdout, stderr };
  }
});

function major(node: string): number {
  return Number(/^v(\d+)/.exec(spawnSync(node, ['--version'], { encoding: 'utf8' }).stdout)?.[1]);
}
