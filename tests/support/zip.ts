import { readFileSync } from 'node:fs';

/** What a zip archive holds, from its directory (APPNOTE.TXT by PKWARE, 4.3.12). */
export function unzipped(archive: string): { readonly name: string; readonly size: number }[] {
  const bytes = readFileSync(archive);
  const end = bytes.lastIndexOf(Buffer.from([0x50, 0x4b, 5, 6]));
  const entries: { name: string; size: number }[] = [];
  let at = bytes.readUInt32LE(end + 16);
  for (let left = bytes.readUInt16LE(end + 10); left > 0; left--) {
    const length = bytes.readUInt16LE(at + 28);
    entries.push({
      name: bytes.toString('utf8', at + 46, at + 46 + length),
      size: bytes.readUInt32LE(at + 24),
    });
    at += 46 + length + bytes.readUInt16LE(at + 30) + bytes.readUInt16LE(at + 32);
  }
  return entries;
}
