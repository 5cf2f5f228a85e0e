import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Licences that let a bundle be handed on with no more than their text beside it. */
const PERMISSIVE = new Set([
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  '0BSD',
  'Unlicense',
  'BlueOak-1.0.0',
  'Bitstream-Vera',
]);

/** Packages whose own word for their licence is no name of one, with the name of the text that was read. */
const READ = { 'dejavu-fonts-ttf': 'Bitstream-Vera' };

/**
 * Writes, beside bundles, the licence texts of every package that any of them holds, and a bill of materials in the form
 * of CycloneDX. Both follow from what the bundler says it took in, so nothing is bundled that they do not name, and the
 * same sources give the same bytes. A package without a licence text, or with a licence that asks for more, ends the build.
 */
export function writeNotices(metafiles, folder, product) {
  const packages = packagesIn(metafiles);
  const refused = packages.filter(one => !one.text || !PERMISSIVE.has(one.license));
  if (refused.length > 0) {
    const named = refused
      .map(one => `${one.name} ${one.version} (${one.license ?? 'no licence'})`)
      .join(', ');
    throw new Error(`These may not be bundled without looking at their licences: ${named}`);
  }
  writeFileSync(join(folder, 'THIRD-PARTY-NOTICES.txt'), noticesOf(packages, product));
  writeFileSync(join(folder, 'sbom.cdx.json'), `${JSON.stringify(billOf(packages, product), null, 2)}\n`);
}

/** Every package of which a bundle holds anything, by name. */
function packagesIn(metafiles) {
  const folders = new Set();
  for (const { outputs } of metafiles)
    for (const { inputs } of Object.values(outputs))
      for (const [path, { bytesInOutput }] of Object.entries(inputs)) {
        const found = /^(?:\.\.\/)*(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path);
        if (found && bytesInOutput > 0) folders.add(found[1]);
      }
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages;
  return [...folders].map(folder => packageOf(folder, lock[folder])).sort(byName);
}

const byName = (a, b) => (a.name === b.name ? (a.version < b.version ? -1 : 1) : a.name < b.name ? -1 : 1);

function packageOf(folder, locked) {
  const at = join(root, folder);
  const { name, version, homepage, repository, ...said } = JSON.parse(
    readFileSync(join(at, 'package.json'), 'utf8'),
  );
  const license = READ[name] ?? said.license;
  const text = readdirSync(at)
    .filter(one => /^(?:licen[cs]e|notice|copying)(?:[.-].*)?$/i.test(one))
    .sort()
    .map(one => readFileSync(join(at, one), 'utf8').replace(/\r\n/g, '\n').trim())
    .join('\n\n');
  // Some packages name the licence and its holder and bring no text along: it is that of the licence they name.
  const holder = typeof said.author === 'string' ? said.author : said.author?.name;
  const own = text || (license === 'MIT' && holder ? mitText(holder.replace(/\s*<.*/, '')) : '');
  const source = homepage ?? (typeof repository === 'string' ? repository : repository?.url);
  return { name, version, license, text: own, source, integrity: locked?.integrity };
}

function mitText(holder) {
  return `MIT License

Copyright (c) ${holder}

Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation files (the "Software"), to deal in the Software without restriction, including without limitation the rights to use, copy, modify, merge, publish, distribute, sublicense, and/or sell copies of the Software, and to permit persons to whom the Software is furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`;
}

function noticesOf(packages, product) {
  const line = '-'.repeat(78);
  const head = `${product.name} ${product.version} holds parts of the following packages, each under its own licence.`;
  const each = packages.map(
    one =>
      `${line}\n${one.name} ${one.version} (${one.license})${one.source ? `\n${one.source}` : ''}\n${line}\n\n${one.text}`,
  );
  return `${[head, ...each].join('\n\n')}\n`;
}

function billOf(packages, product) {
  return {
    bomFormat: 'CycloneDX',
    specVersion: '1.5',
    version: 1,
    metadata: {
      component: {
        type: 'application',
        name: product.name,
        version: product.version,
        licenses: [{ license: { id: 'MIT' } }],
      },
    },
    components: packages.map(({ name, version, license, integrity }) => ({
      type: 'library',
      'bom-ref': `pkg:npm/${name.replace('@', '%40')}@${version}`,
      name,
      version,
      purl: `pkg:npm/${name.replace('@', '%40')}@${version}`,
      licenses: [{ license: { id: license } }],
      ...(integrity?.startsWith('sha512-')
        ? { hashes: [{ alg: 'SHA-512', content: Buffer.from(integrity.slice(7), 'base64').toString('hex') }] }
        : {}),
    })),
  };
}
