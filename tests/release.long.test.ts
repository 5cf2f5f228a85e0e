import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '..');
const folders = [1, 2].map(() => mkdtempSync(join(tmpdir(), 'tailshaft-release-')));
const [first, second] = folders as [string, string];
const run = (script: string, into: string, zone: string) =>
  execFileSync(process.execPath, [join(root, '.ci', script), into], {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, TZ: zone },
  });

describe('what is handed out', () => {
  beforeAll(() => {
    run('release.mjs', first, 'UTC');
    run('release.mjs', second, 'Asia/Tokyo');
  }, 300_000);
  afterAll(() => {
    for (const folder of folders) rmSync(folder, { recursive: true, force: true });
  });

  it('is the same to the byte when it is made again, at another time and in another zone', () => {
    for (const name of ['tailshaft.vsix', 'SHA256SUMS'])
      expect(readFileSync(join(first, name)).equals(readFileSync(join(second, name))), name).toBe(true);
  });

  it('is never made by a plain pack of the folder, whose manifest asks for packages that are nowhere to be had', () => {
    const cwd = join(root, 'packages/cli');
    const { status, stdout, stderr } = spawnSync('npm', ['pack', '--pack-destination', first], {
      cwd,
      encoding: 'utf8',
    });
    expect(status).not.toBe(0);
    expect(stdout + stderr).toContain('npm run release');
    expect(readdirSync(first).filter(one => one.endsWith('.tgz'))).toHaveLength(1);
  });

  it('works in empty folders without a network', () => {
    expect(run('try-release.mjs', first, 'UTC')).toContain('Everything that is handed out works');
  });
});

describe('licences of others', () => {
  it.each(['cli', 'vscode'])('travel with the bundle of %s, each with its text', name => {
    const dist = join(root, 'packages', name, 'dist');
    const notices = readFileSync(join(dist, 'THIRD-PARTY-NOTICES.txt'), 'utf8');
    const bill = JSON.parse(readFileSync(join(dist, 'sbom.cdx.json'), 'utf8'));
    const parts: { name: string; version: string; hashes?: unknown[] }[] = bill.components;
    expect(bill).toMatchObject({ bomFormat: 'CycloneDX', specVersion: '1.5' });
    for (const wanted of ['langium', 'd3-scale', 'vscode-jsonrpc', 'vscode-languageserver', 'vscode-uri'])
      expect(parts.map(one => one.name)).toContain(wanted);
    for (const { name: part, version, hashes } of parts) {
      expect(notices).toContain(`${part} ${version} (`);
      expect(hashes, part).toHaveLength(1);
    }
    expect(
      notices.match(/Permission is hereby granted|Redistribution and use|Apache License/g)!.length,
    ).toBeGreaterThan(parts.length / 2);
  });
});
