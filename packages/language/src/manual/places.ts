/** Where the generated pages lie in the repository. What is installed keeps the same tree, so links stay good. */
export const INDEX_PATH = 'packages/drivetrain/RULES.md';
export const METHODS_PATH = 'packages/mechanics/METHODS.md';
export const REFERENCE_PATH = 'packages/language/REFERENCE.md';
export const PAGES_FOLDER = 'packages/drivetrain/manual';
export const GALLERY_FOLDER = 'examples/mistakes';

/** The page of a finding, by its code. */
export function pagePath(code: string): string {
  return `${PAGES_FOLDER}/${code}.md`;
}

/** The way from that page up to the root of the tree. */
export function upFrom(code: string): string {
  return '../'.repeat(pagePath(code).split('/').length - 1);
}

/** A spec of the gallery that gives the finding. */
export function galleryPath(code: string): string {
  return `${GALLERY_FOLDER}/${code.replace('/', '-')}.shaft`;
}
