import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { build } from 'esbuild';
import { leftOut } from '../../.ci/left-out.mjs';
import { writeNotices } from '../../.ci/notices.mjs';
import { builtInParts } from '../../.ci/parts.mjs';
import { shortGrammar } from '../../.ci/short-grammar.mjs';

// Client and server, each for the desktop and for the browser; the page of the sheet panel; and what is made from the
// language itself: the colouring grammars, the style of the panel, and the example of the walkthrough.
process.chdir(import.meta.dirname);
await rm('dist', { recursive: true, force: true });
await mkdir('dist');

const common = {
  metafile: true,
  bundle: true,
  minify: true,
  legalComments: 'none',
  target: 'es2022',
  logLevel: 'warning',
};
// Node 20 lacks what the parser library groups by.
const server = { ...common, inject: ['../language/scripts/group-by.mjs'] };
/** The examples of the rules are read from the pages that are installed, so the server carries none. */
const withoutExamples = {
  name: 'without-examples',
  setup: ({ onLoad }) =>
    onLoad({ filter: /[\\/]drivetrain[\\/]src[\\/]rules[\\/]examples\.ts$/ }, async ({ path }) => ({
      contents: await readFile(path.replace(/examples\.ts$/, 'no-examples.ts'), 'utf8'),
      loader: 'ts',
    })),
};
/** Nor their texts: the client answers for them from the same pages. */
const withoutTexts = {
  name: 'without-texts',
  setup: ({ onLoad }) =>
    onLoad({ filter: /[\\/]drivetrain[\\/]src[\\/]rules[\\/].*[\\/][^\\/]*\.ts$/ }, async ({ path }) => {
      const text = await readFile(path, 'utf8');
      return {
        contents: ['manual', 'caution', 'limitOf', 'noFigure'].reduce(withoutProperty, text),
        loader: 'ts',
      };
    }),
};
const node = { platform: 'node', format: 'cjs' };
const web = { platform: 'browser', mainFields: ['browser', 'module', 'main'] };
const bundles = await Promise.all([
  inParts({ entry: 'src/main.ts', file: 'extension.js', external: ['vscode'] }),
  inParts({
    inject: server.inject,
    entry: 'src/server/main.ts',
    file: 'server.js',
    apart: { asked: 'server-asked.js', more: 'server-more.js' },
    plugins: [withoutExamples, withoutTexts, leftOut, shortGrammar],
  }),
  build({
    ...common,
    ...node,
    entryPoints: ['src/server/kept-code.ts'],
    outfile: 'dist/server-node.js',
    external: ['./server.js'],
  }),
  build({
    ...common,
    ...web,
    entryPoints: ['src/webview/panel.ts'],
    outfile: 'dist/panel.js',
    format: 'iife',
  }),
]);

const { version } = JSON.parse(await readFile('package.json', 'utf8'));
writeNotices(
  bundles.map(one => one.metafile),
  'dist',
  { name: 'tailshaft-drivetrain', version },
);

const { textMateGrammar, markdownGrammar } = await run('src/textmate.ts');
await writeJson('dist/tailshaft.tmLanguage.json', textMateGrammar());
await writeJson('dist/markdown.tmLanguage.json', markdownGrammar());
await writeFile('dist/manual.json', JSON.stringify(await installedPages()));
const { panelStyle } = await run('src/webview/panel-style.ts');
await writeFile('dist/panel.css', panelStyle());
await writeFile('dist/example.shaft', await exampleText());

/** One file for both hosts: nearly all of it is the same, so a second copy would double what people install. */
async function inParts(options) {
  const { texts, metafile } = await builtInParts({
    target: 'es2022',
    logLevel: 'warning',
    platform: 'node',
    conditions: ['browser'],
    mainFields: ['module', 'main'],
    ...options,
  });
  for (const [name, text] of Object.entries(texts)) await writeFile(`dist/${name}`, text);
  return { metafile };
}

/** The value of a property, which the formatter keeps further in than its name, becomes an empty text. */
function withoutProperty(text, name) {
  return text.replace(new RegExp(`^( +)${name}:.*\\n(?:\\1 +.*\\n)*`, 'gm'), `$1${name}: '',\n`);
}

/** The exports of a module, bundled and run. */
async function run(entry) {
  const { outputFiles } = await build({ ...server, ...node, entryPoints: [entry], write: false });
  const module = { exports: {} };
  new Function('module', 'exports', 'require', outputFiles[0].text)(
    module,
    module.exports,
    createRequire(import.meta.url),
  );
  return module.exports;
}

/** The pages of the findings by path in the repository; specs with their catalogue entries, since they open alone. */
async function installedPages() {
  const { gallerySpecs, galleryBases, GALLERY_FOLDER, galleryPath } = await run(
    '../language/src/manual/index.ts',
  );
  const root = '../../';
  const found = await readdir(`${root}packages/drivetrain/manual`, { recursive: true });
  const paths = [
    'packages/drivetrain/RULES.md',
    'packages/mechanics/METHODS.md',
    'packages/language/REFERENCE.md',
    ...found
      .filter(one => one.endsWith('.md'))
      .map(one => `packages/drivetrain/manual/${one.replaceAll('\\', '/')}`),
  ];
  return Object.fromEntries([
    ...(await Promise.all(paths.map(async path => [path, await readFile(`${root}${path}`, 'utf8')]))),
    ...[...galleryBases()].map(([file, text]) => [`${GALLERY_FOLDER}/${file}`, text]),
    ...gallerySpecs().map(({ code, whole }) => [galleryPath(code), whole]),
  ]);
}

function writeJson(path, value) {
  return writeFile(path, `${JSON.stringify(value, null, 2)}\n`);
}

/** The example with its catalogue in one text, since a text that is saved nowhere has nothing to import. */
async function exampleText() {
  const read = path => readFile(`../../examples/${path}`, 'utf8');
  const spec = await read('pilot-cutter/ternhaven.shaft');
  const entries = await Promise.all(
    ['engines', 'gears', 'materials'].map(one => read(`catalogue/${one}.shaft`)),
  );
  return `${[spec.replace(/^import .*\n+/m, ''), ...entries].map(one => one.trim()).join('\n\n')}\n`;
}
