import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, normalize, resolve, sep } from 'node:path';
import { inflateRawSync } from 'node:zlib';

/** Unpacks a zip archive, which is what a VSIX is. The layout is that of APPNOTE.TXT by PKWARE, 4.3. */
export function unzip(archive: string, folder: string): void {
  const bytes = readFileSync(archive);
  for (const entry of directoryOf(bytes, archive)) {
    if (entry.name.endsWith('/')) continue;
    const target = resolve(folder, normalize(entry.name));
    if (!target.startsWith(resolve(folder) + sep))
      throw new Error(`${archive} reaches outside: ${entry.name}`);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, contentOf(bytes, entry));
  }
}

interface Entry {
  readonly name: string;
  readonly method: number;
  readonly packedSize: number;
  readonly offset: number;
}

const endSignature = 0x06054b50;
const entrySignature = 0x02014b50;

function directoryOf(bytes: Buffer, archive: string): Entry[] {
  let end = bytes.length - 22;
  while (end >= 0 && bytes.readUInt32LE(end) !== endSignature) end--;
  if (end < 0) throw new Error(`${archive} is not a zip archive.`);
  const entries: Entry[] = [];
  let at = bytes.readUInt32LE(end + 16);
  for (let count = bytes.readUInt16LE(end + 10); count > 0; count--) {
    if (bytes.readUInt32LE(at) !== entrySignature) throw new Error(`${archive}: its directory is broken.`);
    const nameLength = bytes.readUInt16LE(at + 28);
    entries.push({
      name: bytes.toString('utf8', at + 46, at + 46 + nameLength),
      method: bytes.readUInt16LE(at + 10),
      packedSize: bytes.readUInt32LE(at + 20),
      offset: bytes.readUInt32LE(at + 42),
    });
    at += 46 + nameLength + bytes.readUInt16LE(at + 30) + bytes.readUInt16LE(at + 32);
  }
  return entries;
}

function contentOf(bytes: Buffer, { method, packedSize, offset, name }: Entry): Buffer {
  const start = offset + 30 + bytes.readUInt16LE(offset + 26) + bytes.readUInt16LE(offset + 28);
  const packed = bytes.subarray(start, start + packedSize);
  if (method === 0) return packed;
  if (method === 8) return inflateRawSync(packed);
  throw new Error(`${name} is packed by method ${method}, which is neither stored nor deflated.`);
}
