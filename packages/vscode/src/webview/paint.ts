/// <reference lib="dom" />
import type { Painted } from '../sheet/messages.js';

interface Picture {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  readonly copy: boolean;
}

/** Paints an SVG into a PNG of twice its size and hands it over, or puts it into the clipboard. */
export async function paintPicture({ copy, ...picture }: Picture): Promise<Painted> {
  try {
    const canvas = await painted(picture);
    if (!copy) return { base64: canvas.toDataURL('image/png').split(',')[1]! };
    await focused();
    const png = new Promise<Blob>((resolve, reject) =>
      canvas.toBlob(
        blob => (blob ? resolve(blob) : reject(new Error('The picture could not be made.'))),
        'image/png',
      ),
    );
    await navigator.clipboard.write([new ClipboardItem({ 'image/png': png })]);
    return { copied: true };
  } catch {
    return {};
  }
}

/** Whether the browser knows pictures in the clipboard, and lets a page inside another page reach it. */
export function canCopyPictures(): boolean {
  const policy = (document as { featurePolicy?: { allowsFeature(name: string): boolean } }).featurePolicy;
  return (
    typeof ClipboardItem !== 'undefined' &&
    navigator.clipboard?.write !== undefined &&
    policy?.allowsFeature('clipboard-write') !== false
  );
}

async function painted({ svg, width, height }: Omit<Picture, 'copy'>): Promise<HTMLCanvasElement> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = width * 2;
  canvas.height = height * 2;
  canvas.getContext('2d')!.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas;
}

/** The clipboard opens only to the page that has the focus: the list in which a way was picked had it a moment ago. */
async function focused(): Promise<void> {
  window.focus();
  for (let waited = 0; !document.hasFocus() && waited < 1500; waited += 50)
    await new Promise(resolve => setTimeout(resolve, 50));
}
