import { createVSIX } from '@vscode/vsce';

// One file to install: everything is bundled, so no dependency is packed.
process.chdir(import.meta.dirname);

/** Where the folder of the extension is published, for a store that shows only pictures with an https address. */
const page = process.env.TAILSHAFT_PAGE?.replace(/\/?$/, '/');
if (page && !page.startsWith('https://')) throw new Error('TAILSHAFT_PAGE is an https address.');

await createVSIX({
  dependencies: false,
  packagePath: process.env.TAILSHAFT_VSIX ?? 'dist/tailshaft.vsix',
  allowMissingRepository: true,
  skipLicense: false,
  // Without an address the pictures of the page are those that come with the extension; nothing is fetched.
  rewriteRelativeLinks: page !== undefined,
  ...(page ? { baseContentUrl: page, baseImagesUrl: page } : {}),
});
