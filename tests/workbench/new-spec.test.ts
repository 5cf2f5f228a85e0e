import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startDesktop } from './desktop-harness.js';
import { startWorkbench } from './harness.js';
import { extensionUnderTest, packedVsix } from './subject.js';
import { until } from './until.js';
import type { Workbench } from './workbench.js';

const files = { 'notes.txt': 'Nothing is known yet.\n' };
const hosts: Readonly<Record<string, () => Promise<Workbench>>> = {
  'in a browser': () => startWorkbench({ extensionFolder: extensionUnderTest(), files }),
  'on the extension host of a desktop': () =>
    startDesktop({ vsix: process.env.TAILSHAFT_EXTENSION ?? packedVsix(), files }),
};

/** What a person types at each stop of the skeleton, in their order; an empty one stays as it is. */
const VALUES: readonly string[] = [
  ...['Sandpiper', 'workboat, single screw', 'medium', '900 per year', 'none'],
  ...['displacement', '11.2 m', '14.5 t'],
  ...['Wagtail-4', 'medium', 'aft', 'Plover-20', '2:1', 'A', '', '50 mm'],
  ...['right', '4', '26 in', '20 in', '0.6', ''],
  ...['four-cylinder diesel', '"sheet 4" dated 2025-01-20', 'standard viewed from flywheel', 'diesel', '4'],
  ...['medium', '120 kW at 2300 rpm', 'crankshaft', '', '650 rpm', '2500 rpm', '', 'SAE-3'],
  ...['reduction gear', '"sheet 9" dated 2025-02-10', 'coaxial', 'standard viewed from flywheel'],
  ...['3000 rpm', '', 'SAE-3', '', '2:1', 'A', 'opposite', 'continuous', 'B', 'same', 'never'],
  'medium',
];

describe.each(Object.entries(hosts))('a new spec from an empty folder, %s', (where, start) => {
  let workbench: Workbench;
  let keys = 0;
  beforeAll(async () => {
    workbench = await start();
  }, 300_000);
  afterAll(() => workbench?.close());

  const press = async (key: string) => {
    keys += 1;
    await workbench.page.keyboard.press(key);
  };
  const type = async (text: string) => {
    keys += text.length;
    await workbench.page.keyboard.type(text, { delay: 10 });
  };
  const untitled = async () => {
    const texts = (await workbench.run('test.openTexts')) as {
      address: string;
      language: string;
      text: string;
    }[];
    return texts.find(one => one.address.startsWith('untitled:') && one.language === 'tailshaft')?.text ?? '';
  };

  it('is asked for by keys, and answered by keys', async () => {
    const { page } = workbench;
    const question = page.locator('.quick-input-widget:not([style*="display: none"])');
    await press('F1');
    await question.locator('input').first().waitFor();
    await type('New Drivetrain Spec');
    await question.locator('.monaco-list-row', { hasText: 'New Drivetrain Spec' }).first().waitFor();
    await press('Enter');
    for (const [title, answer] of [
      ['1 of 3', 'Single screw'],
      ['2 of 3', 'New vessel'],
      ['3 of 3', 'In the same file'],
    ] as const) {
      await question.locator('.quick-input-title', { hasText: title }).waitFor();
      await workbench.screenshot(`new-spec-${title[0]}`);
      await type(answer);
      await question.locator('.monaco-list-row', { hasText: answer }).first().waitFor();
      await press('Enter');
    }
    const text = await until('the skeleton', untitled, now => now.includes('gear Gear-proposed'));
    expect(text.match(/\bunknown\b/g)!.length).toBeGreaterThan(35);
    await page.locator('.statusbar-item', { hasText: 'cannot tell' }).waitFor();
    await workbench.screenshot(`new-spec-skeleton-${where.split(' ').at(-1)}`);
  });

  it('is filled in from stop to stop, until the first checks hold', async () => {
    const before = keys;
    let held: number | undefined;
    const item = workbench.page.locator('.statusbar-item', { hasText: 'holding' });
    for (const value of VALUES) {
      await type(value);
      await press('Tab');
      if (
        held === undefined &&
        (await item.count()) > 0 &&
        !/\b[01] holding/.test((await item.textContent()) ?? '')
      )
        held = keys;
    }
    const text = await until('the last value', untitled, now => now.includes('rated medium'));
    await workbench.screenshot(`new-spec-filled-${where.split(' ').at(-1)}`);
    expect(text).toBe(FILLED);
    // A stranger sees something hold before a tenth of a page is typed.
    expect(before).toBeLessThan(80);
    expect(held).toBeLessThan(200);
  });

  it('leaves no error in the console', () => {
    expect(workbench.consoleErrors).toEqual([]);
  });
});

const FILLED = `vessel Sandpiper "workboat, single screw" {
  duty medium { hours 900 per year  passengers none }
  hull displacement { waterline length 11.2 m  displacement 14.5 t }

  arrangement proposed "new vessel" {
    shaftline Centre {
      engine Wagtail-4 at medium { flywheel aft }
      gear Plover-20 ratio 2:1 ahead clutch A
      shaft { material unknown  diameter 50 mm }
      propeller {
        hand right
        blades 4
        diameter 26 in
        pitch 20 in
        area ratio 0.6
        material unknown
      }
    }
  }
}

engine Wagtail-4 "four-cylinder diesel" {
  source "sheet 4" dated 2025-01-20
  rotation standard viewed from flywheel
  fuel diesel
  cylinders 4
  rating medium {
    power 120 kW at 2300 rpm
    measured at crankshaft
    standard unknown
  }
  low idle 650 rpm
  high idle 2500 rpm
  peak torque unknown
  housing SAE-3
}

gear Plover-20 "reduction gear" {
  source "sheet 9" dated 2025-02-10
  layout coaxial
  input rotation standard viewed from flywheel
  input speed at most 3000 rpm
  input speed at least unknown
  input housing SAE-3
  thrust at most unknown
  ratio 2:1 {
    clutch A  output opposite  ahead continuous
    clutch B  output same  ahead never
    rated medium
  }
}
`;
