import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { PAGES_FOLDER } from '@tailshaft/language/manual';

/** Address of the folder with the pages of the findings, where they lie beside this program. */
export function installedPages(): string | undefined {
  // The program is one CommonJS file.
  const folder = join(__dirname, 'manual', PAGES_FOLDER);
  return existsSync(folder) ? `${pathToFileURL(folder)}/` : undefined;
}
