import { mkdir, rm, writeFile } from 'node:fs/promises';
import { build } from 'esbuild';

// Four bundles: client and server, for the desktop and for the browser; and the colouring grammar.
process.chdir(import.meta.dirname);
await rm('dist', { recursive: true, force: true });
await mkdir('dist');

const common = {
  bundle: true,
  minify: true,
  legalComments: 'none',
  target: 'es2022',
  logLevel: 'warning',
  inject: ['../language/scripts/group-by.mjs'],
};
const node = { ...common, platform: 'node', format: 'cjs' };
const web = { ...common, platform: 'browser', mainFields: ['browser', 'module', 'main'] };
await Promise.all([
  build({ ...node, entryPoints: ['src/extension.ts'], outfile: 'dist/extension.cjs', external: ['vscode'] }),
  build({ ...node, entryPoints: ['src/server.ts'], outfile: 'dist/server.cjs' }),
  build({
    ...web,
    entryPoints: ['src/extension-web.ts'],
    outfile: 'dist/extension-web.js',
    format: 'cjs',
    external: ['vscode'],
  }),
  build({ ...web, entryPoints: ['src/server-web.ts'], outfile: 'dist/server-web.js', format: 'iife' }),
]);

const grammar = await build({ ...node, minify: false, entryPoints: ['src/textmate.ts'], write: false });
const module = { exports: {} };
new Function('module', 'exports', 'require', grammar.outputFiles[0].text)(
  module,
  module.exports,
  (await import('node:module')).createRequire(import.meta.url),
);
await writeFile(
  'dist/tailshaft.tmLanguage.json',
  `${JSON.stringify(module.exports.textMateGrammar(), null, 2)}\n`,
);
