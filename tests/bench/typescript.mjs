import { existsSync, readFileSync } from 'node:fs';
import { register } from 'node:module';
import { fileURLToPath } from 'node:url';

/* Lets plain Node run the TypeScript of the test harness: node --import ./tests/bench/typescript.mjs … */

if (import.meta.url && !import.meta.url.endsWith('?hooks')) register(`${import.meta.url}?hooks`);

/** Sources import each other as `.js`, which is what they would be once compiled. */
export function resolve(specifier, context, next) {
  if (/^\.\.?\//.test(specifier) && specifier.endsWith('.js') && context.parentURL) {
    const source = new URL(specifier.replace(/\.js$/, '.ts'), context.parentURL);
    if (existsSync(fileURLToPath(source))) return { url: source.href, shortCircuit: true };
  }
  return next(specifier, context);
}

export async function load(url, context, next) {
  if (!url.endsWith('.ts')) return next(url, context);
  const { transformSync } = await import('esbuild');
  const { code } = transformSync(readFileSync(fileURLToPath(url), 'utf8'), {
    loader: 'ts',
    format: 'esm',
    target: 'node20',
  });
  return { format: 'module', source: code, shortCircuit: true };
}
