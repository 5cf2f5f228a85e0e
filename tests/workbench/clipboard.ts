import type { Page } from 'playwright-core';
import type { Workbench } from './workbench.js';

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

/** Takes one of the ways that the button of the sheet offers: to save, or to copy. */
export async function pickWay(workbench: Workbench, way: string): Promise<void> {
  await workbench.webview().locator('button.keep').click();
  await workbench.page.locator('.quick-input-widget input[type=text]').first().waitFor();
  await workbench.page.keyboard.type(way);
  await workbench.page.keyboard.press('Enter');
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
