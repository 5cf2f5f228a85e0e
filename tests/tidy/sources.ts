import { dirname, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Node, SourceFile } from 'typescript/unstable/ast';
import { API, type Checker } from 'typescript/unstable/sync';

export const ROOT = resolve(dirname(fileURLToPath(import.meta.url)), '../..');

export interface Sources {
  readonly checker: Checker;
  /** Sources below these paths, by their path in the repository. */
  readonly files: (wanted: RegExp) => readonly { readonly path: string; readonly source: SourceFile }[];
}

/** The sources of the repository with their types, for as long as `use` runs. */
export function withSources<T>(use: (sources: Sources) => T): T {
  const api = new API({ cwd: ROOT });
  try {
    const config = resolve(ROOT, 'tsconfig.json');
    const project = api.updateSnapshot({ openProjects: [config] }).getProjects()[0]!;
    const { program, checker } = project;
    const names = program.getSourceFileNames().map(name => [relative(ROOT, name), name] as const);
    return use({
      checker,
      files: wanted =>
        names
          .filter(([path]) => wanted.test(path))
          .map(([path, name]) => ({ path, source: program.getSourceFile(name)! })),
    });
  } finally {
    api.close();
  }
}

/** A node and all below it. */
export function* nodesOf(node: Node): Iterable<Node> {
  yield node;
  const below: Node[] = [];
  node.forEachChild(child => {
    below.push(child);
    return undefined;
  });
  for (const child of below) yield* nodesOf(child);
}

export function lineOf(source: SourceFile, node: Node): number {
  return source.text.slice(0, node.pos).split('\n').length;
}
