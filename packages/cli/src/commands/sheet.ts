import { realpath, stat } from 'node:fs/promises';
import { basename, resolve } from 'node:path';
import { EXTENSION, failuresOf, type JudgedVessel, type Place } from '@tailshaft/language';
import { type SheetInput, vesselSheetHtml, vesselSheetMarkdown } from '@tailshaft/sheet';
import { CannotRun } from '../cannot-run.js';
import { ACCEPTANCES, type Command, dayOf, type Given, policyOf, ROOT, TODAY, textOf } from '../command.js';
import { shownPath } from '../specs/find.js';
import { decodeSpec } from '../specs/read-text.js';
import { judgedOf } from '../specs/spec-set.js';
import { type CheckedSpec, Specs } from '../specs/specs.js';
import { writeWhole } from '../specs/write-file.js';
import type { Io } from '../terminal/io.js';

export const sheet: Command = {
  usage: [
    'tailshaft sheet <file> [--out <file.html>] [--vessel <name>]',
    'tailshaft sheet - [--stdin-name <path>] [options]',
  ],
  about:
    'Writes the drivetrain sheet of a vessel as one HTML page that needs nothing else: what fails, what was not checked, verdicts and ' +
    'margins, pictures of the lines, parts, workings. Printed to standard output unless --out names a file.',
  options: [
    { name: 'out', takes: '<file>', means: 'File to write. The folder must exist.' },
    { name: 'vessel', takes: '<name>', means: 'Which vessel, where the file holds several.' },
    { name: 'markdown', means: 'Write Markdown instead of HTML.' },
    { name: 'stdin-name', takes: '<path>', means: 'The path that the spec on standard input belongs to.' },
    { name: 'open', means: 'Open all workings, for printing.' },
    TODAY,
    ROOT,
    ...ACCEPTANCES,
  ],
  notes: ['Status: 0 written, whatever the checks say; 2 something could not be read or written.'],
  run,
};

async function run(io: Io, given: Given, words: readonly string[]): Promise<number> {
  const [path, ...more] = words;
  if (path === undefined || more.length > 0)
    throw new CannotRun('sheet takes one file. See: tailshaft sheet --help');
  const today = dayOf(given);
  const root = textOf(given, 'root');
  const specs = new Specs({
    cwd: io.cwd,
    today,
    policy: policyOf(given),
    ...(root === undefined ? {} : { root }),
  });
  const spec =
    path === '-'
      ? await specs.checkText(
          resolve(io.cwd, textOf(given, 'stdin-name') ?? 'stdin.shaft'),
          decodeSpec(await io.readStdin(), 'standard input'),
        )
      : await specs.check(resolve(io.cwd, path));
  const input = sheetInput(specs, spec, chosenVessel(spec, textOf(given, 'vessel')), today);
  const text = given.markdown
    ? vesselSheetMarkdown(input)
    : vesselSheetHtml(input, { open: given.open === true });
  const out = textOf(given, 'out');
  if (out === undefined) {
    io.print(text);
    return 0;
  }
  const full = resolve(io.cwd, out);
  const shown = shownPath(full, io.cwd);
  if (full === spec.path) throw new CannotRun(`--out ${shown} is the spec itself`);
  await refuseSpec(full, shown, specs);
  await writeWhole(full, text, shown);
  io.complain(`wrote ${shown}`);
  return 0;
}

/** A sheet is never written over what it was made from, nor over any other spec, under whatever name. */
async function refuseSpec(path: string, shown: string, specs: Specs): Promise<void> {
  const real = await realpath(path).catch(() => path);
  const is = [path, real].some(one => one.toLowerCase().endsWith(EXTENSION));
  if (is) throw new CannotRun(`--out ${shown} has the name of a spec: a sheet is never written over one`);
  const there = await stat(real).catch(() => undefined);
  if (!there) return;
  for (const read of specs.filesRead()) {
    const one = await stat(read).catch(() => undefined);
    if (one?.ino === there.ino && one.dev === there.dev)
      throw new CannotRun(`--out ${shown} is a file that the sheet is made from`);
  }
}

function chosenVessel(spec: CheckedSpec, name: string | undefined): JudgedVessel {
  const { vessels } = spec.check;
  const names = vessels.map(one => one.vessel.name).join(', ');
  if (vessels.length === 0) throw new CannotRun(`${spec.shown} holds no vessel, and a sheet is of a vessel`);
  const found = name === undefined ? vessels : vessels.filter(one => one.vessel.name === name);
  if (found.length === 0)
    throw new CannotRun(`${spec.shown} holds no vessel called ${name}: there are ${names}`);
  if (found.length > 1)
    throw new CannotRun(`${spec.shown} holds several vessels: choose one of ${names} with --vessel`);
  return found[0]!;
}

function sheetInput(specs: Specs, spec: CheckedSpec, chosen: JudgedVessel, today: string): SheetInput {
  const { vessel, verdicts, analysisOf } = judgedOf(chosen);
  const placeText = (place: Place) => {
    const spot = specs.spot(place);
    return spot && `${basename(spot.shown)}:${spot.line}`;
  };
  const ofEntries = spec.check.entries.flatMap(one => one.verdicts);
  return {
    vessel,
    verdicts: [...verdicts, ...ofEntries],
    entryVerdicts: ofEntries,
    failures: failuresOf(spec.findings, chosen),
    analysisOf,
    today,
    problems: spec.findings
      .filter(one => one.problem)
      .map(one => ({ message: one.message, where: placeText(one.place) ?? spec.shown })),
    placeText: origin => placeText(origin as Place),
  };
}
