import { statSync } from 'node:fs';
import { extname, resolve } from 'node:path';
import { type StudyResult, withLoadLines } from '@tailshaft/drivetrain';
import type { JudgedVessel } from '@tailshaft/language';
import { PAPER_WORDS, type SheetInput } from '@tailshaft/sheet';
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
import { everyVessel } from '../papers/every-vessel.js';
import { contentOf, FORMATS, type Format, type PaperWord, sheetInput } from '../papers/one-paper.js';
import { schematicFile } from '../papers/schematic-file.js';
import { writePaper } from '../papers/write-paper.js';
import { searchedBy } from '../report/search-study.js';
import { isPattern } from '../specs/pattern.js';
import { decodeSpec } from '../specs/read-text.js';
import { type CheckedSpec, Specs } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';

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
    'tailshaft sheet <file, folder or pattern>... --out <folder> [--paper <paper>] [--format <format>]',
    'tailshaft sheet - [--stdin-name <path>] [options]',
  ],
  about:
    'Writes the drivetrain sheet of a vessel, or the chosen paper, as one self-contained printable HTML ' +
    'page, as a PDF or as Markdown. Printed to standard output unless --out names a file. For several files, or a folder, it ' +
    'writes one paper for each vessel to the folder that --out names. Every paper begins with what fails.',
  options: [
    {
      name: 'paper',
      takes: '<paper>',
      words: PAPER_WORDS,
      means:
        'summary (owner), specification (yard), propeller-order (propeller maker), shaft-line (class, flag, surveyor), ' +
        'weights (stability reviewer), trial-form (trial crew), comparison (reviewer) or full (the file). ' +
        'Without it: the sheet for the screen, whose parts open and close.',
    },
    {
      name: 'out',
      short: 'o',
      takes: '<file>',
      means: 'File to write, in a folder that exists; for several vessels the folder, which is made.',
    },
    {
      name: 'format',
      takes: '<format>',
      words: FORMATS,
      means: 'What to write. Without it, the ending of --out decides: .pdf, .md or .html.',
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
  const [path] = words;
  if (path === undefined)
    throw new CannotRun('sheet takes a file, or several with a folder. See: tailshaft sheet --help');
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
  if (isMany(io, words, out)) return many(io, given, words, specs, { today, paper, format });
  const spec = await specOf(io, given, path, specs);
  const chosen = chosenVessel(spec, textOf(given, 'vessel'));
  const studies = given.studies ? await searchedStudies(io, specs, spec, chosen) : [];
  const input = { ...sheetInput(specs, spec, chosen, today), studies };
  const beside = BESIDE.flatMap(({ name, make }) => {
    const file = textOf(given, name);
    return file === undefined ? [] : [{ name, file, content: make(input, file) }];
  });
  const write = async (option: string, file: string, content: string | Uint8Array) =>
    io.complain(`wrote ${await writePaper(io.cwd, specs, spec, option, file, content)}`);
  for (const { name, file, content } of beside) await write(name, file, content);
  const asked = ['paper', 'out', 'format', 'markdown'].some(name => given[name] !== undefined);
  if (beside.length > 0 && !asked) return 0;
  const content = await contentOf(input, paper, format, given.open === true);
  if (out !== undefined) await write('out', out, content);
  else if (typeof content === 'string') io.print(content);
  else io.bytes(content);
  return 0;
}

/** Whether the words, or what is written to, speak of more than one vessel. */
function isMany(io: Io, words: readonly string[], out: string | undefined): boolean {
  const isFolder = (word: string) =>
    statSync(resolve(io.cwd, word), { throwIfNoEntry: false })?.isDirectory() === true;
  const isThere = (word: string) => statSync(resolve(io.cwd, word), { throwIfNoEntry: false }) !== undefined;
  const leads = words.length > 1 || words.some(one => isFolder(one) || (isPattern(one) && !isThere(one)));
  return leads || (out !== undefined && (/[/\\]$/.test(out) || isFolder(out)));
}

async function many(
  io: Io,
  given: Given,
  words: readonly string[],
  specs: Specs,
  { today, paper, format }: { today: string; paper: PaperWord | undefined; format: Format },
): Promise<number> {
  const folder = textOf(given, 'out');
  if (folder === undefined)
    throw new CannotRun('several vessels are several papers: name a folder for them with --out');
  const single = BESIDE.find(({ name }) => given[name] !== undefined);
  if (single) throw new CannotRun(`--${single.name} is for one vessel: name its file`);
  if (words.includes('-')) throw new CannotRun('- is one spec: name a file with --out');
  const make = async (spec: CheckedSpec, chosen: JudgedVessel) => {
    const studies = given.studies ? await searchedStudies(io, specs, spec, chosen) : [];
    return contentOf(
      { ...sheetInput(specs, spec, chosen, today), studies },
      paper,
      format,
      given.open === true,
    );
  };
  const ending = `${paper === undefined ? '' : `-${paper}`}.${format === 'markdown' ? 'md' : format}`;
  const wanted = textOf(given, 'vessel');
  return everyVessel(io, specs, words, { folder, ending, make, ...(wanted === undefined ? {} : { wanted }) });
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
