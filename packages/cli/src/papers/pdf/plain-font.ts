/** Rules for ligatures, kerning and scripts that no paper needs: reading them takes longer than all the rest. */
const LEFT_OUT = new Set(['GSUB', 'GPOS', 'GDEF', 'kern', 'DSIG']);

/** A TrueType font without its rules of layout: the table of contents, then each table at a multiple of four bytes. */
export function plainFont(font: Uint8Array): Uint8Array {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
  const tables = Array.from({ length: view.getUint16(4) }, (_, index) => {
    const at = HEAD + index * ENTRY;
    const tag = String.fromCharCode(...font.subarray(at, at + 4));
    return {
      tag,
      entry: font.subarray(at, at + ENTRY),
      from: view.getUint32(at + 8),
      length: view.getUint32(at + 12),
    };
  }).filter(one => !LEFT_OUT.has(one.tag));
  const padded = (length: number) => Math.ceil(length / 4) * 4;
  const start = HEAD + tables.length * ENTRY;
  const whole = new Uint8Array(tables.reduce((sum, one) => sum + padded(one.length), start));
  const out = new DataView(whole.buffer);
  whole.set(font.subarray(0, HEAD));
  out.setUint16(4, tables.length);
  let to = start;
  tables.forEach(({ entry, from, length }, index) => {
    whole.set(entry, HEAD + index * ENTRY);
    out.setUint32(HEAD + index * ENTRY + 8, to);
    whole.set(font.subarray(from, from + length), to);
    to += padded(length);
  });
  return whole;
}

const HEAD = 12;
const ENTRY = 16;
