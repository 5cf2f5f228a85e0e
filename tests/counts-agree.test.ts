import { type Counts, countsOf, countWords, missingData, openChecks } from '@tailshaft/drivetrain';
import { behindText } from '@tailshaft/language';
import { vesselSheetHtml } from '@tailshaft/sheet';
import { expect, it } from 'vitest';
import { outlineOf } from '../packages/language/src/server/outline.js';
import { Testbed } from '../packages/language/test/server/testbed.js';
import { reportAnswer } from '../packages/vscode/src/server/report.js';
import { tailshaft } from './cli/run.js';
import { sheetInput } from './sheet/sheet-of.js';
import { writtenSpecs } from './silence/base-specs.js';
import { checkText, TODAY } from './support/check.js';
import { share } from './support/share.js';

const plain = (html: string) => html.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ');

/** `4 checks cannot tell, for 3 missing data`: of each place that says so, without what surrounds it. */
const openIn = (text: string) =>
  /(\d+) checks? cannot tell(?:, for (\d+) missing dat(?:um|a))?/
    .exec(text.replace(/\s+/g, ' '))
    ?.slice(1, 3) ?? [];

/** What every place says of a text with one vessel, as one says it: counts of the vessel, open checks, missing data. */
async function saidOf(text: string) {
  const checked = await checkText(text);
  const [judged] = checked.check.vessels;
  const all = [...checked.check.vessels, ...checked.check.entries].flatMap(one => one.verdicts);
  const open = openChecks(all);
  const behind = behindText(checked.check);
  const data = missingData(open.filter(one => !behind.has(one)));
  const wanted =
    open.length === 0 ? [] : [String(open.length), data.length > 0 ? String(data.length) : undefined];

  const bed = new Testbed();
  bed.services.project.today = () => TODAY;
  const document = await bed.open(text);
  const lenses = (await bed.services.lsp.CodeLensProvider!.provideCodeLens(document, {} as never)) ?? [];
  const hover = await bed.services.lsp.HoverProvider!.getHoverContent(document, {
    textDocument: { uri: document.uri.toString() },
    position: document.textDocument.positionAt((judged!.vessel.nameOrigin as { start: number }).start),
  });
  const report = (await reportAnswer(bed.services, document, { about: 'findings' } as never)).text;
  const [outline] = outlineOf(bed.services, document).vessels;
  const ask = (more: string) =>
    tailshaft(`check --stdin --today ${TODAY} ${more}`, { cwd: '/', input: text }).stdout;
  const printed = ask('');
  const json = JSON.parse(ask('--json')) as {
    files: { vessels: { counts: Counts }[] }[];
    openQuestions: unknown[];
  };
  const sheet = plain(vesselSheetHtml(sheetInput(checked)));
  const standing = /vessel in all, what is as found apart (\d+) (\d+) (\d+) (\d+) (\d+)/
    .exec(sheet)!
    .slice(1)
    .map(Number);
  const counts = countsOf(judged!.verdicts);
  const words = countWords(counts);
  return {
    counts: { counts, words },
    places: {
      'tree and status bar': outline!.counts,
      'check --json': json.files[0]!.vessels[0]!.counts,
      sheet: {
        failed: standing[0],
        asFound: standing[1],
        unknown: standing[2],
        accepted: standing[3],
        held: standing[4],
      },
    },
    lines: {
      lens: lenses[0]?.command?.title.startsWith(words),
      hover: JSON.stringify(hover?.contents).includes(words),
      'tools of the editor': report.includes(`: ${words}.`),
      check: printed.replace(/\s+/g, ' ').includes(words),
    },
    open: {
      check: openIn(/^Open questions: .*$/m.exec(printed)?.[0] ?? ''),
      'tools of the editor': openIn(/^Open questions: .*$/m.exec(report)?.[0] ?? ''),
      sheet: openIn(/\d+ checks? cannot tell[^.]*\. None of them/.exec(sheet)?.[0] ?? ''),
    },
    wanted,
    questions: [json.openQuestions.length, data.length],
  };
}

it('every place that counts checks and missing data counts the same', async () => {
  const specs = share(
    writtenSpecs().filter(one => one.text.match(/^vessel\b/gm)?.length === 1),
    14,
    60,
  );
  let compared = 0;
  for (const { name, text } of specs) {
    const checked = await checkText(text);
    if (checked.check.vessels.length !== 1) continue;
    compared += 1;
    const said = await saidOf(text);
    for (const [place, counts] of Object.entries(said.places))
      expect({ name, place, counts }).toEqual({ name, place, counts: said.counts.counts });
    for (const [place, agrees] of Object.entries(said.lines))
      expect({ name, place, words: said.counts.words, agrees }).toMatchObject({ agrees: true });
    for (const [place, open] of Object.entries(said.open))
      expect({ name, place, open }).toEqual({ name, place, open: said.wanted });
    expect({ name, questions: said.questions[0] }).toEqual({ name, questions: said.questions[1] });
  }
  expect(compared).toBeGreaterThan(10);
}, 300_000);
