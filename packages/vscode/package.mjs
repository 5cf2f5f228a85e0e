import { chmod } from 'node:fs/promises';
import { createVSIX, listFiles, PackageManager } from '@vscode/vsce';

// One file to install: everything is bundled, so no dependency is packed.
process.chdir(import.meta.dirname);

/** Where the folder of the extension is published, for a store that shows only pictures with an https address. */
const page = process.env.TAILSHAFT_PAGE?.replace(/\/?$/, '/');
if (page && !page.startsWith('https://')) throw new Error('TAILSHAFT_PAGE is an https address.');

// The same sources give the same bytes: files of one time, told in one zone, in one order. Zip knows no time before 1980.
process.env.SOURCE_DATE_EPOCH ??= String(Date.UTC(1985, 9, 26) / 1000);
process.env.TZ = 'UTC';
// Who may read a file in a checkout depends on who made it.
for (const file of await listFiles({ packageManager: PackageManager.None })) await chmod(file, 0o644);
await createVSIX({
  dependencies: false,
  packagePath: process.env.TAILSHAFT_VSIX ?? 'dist/tailshaft.vsix',
  allowMissingRepository: true,
  skipLicense: false,
  // Without an address the pictures of the page are those that come with the extension; nothing is fetched.
  rewriteRelativeLinks: page !== undefined,
  ...(page ? { baseContentUrl: page, baseImagesUrl: page } : {}),
});
