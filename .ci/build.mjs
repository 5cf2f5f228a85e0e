// Builds everything that is shipped: first the layers are looked over, then each package's own build.
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { installIfNeeded, root, run } from './install.mjs';

installIfNeeded();
run(process.execPath, ['tests/tidy/import-direction.mjs']);
for (const name of ['cli', 'vscode']) {
  const folder = new URL(`packages/${name}/`, root);
  if (existsSync(new URL('build.mjs', folder)))
    run(process.execPath, ['build.mjs'], { cwd: fileURLToPath(folder) });
}
