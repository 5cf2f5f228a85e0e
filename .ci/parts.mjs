import { readFile } from 'node:fs/promises';
import { build } from 'esbuild';
import { minifySync, parseSync } from 'rolldown/utils';

/*
 * A program whose parts are evaluated when they are first imported. The bundler keeps what is imported by `import()` apart
 * only in modules of its own form, which neither a classic worker nor `require` reads in one file. So each part becomes a
 * function: those that a start may need stand in one file, and those under `apart` in a file of their own beside it.
 */

/**
 * Builds `entry` and gives its files as texts by name. `apart` names the modules that get files of their own: module name
 * to file name. In a worker such a file is read from the address in `globalThis.tailshaftScripts`.
 */
export async function builtInParts({ entry, file, apart = {}, plugins = [], ...options }) {
  const { outputFiles, metafile } = await build({
    ...options,
    entryPoints: [entry],
    outdir: 'parts',
    bundle: true,
    splitting: true,
    format: 'esm',
    minify: true,
    charset: 'utf8',
    legalComments: 'none',
    metafile: true,
    write: false,
    plugins: [...plugins, straightToTheModule],
  });
  const key = `tailshaft ${file}`;
  const parts = outputFiles.map(one => partOf(one.path.split(/[\\/]/).at(-1), tighter(one)));
  const fileOf = ({ name }) => apart[name.replace(/(?:-\w{8})?\.js$/, '')];
  const missing = Object.keys(apart).filter(name => !parts.some(one => fileOf(one) === apart[name]));
  if (missing.length > 0)
    throw new Error(`No part of ${entry} is imported by import(): ${missing.join(', ')}`);
  const beside = Object.fromEntries(parts.flatMap(one => (fileOf(one) ? [[one.name, fileOf(one)]] : [])));
  const first = parts.find(one => one.name === `${entry.split(/[\\/]/).at(-1).replace(/\.ts$/, '')}.js`);
  const texts = {
    [file]: programOf(
      parts.filter(one => !beside[one.name]),
      first.name,
      beside,
      key,
    ),
  };
  for (const one of parts)
    if (beside[one.name])
      texts[beside[one.name]] =
        `"use strict";globalThis[Symbol.for(${JSON.stringify(key)})](${JSON.stringify(one.name)},${one.made});\n`;
  return { texts, metafile };
}

/** What a second look finds to say shorter, a twentieth of what is installed. */
function tighter({ path, text }) {
  const { code, errors } = minifySync(path, text, {
    module: true,
    compress: { target: 'es2022' },
    mangle: { toplevel: true },
    codegen: { removeWhitespace: true },
  });
  if (errors.length > 0) throw new Error(`${path}: ${errors[0].message}`);
  return code;
}

/** A part as a function of what gives the others, what imports them later, and its own exports. */
function partOf(name, text) {
  const head = [];
  const end = [];
  let body = '';
  let from = 0;
  for (const one of parseSync(name, text).program.body) {
    if (one.type === 'ImportDeclaration') head.push(taken(one));
    else if (one.type === 'ExportNamedDeclaration' && !one.declaration && !one.source) end.push(given(one));
    else if (/^(?:Import|Export)/.test(one.type))
      throw new Error(`${name} holds what is not expected: ${one.type}`);
    else continue;
    body += text.slice(from, one.start);
    from = one.end;
  }
  body += text.slice(from).trimEnd();
  body = body.replace(/\bimport\((["'`])\.\/([\w.-]+\.js)\1\)/g, 'later("$2")');
  return { name, made: `(part,later,exports)=>{${head.join('')}${body}\n${end.join('')}}` };
}

/** Names are taken once, when the part begins: whatever it imports from has been evaluated by then. */
function taken({ specifiers, source: { value } }) {
  const source = value.startsWith('./')
    ? `part(${JSON.stringify(value.slice(2))})`
    : `require(${JSON.stringify(value)})`;
  if (specifiers.length === 0) return `${source};`;
  const named = specifiers.filter(one => one.type === 'ImportSpecifier');
  const whole = specifiers.filter(one => one.type !== 'ImportSpecifier');
  return [
    ...whole.map(({ local }) => `const ${local.name}=${source};`),
    ...(named.length > 0
      ? [`const{${named.map(one => pair(one.imported.name, one.local.name)).join()}}=${source};`]
      : []),
  ].join('');
}

function given({ specifiers }) {
  return specifiers.length === 0
    ? ''
    : `Object.assign(exports,{${specifiers.map(one => pair(one.exported.name, one.local.name)).join()}});`;
}

const pair = (outer, inner) => (outer === inner ? outer : `${outer}:${inner}`);

function programOf(parts, first, beside, key) {
  const made = parts.map(one => `${JSON.stringify(one.name)}:${one.made}`).join(',\n');
  return `"use strict";(()=>{
const made={},beside=${JSON.stringify(beside)},parts={${made}};
const part=name=>{if(made[name])return made[name];const own=made[name]={};parts[name](part,later,own);return own};
const later=async name=>{if(!parts[name])fetched(beside[name]);return part(name)};
const fetched=file=>typeof importScripts==="function"?importScripts(globalThis.tailshaftScripts+file):require("./"+file);
globalThis[Symbol.for(${JSON.stringify(key)})]=(name,made)=>{parts[name]=made};
const own=part(${JSON.stringify(first)});
if(typeof module==="object")module.exports=own;
})();
`;
}

/**
 * A module that only gives on what others have is passed by: named re-exports in it would tie all it gives on to every part
 * that takes one of them. Types are gone in a bundle, so that a name given on from two modules is the same one.
 */
const straightToTheModule = {
  name: 'straight-to-the-module',
  setup: ({ onLoad }) =>
    onLoad({ filter: /[\\/]packages[\\/]\w+[\\/]src[\\/](?:[\w-]+[\\/])*index\.ts$/ }, async ({ path }) => {
      const text = await readFile(path, 'utf8');
      const passed = text
        .replace(/^export type \{[^}]*\} from .*$/gm, '')
        .replace(/^export \{[^}]*\} from/gm, 'export * from');
      return { contents: passed, loader: 'ts' };
    }),
};
