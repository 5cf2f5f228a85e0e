import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type DesktopWorkbench, startDesktop } from './desktop-harness.js';
import { exampleFiles, exampleSpec, packedVsix, withWrongHand } from './subject.js';
import { until } from './until.js';

const spec = exampleSpec;
const kept = /^catalogue\/|ternhaven/;
const files = Object.fromEntries(Object.entries(exampleFiles()).filter(([path]) => kept.test(path)));
const { text: mistaken, place, wrong, right } = withWrongHand(files[spec]!);
const around = mistaken.slice(place - 120, place);

describe('tools for chat and agents', () => {
  let workbench: DesktopWorkbench;
  beforeAll(async () => {
    workbench = await startDesktop({
      vsix: process.env.TAILSHAFT_EXTENSION ?? packedVsix(),
      files: { ...files, [spec]: mistaken },
      committed: true,
    });
    await workbench.openFile(spec);
    await workbench.page.locator('.statusbar-item', { hasText: 'failing' }).waitFor();
  }, 300_000);
  afterAll(() => workbench?.close());

  /** Calls a tool and answers its question, which is returned with what it told. */
  async function call(name: string, input: object): Promise<{ asked: string; told: string }> {
    const running = workbench.run('test.tool', name, input) as Promise<string>;
    let asked = '';
    let over = false;
    const done = () => {
      over = true;
    };
    running.then(done, done);
    const dialog = workbench.page.locator('.monaco-dialog-box');
    while (!over && asked === '') {
      if ((await dialog.count()) > 0) {
        asked = (await dialog.textContent()) ?? '';
        await workbench.screenshot(`tool-${name}`);
        await dialog.locator('.monaco-button', { hasText: 'Yes' }).click();
      }
      await new Promise(resolve => setTimeout(resolve, 100));
    }
    return { asked, told: await running };
  }

  it('are four', async () => {
    const names = (await until(
      'the tools',
      () => workbench.run('test.tools'),
      found => (found as string[]).length > 0,
    )) as string[];
    expect(names.sort()).toEqual([
      'tailshaft_check',
      'tailshaft_compare_revisions',
      'tailshaft_explain_rule',
      'tailshaft_list_open_questions',
    ]);
  });

  it('ask before they judge, and tell verdicts and caution', async () => {
    const { asked, told } = await call('tailshaft_check', { path: spec });
    expect(asked).toMatch(/Check a drivetrain spec\?[\s\S]*ternhaven\.shaft[\s\S]*Nothing is edited/);
    expect(told).toMatch(/Ternhaven: \d+ hold, 1 fails/);
    expect(told).toMatch(/error rotation\/propeller-hand, line \d+: /);
    expect(told).toMatch(/not a certificate/);
    expect((await call('tailshaft_check', {})).told).toContain('rotation/propeller-hand');
  });

  it('judge a text that stands nowhere', async () => {
    const { told } = await call('tailshaft_check', { text: files[spec]!, path: spec });
    expect(told).not.toContain('rotation/propeller-hand');
  });

  it('list what is open, explain a rule, and read nothing outside the folder', async () => {
    const bare = 'vessel Bare { arrangement one { shaftline Port { engine { } } } }';
    expect((await call('tailshaft_check', { text: bare })).told).toMatch(/text\/|Open questions/);
    expect((await call('tailshaft_list_open_questions', { path: spec })).told).toMatch(/[Oo]pen question/);
    expect((await call('tailshaft_explain_rule', { rule: 'rotation/propeller-hand' })).told).toMatch(
      /Limits/,
    );
    await expect(call('tailshaft_check', { path: '../../etc/passwd.shaft' })).rejects.toThrow(/open folder/);
  });

  it('compare a revision with the present state', async () => {
    await workbench.placeCursor(spec, around + wrong, { at: around.length, select: true });
    await workbench.typeText(right);
    await until(
      'the mended text',
      () => workbench.text(spec),
      text => text !== mistaken,
    );
    const { told } = await call('tailshaft_compare_revisions', { before: 'HEAD', path: spec });
    expect(told).toContain('rotation/propeller-hand');
    expect(told).toMatch(/not a certificate/);
    expect((await call('tailshaft_compare_revisions', { before: 'nothing', path: spec })).told).toMatch(
      /does not exist/,
    );
  });
});
