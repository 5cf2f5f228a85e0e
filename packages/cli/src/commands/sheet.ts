import { realpath, stat } from 'node:fs/promises';
import { basename, extname, resolve } from 'node:path';
import { type StudyResult, withLoadLines } from '@tailshaft/drivetrain';
import { behindText, EXTENSION, failuresOf, type JudgedVessel, type Place } from '@tailshaft/language';
import {
  makePaper,
  PAPER_WORDS,
  paperHtml,
  paperMarkdown,
  type SheetInput,
  vesselSheetHtml,
  vesselSheetMarkdown,
} from '@tailshaft/sheet';
import { CannotRun } from '../cannot-run.js';
import {
  ACCEPTANCES,
  type Command,
  dayOf,
  type Given,
  oneOf,
  policyOf,
  ROOT,
  TODAY,
  textOf,
} from '../command.js';
import { marginsCsv, partsCsv } from '../papers/csv.js';
import { digestOf } from '../papers/digest.js';
import { pdfFile } from '../papers/pdf-file.js';
import { schematicFile } from '../papers/schematic-file.js';
import { searchedBy } from '../report/search-study.js';
import { shownPath } from '../specs/find.js';
import { decodeSpec } from '../specs/read-text.js';
import { judgedOf } from '../specs/spec-set.js';
import { type CheckedSpec, Specs } from '../specs/specs.js';
import { writeWhole } from '../specs/write-file.js';
import type { Io } from '../terminal/io.js';

const FORMATS = ['html', 'pdf', 'markdown'] as const;
type Format = (typeof FORMATS)[number];

/** What stands beside a paper, each in a file of its own. */
const BESIDE: readonly { name: string; means: string; make: (input: SheetInput, path: string) => string }[] =
  [
    {
      name: 'schematic',
      means: 'Write the lines seen from aft and from above to this .svg or .dxf file.',
      make: schematicFile,
    },
    { name: 'parts', means: 'Write every declared fact of every part to this CSV file.', make: partsCsv },
    { name: 'margins', means: 'Write every margin to this CSV file, the least first.', make: marginsCsv },
  ];

export const sheet: Command = {
  usage: [
    'tailshaft sheet <file> [--paper <paper>] [-o <file>] [--vessel <name>]',
    'tailshaft sheet - [--stdin-name <path>] [options]',
  ],
  about:
    'Writes the drivetrain sheet of a vessel, or the chosen paper, as one self-contained printable HTML ' +
    'page, as a PDF or as Markdown. Printed to standard output unless --out names a file. Every paper begins with what fails.',
  options: [
    {
      name: 'paper',
      takes: '<paper>',
      words: PAPER_WORDS,
      means:
        'summary (owner), specification (yard), propeller-order (propeller maker), shaft-line (class, flag, surveyor), ' +
        'weights (stability reviewer), trial-form (trial crew), comparison (reviewer) or full (the file). ' +
        'Without it: the sheet with all that can be opened, for the screen.',
    },
    { name: 'out', short: 'o', takes: '<file>', means: 'File to write. The folder must exist.' },
    {
      name: 'format',
      takes: '<format>',
      words: FORMATS,
      means: 'What to write. Without it as the name of --out ends: .pdf, .md or .html.',
    },
    { name: 'vessel', takes: '<name>', means: 'Which vessel, where the file holds several.' },
    ...BESIDE.map(({ name, means }) => ({ name, takes: '<file>', means })),
    {
      name: 'studies',
      means: 'Search the studies of the vessel, and show what came out in the sheet and the full paper.',
    },
    { name: 'markdown', means: 'The same as --format markdown.' },
    { name: 'stdin-name', takes: '<path>', means: 'The path that the spec on standard input belongs to.' },
    { name: 'open', means: 'Open all workings of the HTML sheet.' },
    TODAY,
    ROOT,
    ...ACCEPTANCES,
  ],
  notes: [
    'Status: 0 written, whatever the checks say; 2 something could not be read or written.',
    'A PDF is always a paper: the full one unless --paper says otherwise.',
  ],
  run,
};

