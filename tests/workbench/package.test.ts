import { statSync } from 'node:fs';
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
      ['server.js', 'extension.cjs', 'extension-web.js', 'panel.js'].map(part).join(', '),
  );
  expect(statSync(vsix).size).toBeLessThan(1.5 * 1024 * 1024);
  expect(Object.keys(files).filter(path => /\.(ts|map|mjs)$|node_modules/.test(path))).toEqual([]);
});
