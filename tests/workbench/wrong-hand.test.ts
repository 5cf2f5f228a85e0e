import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startWorkbench } from './harness.js';
import { exampleFiles, exampleSpec, extensionUnderTest, handRoute, withWrongHand } from './subject.js';
import { until } from './until.js';
import type { Diagnostic, Workbench } from './workbench.js';

const spec = exampleSpec;
const rule = 'rotation/propeller-hand';

describe('a propeller of the wrong hand', () => {
  const files = exampleFiles();
  const asWritten = files[spec]!;
  const { text: mistaken, place, right, wrong } = withWrongHand(asWritten);
  const before = mistaken.slice(place - 120, place);
  let workbench: Workbench;

  beforeAll(async () => {
    workbench = await startWorkbench({
      extensionFolder: extensionUnderTest(),
      files: { ...files, [spec]: mistaken },
    });
  });
  afterAll(() => workbench?.close());

  it('opens from the Explorer as a drivetrain spec', async () => {
    await workbench.clickInExplorer(spec);
    expect(await workbench.run('test.languageOf', spec)).toBe('tailshaft');
  });

  it('is underlined where the hand is written, and listed among the problems', async () => {
    const found = await until('the finding', findings, each => each.length > 0);
    expect(found.map(each => each.severity)).toContain('error');
    await workbench.placeCursor(spec, before + wrong, { at: before.length });
    await workbench.waitForSquiggles(severities => severities.includes('error'));
    const listed = await workbench.waitForProblems(each => each.some(message => message.includes(rule)));
    expect(listed.join('\n')).toMatch(/hand/i);
    await workbench.screenshot('1-wrong-hand-underlined');
  });

  it('says on hover what is wrong and which hand is needed', async () => {
    const hover = await workbench.hoverAt(spec, before + wrong, { at: before.length + 1 });
    await workbench.screenshot('2-wrong-hand-hover');
    expect(hover).toContain(rule);
    expect(hover).toMatch(new RegExp(right, 'i'));
  });

  it('is put right by one click, and by nothing more than the one word', async () => {
    await workbench.placeCursor(spec, before + wrong, { at: before.length + 1 });
    const offered = await workbench.quickFixes();
    expect(offered.some(title => handRoute(right).test(title))).toBe(true);
    await workbench.quickFix(handRoute(right));
    await until(
      'the edit',
      () => workbench.text(spec),
      text => text !== mistaken,
    );
    expect(await workbench.text(spec)).toBe(asWritten);
  });

  it('leaves no underline behind', async () => {
    await until('the finding to go', findings, each => each.length === 0);
    const left = await workbench.diagnostics(spec);
    expect(left.filter(each => each.severity === 'error')).toEqual([]);
    await workbench.waitForSquiggles(severities => !severities.includes('error'));
    await workbench.waitForProblems(each => !each.some(message => message.includes(rule)));
    await workbench.screenshot('3-hand-put-right');
    expect(workbench.consoleErrors).toEqual([]);
  });

  async function findings(): Promise<readonly Diagnostic[]> {
    return (await workbench.diagnostics(spec)).filter(each => each.code === rule);
  }
});
