// Holds the layers apart: which package may import which, who stays free of Node and editors, no cycles.
// Runs before every build, on plain Node: `node tests/tidy/import-direction.mjs [repository]`.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { firstCycle } from './cycles.mjs';

/** What each package may import. A package left of another never imports it back. */
const mayImport = {
  mechanics: [],
  vocabulary: ['mechanics'],
  drivetrain: ['mechanics', 'vocabulary'],
  language: ['mechanics', 'vocabulary', 'drivetrain'],
  sheet: ['mechanics', 'vocabulary', 'drivetrain'],
  cli: ['mechanics', 'vocabulary', 'drivetrain', 'language', 'sheet'],
  vscode: ['mechanics', 'vocabulary', 'drivetrain', 'language', 'sheet'],
};

/** Packages of pure values: they run in a browser, a worker or a server, and know none of them. */
const pure = ['mechanics', 'vocabulary', 'drivetrain', 'sheet'];

const root = resolve(process.argv[2] ?? join(import.meta.dirname, '../..'));
const problems = [];
const arrows = new Map();

for (const name of Object.keys(mayImport)) {
  const source = join(root, 'packages', name, 'src');
  if (existsSync(source)) for (const file of sourcesIn(source)) lookOver(name, source, file);
}
const cycle = firstCycle(arrows);
if (cycle)
  problems.push(`These files import each other in a circle:\n    ${cycle.map(shown).join('\n    ')}`);

for (const problem of problems) console.error(problem);
if (problems.length > 0) process.exit(1);

function lookOver(name, source, file) {
  const targets = [];
  for (const imported of importsOf(readFileSync(file, 'utf8'))) {
    const complain = why => problems.push(`${shown(file)} imports '${imported}': ${why}`);
    const ours = /^@tailshaft\/([^/]+)(\/.*)?$/.exec(imported);
    if (imported.startsWith('.')) {
      const target = resolve(dirname(file), imported);
      if (!target.startsWith(source + sep)) complain('a package is imported by its name, not by its path.');
      else targets.push(target.replace(/\.js$/, '.ts'));
    } else if (ours) {
      if (ours[1] !== name && !mayImport[name].includes(ours[1]))
        complain(`${name} may import ${mayImport[name].join(', ') || 'no other package'}.`);
      if (ours[2] && !exportsOf(ours[1]).includes(`.${ours[2]}`))
        complain('a package is entered by the doors that its manifest names under exports.');
    } else if (pure.includes(name) && knowsItsHost(imported)) {
      complain(`${name} knows neither Node nor Langium nor an editor.`);
    }
  }
  arrows.set(file, targets);
}

function exportsOf(name) {
  const manifest = join(root, 'packages', name, 'package.json');
  return existsSync(manifest) ? Object.keys(JSON.parse(readFileSync(manifest, 'utf8')).exports ?? {}) : [];
}

function knowsItsHost(imported) {
  const [first] = imported.replace(/^node:/, '').split('/');
  return builtinModules.includes(first) || first === 'langium' || first.startsWith('vscode');
}

/** Names in import and export statements, with the comments taken out first. */
function importsOf(text) {
  const code = text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '');
  // Single quotes only: the formatter keeps to them, and `import "path"` in a spec is the language's own.
  const statement =
    /^\s*(?:import|export)\b[^'"`;]*?\bfrom\s*'([^']+)'|^\s*import\s*'([^']+)'|\bimport\(\s*'([^']+)'/gm;
  return [...code.matchAll(statement)].map(found => found[1] ?? found[2] ?? found[3]);
}

function sourcesIn(folder) {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(path => /\.[cm]?tsx?$/.test(path))
    .map(path => join(folder, path));
}

function shown(file) {
  return relative(root, file).split(sep).join('/');
}
