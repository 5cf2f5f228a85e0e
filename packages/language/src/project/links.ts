import type { FileSystemNode, FileSystemProvider, URI } from 'langium';

/** What a file system may know of symbolic links; one that knows none is taken as it is. */
interface LinkedFiles extends FileSystemProvider {
  realPath?(uri: URI): Promise<URI>;
}

/** Where a path really lies; itself where the file system cannot tell, or nothing is there. */
export async function realPath(files: FileSystemProvider, uri: URI): Promise<URI> {
  const { realPath: ask } = files as LinkedFiles;
  if (!ask) return uri;
  return ask.call(files, uri).catch(() => uri);
}

/** Whether a name in a folder is a symbolic link. */
export function isLink(node: FileSystemNode): boolean {
  return (node as FileSystemNode & { readonly isLink?: boolean }).isLink === true;
}
