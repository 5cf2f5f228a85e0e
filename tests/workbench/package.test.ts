import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';
import { packedVsix } from './subject.js';
import { filesOf } from './unzip.js';

it('packs little, and nothing but what it needs', () => {
  const vsix = packedVsix();
  const files = filesOf(vsix);
  const kilobytes = (bytes: number) => `${Math.round(bytes / 1024)} KB`;
  const part = (name: string) => `${name} ${kilobytes(files[`extension/dist/${name}`]!.length)}`;
  console.info(
    `VSIX ${kilobytes(statSync(vsix).size)}: ` +
      ['server-node.js', 'server.js', 'server-asked.js', 'server-more.js', 'extension.js', 'panel.js']
        .map(part)
        .join(', '),
  );
  expect(statSync(vsix).size).toBeLessThan(1.2 * 1024 * 1024);
  expect(Object.keys(files).filter(path => /\.(ts|map|mjs)$|node_modules/.test(path))).toEqual([]);
});

it('shows every picture in a store, and links the licence and the changelog', () => {
  const folder = mkdtempSync(join(tmpdir(), 'tailshaft-page-'));
  const vsix = join(folder, 'page.vsix');
  const page = 'https://page.invalid/vscode';
  execFileSync(process.execPath, ['packages/vscode/package.mjs'], {
    cwd: resolve(import.meta.dirname, '../..'),
    env: { ...process.env, TAILSHAFT_PAGE: page, TAILSHAFT_VSIX: vsix },
    stdio: 'ignore',
  });
  const files = filesOf(vsix);
  rmSync(folder, { recursive: true });
  const readme = files['extension/readme.md'] ?? files['extension/README.md']!;
  const addresses = [
    ...Buffer.from(readme)
      .toString('utf8')
      .matchAll(/\]\((?!#)([^)]+)\)/g),
  ].map(one => one[1]!);
  const local = addresses.filter(one => one.startsWith(`${page}/`)).map(one => one.slice(page.length + 1));
  expect(addresses).toHaveLength(local.length);
  expect(local.filter(one => /\.(png|webp)$/.test(one)).length).toBeGreaterThan(3);
  for (const one of local)
    expect(existsSync(join(import.meta.dirname, '../../packages/vscode', one)), one).toBe(true);
  expect(local).toContain('LICENSE');
  expect(local).toContain('CHANGELOG.md');
  const names = Object.keys(files).map(one => one.toLowerCase());
  expect(names).toContain('extension/license.txt');
  expect(names).toContain('extension/changelog.md');
});
