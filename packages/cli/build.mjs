import { chmod, mkdir, readFile, rename } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const here = path => fileURLToPath(new URL(path, import.meta.url));
const { version } = JSON.parse(await readFile(here('package.json'), 'utf8'));
const outfile = here('dist/tailshaft.cjs');
// Whoever runs the old one meanwhile never meets half of the new one.
const beside = here(`dist/.tailshaft-${process.pid}.cjs`);
await mkdir(here('dist'), { recursive: true });

/** One file that needs nothing but Node: all packages, the parser library and the language server are in it. */
await build({
  entryPoints: [here('src/main.ts')],
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
  // Runs before anything else: the parser library calls it while it loads.
  inject: [here('../language/scripts/group-by.mjs')],
});
await chmod(beside, 0o755);
await rename(beside, outfile);
