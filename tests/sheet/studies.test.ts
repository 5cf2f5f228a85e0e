import { searched } from '@tailshaft/drivetrain';
import { studiesPanel, vesselSheetHtml, vesselSheetMarkdown } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { exampleWithStudy, studied } from '../support/study.js';
import { sheetOfExample } from './sheet-of.js';

const resultOf = async (study: string) => {
  const { studies } = await studied(exampleWithStudy('pilot-cutter/ternhaven.shaft', study));
  return studies.map(one => searched(one));
};

const WHEEL = `study wheel of proposed {
    vary gear any
    vary propeller pitch 33 in, 34 in, 35 in
    rank by least margin
    rank by speed at full power
  }`;

describe('a study in the panel', () => {
  it('shows the counts, the binding rule first, the chart, and a candidate to press', async () => {
    const [result] = await resultOf(WHEEL);
    const html = studiesPanel([result!]);
    expect(html).toContain('15 candidates judged: 3 hold, 0 cannot tell, 12 fail.');
    expect(html).toContain('least margin over speed at full power');
    const binding = result!.binding[0]!.rule;
    expect(html).toMatch(new RegExp(`<th scope="row"[^>]*><strong>${binding}</strong></th>`));
    const acts = [...html.matchAll(/data-act="([^"]*)"/g)].map(
      one => JSON.parse(one[1]!.replaceAll('&quot;', '"')) as { options: string[] },
    );
    expect(acts).toHaveLength(3);
    expect(acts[0]).toEqual({
      study: 'wheel',
      arrangement: 'proposed',
      options: result!.dimensions.map((one, at) => one.options[result!.holds[0]!.choice[at]!]),
    });
  });

  it('draws the best margin over what varies, where nothing else ranks', async () => {
    const [result] = await resultOf(WHEEL.replace('    rank by speed at full power\n', ''));
    expect(studiesPanel([result!])).toContain('least margin over propeller pitch');
  });

  it('shows apart what the study comes to without what every candidate fails', async () => {
    const [result] = await resultOf(WHEEL);
    const html = studiesPanel([
      { ...result!, holds: [], unknown: [], without: { ...result!, setAside: ['shafting/overhang'] } },
    ]);
    expect(html.indexOf('No candidate holds.')).toBeGreaterThan(0);
    expect(html.indexOf('Without shafting/overhang, which every candidate fails:')).toBeGreaterThan(
      html.indexOf('No candidate holds.'),
    );
    expect(html).toContain('best candidates without shafting/overhang');
    expect(html.match(/data-act/g)).toHaveLength(result!.holds.length);
  });

  it('says that no candidate holds, and draws nothing then', async () => {
    const [result] = await resultOf(`study wheel of proposed { vary propeller pitch 60 in, 61 in }`);
    const html = studiesPanel([result!]);
    expect(html).toContain('No candidate holds.');
    expect(html).not.toContain('<svg');
  });

  it('concludes nothing on what a stopped search did not come to, and counts as elsewhere', async () => {
    const [result] = await resultOf(`study wheel of proposed { vary propeller pitch 60 in, 61 in }`);
    const stopped = { ...result!, judged: 3200, failed: 3200, stoppedAt: 3200, combinations: 6300 };
    const html = studiesPanel([stopped]);
    expect(html).toContain('Stopped after 3,200 of 6,300 combinations: 3,200 candidates judged: 0 hold');
    expect(html).toContain('3,200 fail');
    expect(html).toContain('None of those judged holds.');
    expect(html).not.toContain('No candidate holds.');
  });
});

it('stands in the sheet where it was searched, without anything to press', async () => {
  const studies = await resultOf(WHEEL);
  const input = { ...(await sheetOfExample('pilot-cutter/ternhaven.shaft')), studies };
  expect(vesselSheetHtml(input)).toContain('Study wheel of proposed');
  expect(vesselSheetHtml(input)).not.toContain('data-act');
  expect(vesselSheetMarkdown(input)).toContain('Alder-63 2.04:1');
  expect(vesselSheetHtml({ ...input, studies: [] })).not.toContain('Study wheel');
});
