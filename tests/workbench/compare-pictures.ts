import type { Locator, Page } from 'playwright-core';

/** A picture of one thing, with nothing that moves in it. */
export async function pictureOf(thing: Locator): Promise<Buffer> {
  await thing.scrollIntoViewIfNeeded();
  await thing.page().mouse.move(2, 2);
  return thing.screenshot({ animations: 'disabled', caret: 'hide' });
}

/** Share of the pixels that differ between two PNG files, from 0 to 1; 1 where their sizes differ. */
export async function difference(page: Page, one: Buffer, other: Buffer): Promise<number> {
  // The browser reads PNG; a page of its own holds none of the workbench's rules on what may be loaded.
  const reader = await page.context().newPage();
  try {
    return await reader.evaluate(
      async files => {
        const [first, second] = await Promise.all(
          files.map(async file => {
            const bytes = Uint8Array.from(atob(file), letter => letter.charCodeAt(0));
            const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
            const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')!;
            context.drawImage(bitmap, 0, 0);
            const { data } = context.getImageData(0, 0, bitmap.width, bitmap.height);
            return { size: `${bitmap.width} ${bitmap.height}`, pixels: new Uint32Array(data.buffer) };
          }),
        );
        if (first!.size !== second!.size) return 1;
        let differing = 0;
        for (const [index, pixel] of first!.pixels.entries())
          if (pixel !== second!.pixels[index]) differing += 1;
        return differing / first!.pixels.length;
      },
      [one.toString('base64'), other.toString('base64')],
    );
  } finally {
    await reader.close();
    await page.bringToFront();
  }
}
