import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import encode, { init } from '@jsquash/webp/encode.js';
import type { Page } from 'playwright-core';

/** Screenshots of text need no more, and weigh less than half. */
const MOST_COLOURS = 40;

/** A screenshot as a WebP picture in few colours, without loss beyond that. */
export async function fewColouredWebp(page: Page, png: Buffer): Promise<Buffer> {
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
  const data = new Uint8ClampedArray(inFewColours(Buffer.from(base64, 'base64')));
  await ready;
  const lossless = { lossless: 1, quality: 100, method: 6 };
  return Buffer.from(await encode({ data, width, height, colorSpace: 'srgb' } as ImageData, lossless));
}

/** The library would fetch its code as in a page. */
const ready = init(
  new WebAssembly.Module(
    readFileSync(createRequire(import.meta.url).resolve('@jsquash/webp/codec/enc/webp_enc_simd.wasm')),
  ),
);

/** Each pixel, four bytes, in the colour of the palette that is nearest to its own. */
function inFewColours(pixels: Buffer): Buffer {
  const colours: number[] = [];
  for (let at = 0; at < pixels.length; at += 4) colours.push(pixels.readUIntBE(at, 3));
  const palette = chosenFrom(colours);
  const nearest = new Map<number, number>();
  const drawn = Buffer.alloc(pixels.length, 255);
  for (const [index, colour] of colours.entries()) {
    let shown = nearest.get(colour);
    if (shown === undefined) {
      shown = palette[nearestOf(palette, colour)]!;
      nearest.set(colour, shown);
    }
    drawn.writeUIntBE(shown, index * 4, 3);
  }
  return drawn;
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
