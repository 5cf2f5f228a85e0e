import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { grantClipboard, pickWay, readClipboard } from './clipboard.js';
import { type DesktopWorkbench, startDesktop } from './desktop-harness.js';
import { codeServerNode } from './large-tools.js';
import { errorsButOfLeaving, reloaded } from './reloaded.js';
import { chooseOnSheet } from './sheet-state.js';
import { exampleFiles, exampleSpec, handRoute, packedVsix, withWrongHand } from './subject.js';
import { until } from './until.js';

const spec = exampleSpec;
const rule = 'rotation/propeller-hand';

describe('on the extension host of a desktop', () => {
  const files = exampleFiles();
  const asWritten = files[spec]!;
  const { text: mistaken, place, right, wrong } = withWrongHand(asWritten);
  const before = mistaken.slice(place - 120, place);
  let workbench: DesktopWorkbench;

  // The first start compiles; the cache keeps the result.
  beforeAll(async () => {
    workbench = await startDesktop({
      vsix: process.env.TAILSHAFT_EXTENSION ?? packedVsix(),
      files: { ...files, [spec]: mistaken },
    });
  }, 300_000);
  afterAll(() => workbench?.close());

  it('is installed from its VSIX', () => {
    expect(workbench.extensions).toContainEqual(expect.stringMatching(/^tailshaft\.tailshaft-drivetrain@/));
  });

  it('opens a spec that is searched for by name', async () => {
    const running = workbench.run('workbench.action.quickOpen');
    const rows = workbench.page.locator('.quick-input-list .monaco-list-row');
    await workbench.page.locator('.quick-input-widget input').first().waitFor();
    await workbench.page.keyboard.type('ternhaven');
    await rows.filter({ hasText: 'ternhaven.shaft' }).first().waitFor();
    await workbench.page.keyboard.press('Enter');
    await running;
    await workbench.page.locator('.tab.active', { hasText: 'ternhaven.shaft' }).waitFor();
    expect(await workbench.run('test.languageOf', spec)).toBe('tailshaft');
  });

  it('runs the language server as a Node process, below the extension host', async () => {
    const server = await languageServer();
    expect(server.program).toBe(join(codeServerNode(), 'bin/node'));
    const parent = workbench.processes().find(one => one.pid === server.parent);
    expect(parent?.words).toContain('--type=extensionHost');
  });

  it('underlines a wrong hand', async () => {
    await until('the finding', findings, each => each.length > 0);
    await workbench.placeCursor(spec, before + wrong, { at: before.length });
    await workbench.waitForSquiggles(severities => severities.includes('error'));
    await workbench.screenshot('desktop-1-underlined');
  });

  it('says on hover which hand is needed', async () => {
    const hover = await workbench.hoverAt(spec, before + wrong, { at: before.length + 1 });
    await workbench.screenshot('desktop-2-hover');
    expect(hover).toContain(rule);
    expect(hover).toMatch(new RegExp(right, 'i'));
  });

  it('shows the sheet beside the text', async () => {
    await workbench.run('workbench.action.closeSidebar');
    await workbench.run('tailshaft.showSheet');
    const sheet = workbench.webview();
    await sheet.locator('main.panel').waitFor();
    expect(await sheet.locator('h1').textContent()).toContain('Ternhaven');
    expect(await sheet.locator('.counts').textContent()).toMatch(/1 failing/);
    expect(await sheet.locator('svg[role=group]').first().textContent()).toContain('drives ASTERN');
    await workbench.screenshot('desktop-3-sheet');
  });

  it('puts the hand right by one click, and the disk has it once saved', async () => {
    await workbench.placeCursor(spec, before + wrong, { at: before.length + 1 });
    await workbench.quickFix(handRoute(right));
    await until(
      'the edit',
      () => workbench.text(spec),
      text => text !== mistaken,
    );
    expect(onDisk()).toBe(mistaken);
    await workbench.page.keyboard.press('Control+s');
    await until('the saved text', onDisk, text => text !== mistaken);
    expect(onDisk()).toBe(asWritten);
  });

  it('leaves no finding behind, in the text or on the sheet', async () => {
    await until('the finding to go', findings, each => each.length === 0);
    await workbench.waitForSquiggles(severities => !severities.includes('error'));
    const counts = workbench.webview().locator('.counts');
    await until(
      'the sheet',
      () => counts.textContent(),
      text => text !== null && !/failing/.test(text),
    );
    await workbench.screenshot('desktop-4-put-right');
  });

  it('goes on when the language server dies', async () => {
    const first = await languageServer();
    process.kill(first.pid, 'SIGKILL');
    const second = await until('a new server', languageServers, all =>
      all.some(one => one.pid !== first.pid),
    );
    expect(second).toHaveLength(1);
    await workbench.placeCursor(spec, before + right, { at: before.length, select: true });
    await workbench.typeText(wrong);
    await until('the finding', findings, each => each.length > 0);
  });

  it('copies the lines as a picture', async () => {
    await grantClipboard(workbench.page);
    await pickWay(workbench, 'Copy as PNG');
    await workbench.page.locator('.statusbar-item', { hasText: 'Copied.' }).waitFor();
    const { types, picture } = await readClipboard(workbench.page);
    expect(types).toEqual(['image/png']);
    expect(picture!.width).toBeGreaterThan(1000);
    expect(picture!.colours).toBeGreaterThan(20);
  });

  it('brings the sheet back as it was left when the window is loaded anew', async () => {
    await chooseOnSheet(workbench.webview());
    const [before, after] = await reloaded(workbench, 'Ternhaven');
    expect(after).toEqual(before);
    expect(before).toMatchObject({ line: 'Starboard', point: 'idle', astern: true });
    await workbench.screenshot('desktop-5-reloaded');
  });

  it('prints no error in the console, and asks nobody else for anything', () => {
    expect(errorsButOfLeaving(workbench.consoleErrors)).toEqual([]);
    expect([...workbench.otherHosts]).toEqual([]);
  });

  async function findings() {
    return (await workbench.diagnostics(spec)).filter(each => each.code === rule);
  }

  function onDisk(): string {
    return readFileSync(join(workbench.folder, spec), 'utf8');
  }

  function languageServers() {
    return workbench.processes().filter(one => one.words.some(isServerBundle));
  }

  async function languageServer() {
    const all = await until('the language server', languageServers, found => found.length > 0);
    expect(all).toHaveLength(1);
    return all[0]!;
  }
});

function isServerBundle(word: string): boolean {
  return /tailshaft-drivetrain-[^/]+\/dist\/server-node\.js$/.test(word);
}
