import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';

const program = process.env.CHROMIUM ?? '/usr/bin/chromium';

/** A headless browser with an empty profile that talks to nobody but the test's own server. */
export async function startBrowser(): Promise<{ page: Page; close(): Promise<void> }> {
  if (!existsSync(program)) throw new Error(`${program} is missing. On Debian: apt-get install chromium`);
  const profile = mkdtempSync(join(tmpdir(), 'tailshaft-browser-'));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: program,
    headless: true,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
    viewport: { width: 1400, height: 900 },
    colorScheme: 'dark',
  });
  return {
    page: context.pages()[0] ?? (await context.newPage()),
    close: async () => {
      await context.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}
