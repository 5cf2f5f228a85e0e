/*
 * Takes the pictures of the extension's page and walkthrough anew, from the packed extension:
 * node --import ./tests/bench/typescript.mjs tests/workbench/take-media.ts
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fewColouredWebp } from './few-coloured-webp.js';
import { startWorkbench } from './harness.js';
import { exampleFiles, exampleSpec, extensionUnderTest, withWrongHand } from './subject.js';
import type { Workbench } from './workbench.js';

const media = join(import.meta.dirname, '../../packages/vscode/media');
// Few enough vessels for the tree to show whole.
const kept = /^catalogue\/|ternhaven|quickgrass|saltmarsh/;
const files = Object.fromEntries(Object.entries(exampleFiles()).filter(([path]) => kept.test(path)));
const { text: mistaken, place, wrong } = withWrongHand(files[exampleSpec]!);
const around = mistaken.slice(place - 120, place);

const workbench = await startWorkbench({
  extensionFolder: extensionUnderTest(),
  files: { ...files, [exampleSpec]: mistaken },
  open: exampleSpec,
  settings: {
    'workbench.colorTheme': 'Light Modern',
    // No title bar: it names the test.
    'window.commandCenter': false,
    'workbench.layoutControl.enabled': false,
    'editor.stickyScroll.enabled': false,
  },
});
try {
  await take(workbench);
} finally {
  await workbench.close();
}

async function take({ page, run }: Workbench): Promise<void> {
  await workbench.waitForSquiggles(() => true);
  await page.locator('.statusbar-item', { hasText: 'failing' }).waitFor();

  await run('workbench.action.closeSidebar');
  await page.setViewportSize({ width: 900, height: 560 });
  await workbench.placeCursor(exampleSpec, 'import');
  await save('example');

  await workbench.hoverAt(exampleSpec, around + wrong, { at: around.length + 1 });
  await save('wrong-hand', { keepMouse: true });
  await page.keyboard.press('Escape');

  await run('tailshaft.vessels.focus');
  await page.locator('.pane-body .monaco-list-row', { hasText: 'The propeller drives ahead' }).waitFor();
  await save('tree');

  await run('workbench.action.closeSidebar');
  await page.setViewportSize({ width: 1040, height: 640 });
  await workbench.placeCursor(exampleSpec, 'replace gear Alder-63');
  await run('tailshaft.showSheet');
  const sheet = workbench.webview();
  await sheet.locator('.at-cursor').first().waitFor();
  await save('sheet');

  await run('test.set', 'workbench.colorTheme', 'Dark Modern');
  await page.setViewportSize({ width: 1000, height: 680 });
  await run('tailshaft.compareArrangements');
  await sheet.locator('.beside > section').nth(1).waitFor();
  await run('workbench.action.focusSecondEditorGroup');
  await run('workbench.action.maximizeEditorHideSidebar');
  await save('beside');
}

async function save(name: string, { keepMouse = false } = {}): Promise<void> {
  const { page } = workbench;
  // Where the status bar is empty, nothing has a tool tip.
  const { width, height } = page.viewportSize()!;
  if (!keepMouse) await page.mouse.move(0.455 * width, height - 5);
  // Scroll bars and tool tips fade.
  await new Promise(resolve => setTimeout(resolve, 1500));
  const png = await page.screenshot({ animations: 'disabled', caret: 'hide' });
  const reader = await page.context().newPage();
  writeFileSync(join(media, `${name}.webp`), await fewColouredWebp(reader, png));
  await reader.close();
  await page.bringToFront();
}
