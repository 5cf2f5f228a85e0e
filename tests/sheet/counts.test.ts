import { countsOf } from '@tailshaft/drivetrain';
import { sheetPanel, vesselSheetHtml } from '@tailshaft/sheet';
import { describe, expect, it } from 'vitest';
import { tailshaft } from '../cli/run.js';
import { TODAY } from '../support/check.js';
import { exampleSpecs, examplesFolder } from '../support/examples.js';
import { sheetOfExample } from './sheet-of.js';

interface Judged {
  readonly name: string;
  readonly arrangements: readonly { readonly name: string }[];
  readonly counts: ReturnType<typeof countsOf>;
  readonly verdicts: readonly {
    readonly subject: string;
    readonly outcome: string;
    readonly asFound?: true;
  }[];
}

/** What `check --json` says of the first vessel of an example. */
async function checked(path: string): Promise<Judged> {
  const { stdout } = await tailshaft(`check ${path} --json --today ${TODAY}`, { cwd: examplesFolder });
  return (JSON.parse(stdout) as { files: { vessels: Judged[] }[] }).files[0]!.vessels[0]!;
}

const words = (html: string) => html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');

/** `3 failing`, as the panel says it; nothing said is none. */
const said = (line: string, what: string) =>
  Number(new RegExp(`(\\d+) ${what}(?! in| as)`).exec(line)?.[1] ?? 0);

describe.each(exampleSpecs)('the counts of %s', path => {
  it('are the same in the panel, on the printed sheet and in check --json', async () => {
    const vessel = await checked(path);
    const input = await sheetOfExample(path);
    for (const { name } of vessel.arrangements) {
      const { html } = sheetPanel(input, { arrangement: name });
      const line = words(/<p class="counts"[\s\S]*?<\/p>/.exec(html)![0]);
      const others = vessel.arrangements.map(one => one.name).filter(one => one !== name);
      const shown = vessel.verdicts.filter(
        ({ subject }) => !others.some(one => subject === one || subject.startsWith(`${one}.`)),
      );
      const counts = countsOf(shown as never);
      expect(
        [said(line, 'failing'), said(line, 'cannot tell'), said(line, 'holding'), said(line, 'accepted')],
        `${name}: ${line}`,
      ).toEqual([counts.failed, counts.unknown, counts.held, counts.accepted]);
      expect(Number(/(\d+) failing as found/.exec(line)?.[1] ?? 0)).toBe(counts.asFound);
    }
    const printed = words(vesselSheetHtml(input));
    const [, ...numbers] = /vessel in all, what is as found apart (\d+) (\d+) (\d+) (\d+) (\d+)/.exec(
      printed,
    )!;
    const { failed, asFound, unknown, accepted, held } = vessel.counts;
    expect(numbers.map(Number)).toEqual([failed, asFound, unknown, accepted, held]);
  });
});
