import { zlibSync } from 'fflate';
import type { Page } from 'playwright-core';

/** Screenshots of text need no more, and weigh a quarter. */
const MOST_COLOURS = 64;

/** The same picture in few colours. */
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
  return inFewColours(colours, width, height);
}

/** The file of a picture, given the colours of its pixels. */
export function inFewColours(colours: readonly number[], width: number, height: number): Buffer {
  const palette = chosenFrom(colours);
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

/** One after the other, the colour that brings those that are not in it yet nearest, the common ones before the rare. */
function chosenFrom(colours: readonly number[]): number[] {
  const counts = new Map<number, number>();
  for (const colour of colours) counts.set(colour, (counts.get(colour) ?? 0) + 1);
  const all = [...counts]
    .sort((one, other) => other[1] - one[1])
    .slice(0, 512)
    .map(([colour, count]) => ({ colour, weight: Math.sqrt(count), left: Number.MAX_SAFE_INTEGER }));
  const palette: number[] = [];
  while (palette.length < Math.min(MOST_COLOURS, all.length)) {
    const gain = (candidate: number) =>
      all.reduce(
        (sum, { colour, weight, left }) => sum + weight * Math.max(0, left - far(colour, candidate)),
        0,
      );
    const open = all.filter(one => one.left > 0).map(({ colour }) => ({ colour, gain: gain(colour) }));
    const best = open.reduce((one, other) => (other.gain > one.gain ? other : one)).colour;
    palette.push(best);
    for (const one of all) one.left = Math.min(one.left, far(one.colour, best));
  }
  return palette;
}

function nearestOf(palette: readonly number[], colour: number): number {
  let best = 0;
  for (let index = 1; index < palette.length; index++)
    if (far(palette[index]!, colour) < far(palette[best]!, colour)) best = index;
  return best;
}

function far(one: number, other: number): number {
  const parts = (colour: number) => [colour >> 16, (colour >> 8) & 255, colour & 255] as const;
  const [a, b] = [parts(one), parts(other)];
  return a.reduce((sum, part, index) => sum + (part - b[index]!) ** 2, 0);
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
