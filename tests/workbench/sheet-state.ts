import type { Locator } from 'playwright-core';
import { until } from './until.js';

/** What a person has chosen to see on a sheet. */
export interface Seen {
  readonly arrangement: string;
  readonly line: string;
  readonly point: string;
  readonly astern: boolean;
  readonly parts: number;
  readonly openFolds: number;
  readonly scroll: number;
}

/** Sets every switch of the sheet to something other than at the start, opens a fold and scrolls. */
export async function chooseOnSheet(sheet: Locator): Promise<void> {
  const control = (name: string) => sheet.locator(`[data-control=${name}] select`);
  await control('line').selectOption('Starboard');
  await until(
    'one line',
    () => sheet.locator('svg [data-part$=".engine"]').count(),
    number => number === 1,
  );
  await control('point').selectOption('idle');
  await sheet.locator('input[value=astern]').check();
  await sheet.locator('h3', { hasText: 'lever astern' }).waitFor();
  await sheet.locator('summary').first().click();
  await sheet.locator('details[open]').first().waitFor();
  await sheet.evaluate(body => body.ownerDocument.defaultView!.scrollTo(0, 240));
  // The sheet keeps where it stands once it has come to rest.
  await new Promise(resolve => setTimeout(resolve, 600));
}

export async function seenOnSheet(sheet: Locator): Promise<Seen> {
  const chosen = (name: string) => sheet.locator(`[data-control=${name}] select`).inputValue();
  return {
    arrangement: await chosen('arrangement'),
    line: await chosen('line'),
    point: await chosen('point'),
    astern: await sheet.locator('input[value=astern]').isChecked(),
    parts: await sheet.locator('svg [data-part]').count(),
    openFolds: await sheet.locator('details[open]').count(),
    scroll: await sheet.evaluate(body => body.ownerDocument.defaultView!.scrollY),
  };
}
