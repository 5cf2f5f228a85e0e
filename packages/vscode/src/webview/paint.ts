/// <reference lib="dom" />

/** Paints an SVG into a PNG of twice its size, as base64; nothing when the browser will not. */
export async function paintPicture({
  svg,
  width,
  height,
}: {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}): Promise<string | undefined> {
  try {
    const image = new Image();
    image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = width * 2;
    canvas.height = height * 2;
    canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
    return canvas.toDataURL('image/png').split(',')[1];
  } catch {
    return undefined;
  }
}
