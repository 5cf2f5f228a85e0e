import { createVSIX } from '@vscode/vsce';

// One file to install: everything is bundled, so no dependency is packed.
process.chdir(import.meta.dirname);
await createVSIX({
  dependencies: false,
  packagePath: 'dist/tailshaft.vsix',
  allowMissingRepository: true,
  skipLicense: false,
  // The pictures of the page come with the extension; nothing is fetched.
  rewriteRelativeLinks: false,
});
