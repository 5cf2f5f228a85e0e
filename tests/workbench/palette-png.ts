import { zlibSync } from 'fflate';
import type { Page } from 'playwright-core';

/** The same picture in at most 256 colours: screenshots of text need no more, and weigh a third. */
export async function palettePng(page: Page, png: Buffer): Promise<Buffer> {
  const { width, height, base64 } = await page.evaluate(async file => {
    const bytes = Uint8Array.from(atob(file), letter => letter.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')!;
    context.drawImage(bitmap, 0, 0);
    const { data } = context.getImageData(0, 0, bitmap.width, bitmap.height);
    const parts: string[] = [];
    for (let start = 0; start < data.length; start += 32_768)
      parts.push(String.fromCharCode(...data.subarray(start, start + 32_768)));
    return { width: bitmap.width, height: bitmap.height, base64: btoa(parts.join('')) };
  }, png.toString('base64'));
  const pixels = Buffer.from(base64, 'base64');
  const colours: number[] = [];
  for (let at = 0; at < pixels.length; at += 4) colours.push(pixels.readUIntBE(at, 3));
  const palette = commonest(colours);
  const nearest = new Map<number, number>();
  const rows = Buffer.alloc((width + 1) * height);
  for (const [index, colour] of colours.entries()) {
    let entry = nearest.get(colour);
    if (entry === undefined) {
      entry = nearestOf(palette, colour);
      nearest.set(colour, entry);
    }
    // Each row begins with the number of its filter: none.
    rows[Math.floor(index / width) * (width + 1) + 1 + (index % width)] = entry;
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 3, 0, 0, 0], 8);
  const table = Buffer.alloc(palette.length * 3);
  for (const [index, colour] of palette.entries()) table.writeUIntBE(colour, index * 3, 3);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('PLTE', table),
    chunk('IDAT', zlibSync(rows, { level: 9 })),
    chunk('IEND', new Uint8Array()),
  ]);
}

/** The commonest colours, one for each small box of the colour space first, so that rare hues are not lost. */
function commonest(colours: readonly number[]): number[] {
  const counts = new Map<number, number>();
  for (const colour of colours) counts.set(colour, (counts.get(colour) ?? 0) + 1);
  const sorted = [...counts].sort((one, other) => other[1] - one[1]).map(([colour]) => colour);
  const boxes = new Set<number>();
  const first = sorted.filter(colour => {
    const box = colour & 0xc0c0c0;
    return boxes.has(box) ? false : Boolean(boxes.add(box));
  });
  return [...new Set([...first, ...sorted])].slice(0, 256);
}

function nearestOf(palette: readonly number[], colour: number): number {
  const parts = (one: number) => [one >> 16, (one >> 8) & 255, one & 255] as const;
  const wanted = parts(colour);
  const far = (one: number) =>
    parts(one).reduce((sum, part, index) => sum + (part - wanted[index]!) * (part - wanted[index]!), 0);
  let best = 0;
  for (let index = 1; index < palette.length; index++)
    if (far(palette[index]!) < far(palette[best]!)) best = index;
  return best;
}

/** PNG specification, section 5.3: length, type, data, and a checksum of type and data. */
function chunk(type: string, data: Uint8Array): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const whole = Buffer.alloc(named.length + 8);
  whole.writeUInt32BE(data.length, 0);
  named.copy(whole, 4);
  whole.writeUInt32BE(checksum(named), named.length + 4);
  return whole;
}

/** CRC-32 as the PNG specification gives it in annex D. */
function checksum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
}
