import type { Page } from 'playwright-core';

/** What a person could paste: the text, or the picture with its size. */
export interface Clipboard {
  readonly types: readonly string[];
  readonly text?: string;
  readonly picture?: { readonly width: number; readonly height: number; readonly colours: number };
}

/** Lets the pages of this browser write to the clipboard without asking, as a person who said yes. */
export async function grantClipboard(page: Page): Promise<void> {
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
}

/** Reads the clipboard from the workbench's own page. */
export function readClipboard(page: Page): Promise<Clipboard> {
  return page.evaluate(async () => {
    window.focus();
    const [item] = await navigator.clipboard.read();
    if (!item) return { types: [] };
    const types = [...item.types];
    if (types.includes('image/png')) {
      const bitmap = await createImageBitmap(await item.getType('image/png'));
      const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
      const context = canvas.getContext('2d')!;
      context.drawImage(bitmap, 0, 0);
      const pixels = new Uint32Array(context.getImageData(0, 0, bitmap.width, bitmap.height).data.buffer);
      const picture = { width: bitmap.width, height: bitmap.height, colours: new Set(pixels).size };
      return { types, picture };
    }
    return { types, text: await (await item.getType('text/plain')).text() };
  });
}
