// A plain pack of this folder would ask for packages that are nowhere to be had: the archive is made from the bundles.
console.error(
  'This folder packs nothing that can be installed. At the top: npm run release makes .release/tailshaft-<version>.tgz, which needs no other package.',
);
process.exit(1);