async function run(io: Io, given: Given, words: readonly string[]): Promise<number> {
  const [path, ...more] = words;
  if (path === undefined || more.length > 0)
    throw new CannotRun('sheet takes one file. See: tailshaft sheet --help');
  const out = textOf(given, 'out');
  const format = formatOf(given, out);
  if (format === 'pdf' && out === undefined && io.screen)
    throw new CannotRun('a PDF is not for the screen: name a file with --out');
  // Asked for before anything is read, so that a slip is told at once.
  const paper = textOf(given, 'paper') === undefined ? undefined : oneOf(given, 'paper', PAPER_WORDS, 'full');
  const today = dayOf(given);
  const root = textOf(given, 'root');
  const specs = new Specs({
    cwd: io.cwd,
    today,
    policy: policyOf(given),
    ...(root === undefined ? {} : { root }),
  });
  const spec = await specOf(io, given, path, specs);
  const chosen = chosenVessel(spec, textOf(given, 'vessel'));
  const studies = given.studies ? await searchedStudies(io, specs, spec, chosen) : [];
  const input = { ...sheetInput(specs, spec, chosen, today), studies };
  const beside = BESIDE.flatMap(({ name, make }) => {
    const file = textOf(given, name);
    return file === undefined ? [] : [{ name, file, content: make(input, file) }];
  });
  for (const { name, file, content } of beside) await write(io, specs, spec, name, file, content);
  const asked = ['paper', 'out', 'format', 'markdown'].some(name => given[name] !== undefined);
  if (beside.length > 0 && !asked) return 0;
  const content = await contentOf(input, paper, format, given.open === true);
  if (out !== undefined) await write(io, specs, spec, 'out', out, content);
  else if (typeof content === 'string') io.print(content);
  else io.bytes(content);
  return 0;
}

/** Every study of the vessel that can be searched, to its end. */
async function searchedStudies(
  io: Io,
  specs: Specs,
  spec: CheckedSpec,
  chosen: JudgedVessel,
): Promise<StudyResult[]> {
  const results: StudyResult[] = [];
  for (const reading of chosen.reading.studies) {
    const ready = specs.studyOf(spec, chosen, reading);
    if (ready) results.push(withLoadLines(ready, (await searchedBy(io, chosen.vessel.name, ready)).result));
    else io.complain(`study ${reading.name} cannot be searched as it stands`);
  }
  return results;
}

async function contentOf(
  input: SheetInput,
  word: (typeof PAPER_WORDS)[number] | undefined,
  format: Format,
  open: boolean,
): Promise<string | Uint8Array> {
  if (format === 'pdf') return pdfFile(makePaper(input, word ?? 'full'));
  if (word === undefined)
    return format === 'markdown' ? vesselSheetMarkdown(input) : vesselSheetHtml(input, { open });
  const paper = makePaper(input, word);
  return format === 'markdown' ? paperMarkdown(paper) : paperHtml(paper);
}

const BY_ENDING: Readonly<Record<string, Format>> = {
  '.pdf': 'pdf',
  '.md': 'markdown',
  '.markdown': 'markdown',
};

function formatOf(given: Given, out: string | undefined): Format {
  const usual = BY_ENDING[extname(out ?? '').toLowerCase()] ?? 'html';
  return oneOf(given, 'format', FORMATS, given.markdown ? 'markdown' : usual);
}

async function specOf(io: Io, given: Given, path: string, specs: Specs): Promise<CheckedSpec> {
  if (path !== '-') return specs.check(resolve(io.cwd, path));
  return specs.checkText(
    resolve(io.cwd, textOf(given, 'stdin-name') ?? 'stdin.shaft'),
    decodeSpec(await io.readStdin(), 'standard input'),
  );
}

async function write(
  io: Io,
  specs: Specs,
  spec: CheckedSpec,
  option: string,
  file: string,
  content: string | Uint8Array,
): Promise<void> {
  const full = resolve(io.cwd, file);
  const shown = shownPath(full, io.cwd);
  if (full === spec.path) throw new CannotRun(`--${option} ${shown} is the spec itself`);
  await refuseSpec(full, `--${option} ${shown}`, specs);
  await writeWhole(full, content, shown);
  io.complain(`wrote ${shown}`);
}

/** A sheet is never written over what it was made from, nor over any other spec, under whatever name. */
async function refuseSpec(path: string, shown: string, specs: Specs): Promise<void> {
  const real = await realpath(path).catch(() => path);
  const is = [path, real].some(one => one.toLowerCase().endsWith(EXTENSION));
  if (is) throw new CannotRun(`${shown} has the name of a spec: a sheet is never written over one`);
  const there = await stat(real).catch(() => undefined);
  if (!there) return;
  for (const read of specs.filesRead()) {
    const one = await stat(read).catch(() => undefined);
    if (one?.ino === there.ino && one.dev === there.dev)
      throw new CannotRun(`${shown} is a file that the sheet is made from`);
  }
}

function chosenVessel(spec: CheckedSpec, name: string | undefined): JudgedVessel {
  const { vessels } = spec.check;
  const names = vessels.map(one => one.vessel.name).join(', ');
  if (vessels.length === 0)
    throw new CannotRun(`${spec.shown} holds no vessel, so there is no sheet to write`);
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
    digest: digestOf(specs, spec),
    problems: spec.findings
      .filter(one => one.problem)
      .map(one => ({ message: one.message, where: placeText(one.place) ?? spec.shown })),
    behindText: behindText(spec.check),
    placeText: origin => placeText(origin as Place),
  };
}
