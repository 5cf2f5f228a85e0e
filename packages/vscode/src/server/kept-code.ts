import * as modules from 'node:module';

/*
 * The desktop starts the server by this file: what compiling it gave is kept in the folder that the editor gives extensions for
 * such things, where Node can do that (from 22.8 on), and a fifth of the next start is saved.
 */
const { enableCompileCache, flushCompileCache } = modules as {
  readonly enableCompileCache?: (folder: string) => unknown;
  readonly flushCompileCache?: () => void;
};
const folder = process.env.TAILSHAFT_CACHE;
if (folder && enableCompileCache) {
  enableCompileCache(folder);
  // An editor may end its servers without asking; by then all that a start needs has been compiled.
  setTimeout(() => flushCompileCache?.(), 20_000).unref();
}
require('./server.js');
