import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import * as protocol from 'vscode-languageserver-protocol';
import type { Said } from './tap.js';

const modules = resolve(import.meta.dirname, '../../node_modules');

/**
 * Holds messages to the declarations of the protocol package: each becomes a literal of the declared type, and the
 * compiler says what is missing, of another type, or unknown. (The package ships the declarations that are made from
 * the protocol's meta model, not the model itself.)
 */
export async function typeErrors(said: readonly Said[]): Promise<string[]> {
  const names = declaredNames();
  const literals = new Map<string, string>();
  const unknown = new Set<string>();
  for (const { kind, method, value } of said) {
    // `shutdown` is declared to answer nothing at all, which JSON can only say as null.
    if (method.startsWith('$/') || method.startsWith('tailshaft/') || method === 'shutdown') continue;
    const name = names.get(method);
    if (!name) unknown.add(`${method} is no method of the protocol`);
    else
      literals.set(
        `${kind === 'result' ? 'ResultOf' : 'ParamsOf'}<typeof ${name}.type> = ${JSON.stringify(value ?? null)}`,
        method,
      );
  }
  return [...unknown, ...(await compile([...literals.keys()], [...literals.values()]))];
}

/** `textDocument/hover` to `HoverRequest`. */
function declaredNames(): Map<string, string> {
  const names = new Map<string, string>();
  for (const [name, value] of Object.entries(protocol)) {
    const method = (value as { type?: { method?: unknown } } | undefined)?.type?.method;
    if (typeof method === 'string') names.set(method, name);
  }
  return names;
}

const HEAD = `import * as lsp from 'vscode-languageserver-protocol';
type ResultOf<T> = T extends lsp.RequestType<any, infer R, any> ? R : T extends lsp.RequestType0<infer R, any> ? R : never;
type ParamsOf<T> = T extends lsp.RequestType<infer P, any, any> ? P : T extends lsp.NotificationType<infer P> ? P : T extends lsp.RequestType0<any, any> ? null : never;
`;

async function compile(literals: readonly string[], methods: readonly string[]): Promise<string[]> {
  const folder = await mkdtemp(join(tmpdir(), 'tailshaft-messages-'));
  try {
    const lines = literals.map(
      (literal, index) => `const m${index}: ${literal.replace('typeof ', 'typeof lsp.')};`,
    );
    await writeFile(join(folder, 'messages.ts'), `${HEAD}${lines.join('\n')}\nexport {};\n`);
    const options = {
      strict: true,
      noEmit: true,
      skipLibCheck: true,
      module: 'NodeNext',
      target: 'es2022',
      types: [],
      paths: {
        'vscode-languageserver-protocol': [
          join(modules, 'vscode-languageserver-protocol/lib/node/main.d.ts'),
        ],
      },
    };
    await writeFile(
      join(folder, 'tsconfig.json'),
      JSON.stringify({ compilerOptions: options, files: ['messages.ts'] }),
    );
    const output = await new Promise<string>(done => {
      execFile(
        join(modules, '.bin/tsc'),
        ['-p', folder, '--pretty', 'false'],
        { maxBuffer: 1 << 26 },
        (_error, out) => done(out),
      );
    });
    const before = HEAD.split('\n').length - 1;
    return output
      .split('\n')
      .filter(line => line.trim() !== '')
      .map(line => {
        const at = /^.*messages\.ts\((\d+),/.exec(line);
        const index = at ? Number(at[1]) - 1 - before : -1;
        return index >= 0 ? `${methods[index]}: ${line}\n  ${literals[index]?.slice(0, 400)}` : line;
      });
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
