/** Stands for `examples.ts` in bundles that ship the pages of the rules beside them as a file. */
export function examples(): void {}
