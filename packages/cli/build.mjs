import { chmod, cp, mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { leftOut } from '../../.ci/left-out.mjs';
import { writeNotices } from '../../.ci/notices.mjs';
import { builtInParts } from '../../.ci/parts.mjs';
import { shortGrammar } from '../../.ci/short-grammar.mjs';

const here = path => fileURLToPath(new URL(path, import.meta.url));
const { version } = JSON.parse(await readFile(here('package.json'), 'utf8'));
/** The examples of the rules are for the manual, which the library leaves out. */
const withoutExamples = {
  name: 'without-examples',
  setup: ({ onLoad }) =>
    onLoad({ filter: /[\\/]drivetrain[\\/]src[\\/]rules[\\/]examples\.ts$/ }, async ({ path }) => ({
      contents: await readFile(path.replace(/examples\.ts$/, 'no-examples.ts'), 'utf8'),
      loader: 'ts',
    })),
};
/** The fonts are plain TrueType and the pictures are drawn: what unpacks other fonts and bitmaps is left out. */
const drawnOnly = {
  name: 'drawn-only',
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /^(brotli\/decompress(\.js)?|png-js)$/ }, ({ path }) => ({
      path,
      namespace: 'left-out',
    }));
    onLoad({ filter: /.*/, namespace: 'left-out' }, ({ path }) => ({
      contents: `module.exports = () => { throw new Error('${path} is left out'); };`,
      loader: 'js',
    }));
  },
};
await mkdir(here('dist'), { recursive: true });

/** The program needs nothing but Node: all packages, the parser library and the language server are in it. */
const command = await programInParts();
/** What people run: it starts the program with code that was compiled before. */
await bundled('src/launch/main.ts', 'tailshaft.cjs');
if (process.argv.includes('--program')) {
  await pagesBeside();
  process.exit(0);
}
/** The tools for agents bring a protocol library along that nobody else needs. */
const tools = await bundled('src/tools/main.ts', 'tools.cjs');
/** Papers as PDF: the library for it, and the fonts that it embeds, are read only when one is asked for. */
const pdf = await bundled('src/papers/pdf/main.ts', 'pdf.cjs', {
  // A bundle has no address of its own as modules have: one of the libraries asks for it.
  banner: { js: "const bundleUrl = require('node:url').pathToFileURL(__filename).href;" },
  define: { 'import.meta.url': 'bundleUrl' },
  plugins: [drawnOnly],
});
const fonts = await fontsBeside();
/** What other programs import, in Node and in browsers: it takes nothing of either. */
const library = await libraryBundle();
writeNotices([command, tools, pdf, fonts, library], here('dist'), { name: 'tailshaft', version });

/** Each command is evaluated when it is asked for. */
async function programInParts() {
  const { texts, metafile } = await builtInParts({
    entry: here('src/main.ts'),
    file: 'program.cjs',
    platform: 'node',
    target: 'node20',
    logLevel: 'warning',
    define: { __TAILSHAFT_VERSION__: JSON.stringify(version) },
    inject: [here('../language/scripts/group-by.mjs')],
    plugins: [leftOut, shortGrammar],
  });
  // Whoever runs the old one meanwhile never meets half of the new one.
  const beside = here(`dist/.${process.pid}-program.cjs`);
  await writeFile(beside, texts['program.cjs']);
  await rename(beside, here('dist/program.cjs'));
  return metafile;
}

async function libraryBundle() {
  const beside = here(`dist/.${process.pid}-index.mjs`);
  const { metafile } = await build({
    metafile: true,
    entryPoints: [here('src/library/index.ts')],
    outfile: beside,
    bundle: true,
    platform: 'browser',
    mainFields: ['browser', 'module', 'main'],
    target: 'es2022',
    format: 'esm',
    minify: true,
    legalComments: 'none',
    logLevel: 'warning',
    define: { __TAILSHAFT_VERSION__: JSON.stringify(version) },
    inject: [here('../language/scripts/group-by.mjs')],
    plugins: [withoutExamples, leftOut, shortGrammar],
  });
  await rename(beside, here('dist/index.mjs'));
  const api = await readFile(here('src/library/api.ts'), 'utf8');
  const names = /interface Library \{([\s\S]*?)\n\}/.exec(api)[1].matchAll(/^ {2}readonly (\w+):/gm);
  const values = [...names].map(([, name]) => `export declare const ${name}: Library['${name}'];`);
  await writeFile(here('dist/index.d.ts'), `${api}\n${values.join('\n')}\n`);
  return metafile;
}

/** Fonts, and what the notices are to say of them. */
async function fontsBeside() {
  const folder = 'node_modules/dejavu-fonts-ttf/ttf';
  const inputs = {};
  await mkdir(here('dist/fonts'), { recursive: true });
  for (const name of ['DejaVuSansCondensed.ttf', 'DejaVuSansCondensed-Bold.ttf']) {
    await cp(here(`../../${folder}/${name}`), here(`dist/fonts/${name}`));
    inputs[`${folder}/${name}`] = { bytesInOutput: 1 };
  }
  return { outputs: { fonts: { inputs } } };
}

async function bundled(entry, name, more = {}) {
  // Whoever runs the old one meanwhile never meets half of the new one.
  const beside = here(`dist/.${process.pid}-${name}`);
  const { metafile } = await build({
    metafile: true,
    entryPoints: [here(entry)],
    outfile: beside,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'cjs',
    minify: true,
    legalComments: 'none',
    logLevel: 'warning',
    banner: { js: '#!/usr/bin/env node' },
    define: { __TAILSHAFT_VERSION__: JSON.stringify(version) },
    plugins: [leftOut, shortGrammar],
    ...more,
    // Runs before anything else: the parser library calls it while it loads.
    inject: [here('../language/scripts/group-by.mjs')],
  });
  await chmod(beside, 0o755);
  await rename(beside, here(`dist/${name}`));
  return metafile;
}

await pagesBeside();

/** The pages that the code of a finding leads to, in the tree that their links are written for. */
async function pagesBeside() {
  const root = here('../../');
  await rm(here('dist/manual'), { recursive: true, force: true });
  for (const path of [
    'packages/drivetrain/RULES.md',
    'packages/drivetrain/manual',
    'packages/mechanics/METHODS.md',
    'packages/language/REFERENCE.md',
    'examples/mistakes',
  ]) {
    await cp(`${root}${path}`, here(`dist/manual/${path}`), { recursive: true });
  }
}
