import { type Seen, seenOnSheet } from './sheet-state.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

/** Loads the window anew with the sheet of a vessel in it; what was to be seen on the sheet, and what is after. */
export async function reloaded(workbench: Workbench, vessel: string): Promise<[before: Seen, after: Seen]> {
  const { page } = workbench;
  const before = await seenOnSheet(workbench.webview());
  // A browser is given no time to write when a page goes: the workbench writes every few seconds before that.
  await until(
    'the workbench to write',
    () => keptByWorkbench(workbench),
    text => keeps(text, before),
    60_000,
  );
  await page.reload();
  await page.locator('.tab', { hasText: `Sheet of ${vessel}` }).waitFor({ timeout: 120_000 });
  await workbench.webview().locator('main.panel').waitFor({ timeout: 60_000 });
  const after = await until(
    'the sheet to stand where it stood',
    () => seenOnSheet(workbench.webview()),
    seen => seen.scroll === before.scroll,
  );
  return [before, after];
}

/** The errors in the console but for those that the workbench prints when its page, or one inside it, goes. */
export function errorsButOfLeaving(lines: readonly string[]): string[] {
  return lines.filter(
    line =>
      !line.includes('Long running operations during shutdown are unsupported in the web') &&
      // The page around a webview, which is closed before its frame has loaded.
      line !== 'Error: Found unexpected null' &&
      // Its own log, written when its database is closed already.
      !/Unable to write file 'vscode-log:.*IndexedDB database .* is closed/.test(line),
  );
}

/** All that the workbench keeps in the databases of the browser. */
function keptByWorkbench({ page }: Workbench): Promise<string> {
  return page.evaluate(async () => {
    const done = <T>(asked: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        asked.onsuccess = () => resolve(asked.result);
        asked.onerror = () => reject(asked.error);
      });
    const kept: unknown[] = [];
    for (const { name } of await indexedDB.databases()) {
      const database = await done(indexedDB.open(name!));
      for (const store of database.objectStoreNames)
        kept.push(...(await done(database.transaction(store).objectStore(store).getAll())));
      database.close();
    }
    return kept.filter(one => typeof one === 'string').join('\n');
  });
}

/** The state of the sheet lies in the state of the editors, quoted once for each layer around it. */
function keeps(text: string, seen: Seen): boolean {
  const bare = text.replaceAll('\\', '');
  return (
    bare.includes(`"line":"${seen.line}"`) &&
    bare.includes(`"direction":"${seen.astern ? 'astern' : 'ahead'}"`) &&
    bare.includes(`"scroll":${seen.scroll}`) &&
    /"open":\["\d+ [^"]+"/.test(bare)
  );
}
