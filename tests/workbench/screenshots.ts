import { mkdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Where pictures go; set TAILSHAFT_SCREENSHOTS to keep them. */
export const screenshotFolder = process.env.TAILSHAFT_SCREENSHOTS ?? join(tmpdir(), 'tailshaft-screenshots');

export function screenshotPath(name: string): string {
  mkdirSync(screenshotFolder, { recursive: true });
  return join(screenshotFolder, `${name}.png`);
}
