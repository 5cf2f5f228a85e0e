import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const extension = join(import.meta.dirname, '../../packages/vscode');
const bundle = join(extension, 'l10n/bundle.l10n.json');

/** Every string that the extension shows, as a translator gets it: `npm run docs` writes it anew. */
it('the strings of the extension are listed for translation', () => {
  const sources = readdirSync(join(extension, 'src'), { recursive: true, encoding: 'utf8' }).filter(path =>
    path.endsWith('.ts'),
  );
  const found = new Set<string>();
  for (const path of sources) {
    const source = readFileSync(join(extension, 'src', path), 'utf8');
    const calls = source.match(/\bl10n\.t\(/g)?.length ?? 0;
    const strings = [...source.matchAll(/\bl10n\.t\(\s*'((?:[^'\\]|\\.)*)'/g)].map(one =>
      one[1]!.replace(/\\(.)/g, '$1'),
    );
    expect(strings, `${path}: each call names its string in single quotes`).toHaveLength(calls);
    for (const one of strings) found.add(one);
  }
  const text = `${JSON.stringify(Object.fromEntries([...found].sort().map(one => [one, one])), null, 2)}\n`;
  if (process.env.UPDATE_DOCS !== undefined) writeFileSync(bundle, text);
  expect(readFileSync(bundle, 'utf8')).toBe(text);
});

it('every string of the manifest is there in English, and none is left over', () => {
  const manifest = readFileSync(join(extension, 'package.json'), 'utf8');
  const strings = JSON.parse(readFileSync(join(extension, 'package.nls.json'), 'utf8'));
  const used = new Set([...manifest.matchAll(/"%([^%"]+)%"/g)].map(one => one[1]!));
  expect([...used].sort()).toEqual(Object.keys(strings).sort());
});
