import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { Client } from '@modelcontextprotocol/sdk/client/index.js';
import { StdioClientTransport } from '@modelcontextprotocol/sdk/client/stdio.js';
import { findRule } from '@tailshaft/drivetrain';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtBefore, bundle, folders, put, TRACE, tailshaftProcess } from './run.js';

const wrongHand = findRule('rotation/propeller-hand')!.examples().failing;
const right = wrongHand.replace(
  /\bhand (left|right)\b/,
  (_all, hand) => `hand ${hand === 'left' ? 'right' : 'left'}`,
);

builtBefore();

describe('the tools for agents, with a client of the protocol', () => {
  const folder = folders();
  let client: Client;
  let yard: string;

  beforeAll(async () => {
    const outside = folder({ 'secret.shaft': wrongHand });
    yard = folder({
      'boats/cutter.shaft': right,
      'bare.shaft': 'vessel Bare { arrangement one { shaftline Port { engine { } } } }\n',
    });
    git(yard, 'init', '-q');
    git(yard, 'add', '.');
    git(yard, 'commit', '-q', '-m', 'As found');
    put(yard, 'boats/cutter.shaft', wrongHand);
    mkdirSync(join(yard, 'links'));
    symlinkSync(outside, join(yard, 'links/out'));
    client = new Client({ name: 'test', version: '1.0.0' });
    await client.connect(
      new StdioClientTransport({
        command: process.execPath,
        args: [bundle, 'tools'],
        cwd: yard,
        stderr: 'ignore',
      }),
    );
  }, 120_000);
  afterAll(() => client?.close());

  async function call(name: string, args: Record<string, unknown> = {}) {
    const answer = await client.callTool({ name, arguments: args });
    const [content] = answer.content as { type: string; text: string }[];
    expect(content!.text).not.toMatch(TRACE);
    return { text: content!.text, isError: answer.isError === true };
  }

  it('are four, each said to read only', async () => {
    const { tools } = await client.listTools();
    expect(tools.map(one => one.name)).toEqual([
      'check',
      'explain_rule',
      'list_open_questions',
      'compare_revisions',
    ]);
    for (const { annotations, description } of tools) {
      expect(annotations).toMatchObject({ readOnlyHint: true, destructiveHint: false, openWorldHint: false });
      expect(description).toBeTruthy();
    }
    expect(client.getServerVersion()).toMatchObject({ name: 'tailshaft' });
    expect(client.getInstructions()).toMatch(/screens, it does not certify/);
  });

  it('check says what the command says, word for word', async () => {
    const { text, isError } = await call('check', { path: 'boats/cutter.shaft' });
    expect(isError).toBe(false);
    expect(text).toContain('rotation/propeller-hand');
    const printed = tailshaftProcess('check boats/cutter.shaft --root .', {
      cwd: yard,
      env: { NO_COLOR: '1' },
    });
    expect(text).toBe(printed.stdout.trim());
    expect(text).toMatch(/not a certificate/);
  });

  it('check judges a text that is saved nowhere, and gives data by the schema', async () => {
    const { text } = await call('check', { text: right, path: 'boats/cutter.shaft', form: 'json' });
    const { files } = JSON.parse(text);
    expect(JSON.stringify(files)).not.toContain('"outcome":"fails"');
    expect((await call('check', { text: wrongHand })).text).toContain('rotation/propeller-hand');
  });

  it('explain a rule, or list all', async () => {
    expect((await call('explain_rule', { rule: 'rotation/propeller-hand' })).text).toMatch(/Limits/);
    expect((await call('explain_rule')).text).toContain('shafting/diameter');
    expect(await call('explain_rule', { rule: '--help' })).toMatchObject({ isError: true });
    expect(await call('explain_rule', { rule: 'rotation/nothing' })).toMatchObject({ isError: true });
  });

  it('list open questions by the datum, with the cautions', async () => {
    const { text } = await call('list_open_questions', { path: 'bare.shaft' });
    const { openQuestions: questions, caution } = JSON.parse(text);
    expect(questions.length).toBeGreaterThan(0);
    expect(questions[0]).toMatchObject({ what: expect.any(String), checks: expect.any(Array) });
    expect(caution).toMatch(/certificate/);
  });

  it('compare with a revision by consequence', async () => {
    const { text, isError } = await call('compare_revisions', { before: 'HEAD', path: 'boats' });
    expect(isError).toBe(false);
    expect(text).toContain('rotation/propeller-hand');
    expect(await call('compare_revisions', { before: 'HEAD', after: 'HEAD' })).toMatchObject({
      isError: false,
    });
    expect(await call('compare_revisions', { before: '--output=x' })).toMatchObject({ isError: true });
    expect(await call('compare_revisions', { before: 'nothing' })).toMatchObject({ isError: true });
  });

  it.each(['..', '../secret.shaft', '/etc', 'links/out', 'links/out/secret.shaft', 'boats/../../x'])(
    'read nothing at %s',
    async path => {
      for (const [tool, more] of [
        ['check', {}],
        ['check', { text: right }],
        ['list_open_questions', {}],
        ['compare_revisions', { before: 'HEAD' }],
      ] as const) {
        const { text, isError } = await call(tool, { path, ...more });
        expect(isError).toBe(true);
        expect(text).toMatch(/outside of the workspace folder/);
      }
    },
  );

  it('read no folder that a link inside leads to', async () => {
    expect((await call('check', { form: 'json' })).text).not.toMatch(/secret/);
    expect((await call('list_open_questions')).text).not.toMatch(/secret/);
  });

  it('import nothing from outside', async () => {
    const { text } = await call('check', { text: 'import "../secret"\n', path: 'boats/new.shaft' });
    expect(text).toMatch(/leaves the workspace|no file or folder/);
  });

  it('have written nothing', () => {
    expect(readdirSync(yard).sort()).toEqual(['.git', 'bare.shaft', 'boats', 'links']);
    expect(readFileSync(join(yard, 'boats/cutter.shaft'), 'utf8')).toBe(wrongHand);
  });
});

describe('tailshaft tools', () => {
  const folder = folders();
  it('says what is wrong with how it was started', () => {
    const cwd = folder();
    expect(tailshaftProcess('tools here', { cwd }).stderr).toMatch(/takes no paths/);
    expect(tailshaftProcess('tools --root nowhere', { cwd }).stderr).toMatch(/is not a folder/);
  });
});

function git(cwd: string, ...words: string[]): void {
  const done = spawnSync('git', ['-c', 'user.name=test', '-c', 'user.email=test@localhost', ...words], {
    cwd,
  });
  if (done.status !== 0) throw new Error(String(done.stderr));
}
