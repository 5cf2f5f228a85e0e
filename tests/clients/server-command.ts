import { existsSync } from 'node:fs';
import { resolve } from 'node:path';

/** The built command line; TAILSHAFT_CLI names another build. */
export function cliPath(): string {
  const path =
    process.env.TAILSHAFT_CLI ?? resolve(import.meta.dirname, '../../packages/cli/dist/tailshaft.cjs');
  if (!existsSync(path)) throw new Error(`${path} is missing. Run: npm run build`);
  return path;
}

/** How an editor starts the language server. */
export function serverCommand(node: string = process.execPath): string[] {
  return [node, cliPath(), 'serve', '--stdio'];
}
