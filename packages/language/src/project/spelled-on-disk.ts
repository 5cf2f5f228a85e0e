import { type FileSystemProvider, type URI, UriUtils } from 'langium';
import { realPath } from './links.js';

export interface Spelled {
  readonly uri: URI;
  /** As the import would write it. */
  readonly written: string;
}

/**
 * How the disk spells what an import found, where that differs in large and small letters only; undefined where it does
 * not. Only what the import itself writes is looked at: the folders above are not its doing, and what stands above a
 * symbolic link cannot be seen from what it leads to.
 */
export async function spelledOnDisk(
  files: FileSystemProvider,
  found: URI,
  path: string,
): Promise<Spelled | undefined> {
  const real = segments((await realPath(files, found)).path);
  const there = segments(found.path);
  const written = segments(path.replace(/\\/g, '/'));
  const ending = there.at(-1)!.slice(written.at(-1)!.length);
  for (let back = 1; back <= written.length && written.at(-back) !== '..'; back++) {
    const [name, own] = [real.at(-back), there.at(-back)!];
    if (name === undefined || plain(name).toLowerCase() !== plain(own).toLowerCase()) break;
    if (plain(name) === plain(own)) continue;
    // A link may be named as what it leads to but for a large letter.
    const folder = found.with({ path: `/${there.slice(0, -back).join('/')}` });
    if (await lists(files, folder, own)) break;
    there[there.length - back] = name;
    written[written.length - back] = back === 1 && ending ? name.slice(0, -ending.length) : name;
  }
  const uri = found.with({ path: `/${there.join('/')}` });
  return uri.path === found.path ? undefined : { uri, written: written.join('/') };
}

async function lists(files: FileSystemProvider, folder: URI, name: string): Promise<boolean> {
  const all = await files.readDirectory(folder);
  return all.some(one => plain(UriUtils.basename(one.uri)) === plain(name));
}

const segments = (path: string) => path.split('/').filter(one => one !== '' && one !== '.');

/** Some disks write an accented letter as two signs. */
const plain = (name: string) => name.normalize('NFC');
