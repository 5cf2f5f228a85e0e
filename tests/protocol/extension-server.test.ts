import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { RULES } from '@tailshaft/drivetrain';
import { afterEach, expect, it } from 'vitest';
import type { Hover } from 'vscode-languageserver-protocol';
import { ProtocolClient } from './client.js';

/* The server that travels with the extension is built without the texts of the rules: its client has their pages. */

const dist = join(import.meta.dirname, '../../packages/vscode/dist');
const FILE = 'spec.shaft';
const TEXT = 'vessel V {\n  accept speed/tip-speed on a.L because "known" by "surveyor"\n}\n';
let client: ProtocolClient | undefined;
afterEach(() => client?.end());

it('carries no text of any rule, but every rule', () => {
  const bundle = readFileSync(join(dist, 'server.js'), 'utf8');
  const plain = (text: string) => /[\w ,.]{25,}/.exec(text)?.[0] ?? text;
  expect(RULES.filter(one => bundle.includes(plain(one.manual))).map(one => one.id)).toEqual([]);
  expect(RULES.filter(one => bundle.includes(plain(one.caution))).map(one => one.id)).toEqual([]);
  expect(RULES.filter(one => !bundle.includes(one.id))).toEqual([]);
  expect(RULES.filter(one => !bundle.includes(plain(one.criterion)))).toEqual([]);
});

it('shows the whole text of a rule under the pointer all the same', async () => {
  const pages = JSON.parse(readFileSync(join(dist, 'manual.json'), 'utf8')) as Record<string, string>;
  const command = [process.execPath, join(dist, 'server.js'), '--stdio'];
  client = new ProtocolClient({ [FILE]: TEXT }, { command });
  client.connection.onRequest('tailshaft/page', ({ code }: { code: string }) => {
    const text = pages[`packages/drivetrain/manual/${code}.md`];
    return text === undefined ? null : { text };
  });
  await client.start();
  await client.show(FILE);
  const hover = await client.ask<Hover>('textDocument/hover', FILE, 'speed/tip');
  const { value } = hover.contents as { value: string };
  const rule = RULES.find(one => one.id === 'speed/tip-speed')!;
  expect(value).toContain(rule.manual);
  expect(value).toContain(rule.caution);
});
