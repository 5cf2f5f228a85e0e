import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { KEYWORDS } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { SETTINGS } from '../../packages/language/src/server/settings.js';
import { textMateGrammar } from '../../packages/vscode/src/textmate.js';

// biome-ignore lint/suspicious/noExplicitAny: a manifest is whatever its author wrote.
type Loose = any;

const root = join(import.meta.dirname, '../..');
const extension = join(root, 'packages/vscode');
const manifest = JSON.parse(readFileSync(join(extension, 'package.json'), 'utf8'));
const readme = readFileSync(join(extension, 'README.md'), 'utf8');
const { contributes } = manifest;
const settings: Record<string, { default: unknown; scope: string }> = Object.assign(
  {},
  ...contributes.configuration.map((one: { properties: object }) => one.properties),
);

describe('what the manifest names', () => {
  const files = [
    manifest.icon,
    ...contributes.languages.flatMap((one: Loose) => [one.configuration, one.icon.light, one.icon.dark]),
    ...contributes.viewsContainers.activitybar.map((one: Loose) => one.icon),
    ...contributes.walkthroughs.flatMap((one: Loose) =>
      one.steps.map((step: Loose) => step.media.image ?? step.media.markdown),
    ),
    ...[...readme.matchAll(/!\[[^\]]*\]\(([^)]+)\)/g)].map(one => one[1]),
  ];
  it.each([...new Set<string>(files)])('%s is there', file => {
    expect(existsSync(join(extension, file))).toBe(true);
  });

  it('every command and setting has its row in the README', () => {
    const names = [...contributes.commands.map((one: Loose) => one.command), ...Object.keys(settings)];
    expect(names.filter(name => !readme.includes(`\`${name}\``))).toEqual([]);
  });

  it('every setting and command that the README names is there', () => {
    const known = new Set([
      ...contributes.commands.map((one: Loose) => one.command),
      ...Object.keys(settings),
    ]);
    const named = [...readme.matchAll(/`(tailshaft\.[A-Za-z.]+)`/g)].map(one => one[1]!);
    expect(named.filter(name => !known.has(name))).toEqual([]);
  });

  it('commands of menus, keys and walkthroughs are commands', () => {
    const known = new Set(contributes.commands.map((one: Loose) => one.command));
    const used = [
      ...Object.values<Loose>(contributes.menus).flatMap(items => items.map((one: Loose) => one.command)),
      ...contributes.keybindings.map((one: Loose) => one.command),
      ...[
        ...readFileSync(join(extension, 'package.nls.json'), 'utf8').matchAll(/command:(tailshaft\.\w+)/g),
      ].map(one => one[1]),
    ];
    expect(used.filter(one => !known.has(one))).toEqual([]);
  });

  it('all commands stand in one category', () => {
    expect(new Set(contributes.commands.map((one: Loose) => one.category))).toEqual(new Set(['Tailshaft']));
  });
});

it('the settings that the server reads are those that a person finds, with the same defaults', () => {
  for (const [name, { default: usual }] of Object.entries(SETTINGS))
    expect(settings[`tailshaft.${name}`]?.default, name).toBe(usual);
});

it('no setting of a workspace names a program', () => {
  expect(settings['tailshaft.commandLine.program']?.scope).toBe('machine');
});

it('colouring knows the keywords of the grammar, no more and no fewer', () => {
  const { patterns } = textMateGrammar() as { patterns: { name?: string; match?: string }[] };
  const words = /\(\?:([^)]*)\)/.exec(
    patterns.findLast(one => one.name === 'keyword.control.tailshaft')!.match!,
  )![1]!;
  expect(words.split('|').sort()).toEqual([...KEYWORDS].sort());
});

it('one copy of the JSON-RPC library is installed', () => {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  const copies = Object.keys(lock.packages).filter(path => path.endsWith('node_modules/vscode-jsonrpc'));
  expect(copies).toEqual(['node_modules/vscode-jsonrpc']);
});

describe('what is packed', () => {
  it('starts only where specs are, or when a view of one is opened', () => {
    expect(manifest.activationEvents).toEqual([
      'onWebviewPanel:tailshaft.sheet',
      'workspaceContains:**/*.shaft',
      // Virtual workspaces cannot be searched by name.
      'onFileSystem:vscode-vfs',
    ]);
  });

  it('sends nothing anywhere: no telemetry, no address', () => {
    const dependencies = Object.keys(manifest.dependencies);
    expect(dependencies.filter(one => /telemetry|insights|analytics|sentry/.test(one))).toEqual([]);
    const page = readFileSync(join(extension, 'src/sheet/panel-page.ts'), 'utf8');
    expect(page).toContain("default-src 'none'");
    expect(page).not.toMatch(/https?:/);
  });
});
