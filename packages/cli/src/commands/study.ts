import { resolve } from 'node:path';
import { numbered } from '@tailshaft/drivetrain';
import { applyEdits, type JudgedVessel, type ReadyStudy, textEditsForSpelled } from '@tailshaft/language';
import { statement } from '@tailshaft/vocabulary';
import { CannotRun } from '../cannot-run.js';
import { ACCEPTANCES, type Command, dayOf, type Given, policyOf, ROOT, TODAY, textOf } from '../command.js';
import { searchedBy } from '../report/search-study.js';
import { studiesCsv } from '../report/study-csv.js';
import { studiesJson } from '../report/study-json.js';
import { studyText } from '../report/study-text.js';
import type { SearchedStudy } from '../report/study-words.js';
import { byteOrderMark, readBytes } from '../specs/read-text.js';
import { type CheckedSpec, Specs } from '../specs/specs.js';
import { writeWhole } from '../specs/write-file.js';
import type { Io } from '../terminal/io.js';
import { jsonText } from '../terminal/visible.js';

export const study: Command = {
  usage: ['tailshaft study <file> [name] [options]', 'tailshaft study <file> [name] --write <number>'],
  about:
    'Searches the studies of a spec: judges every candidate by every check, and lists the best, what limits each, and which ' +
    'checks rule the others out. Candidates that cannot tell are listed apart, never above those that hold.',
  options: [
    {
      name: 'show',
      takes: '<count>',
      means: 'How many of the best to list, instead of the number in the study.',
    },
    { name: 'json', means: 'Print JSON, as schema/study.schema.json describes it.' },
    { name: 'csv', means: 'Print every candidate that does not fail as comma-separated values.' },
    {
      name: 'write',
      takes: '<number>',
      means:
        'Write the candidate of that number into the arrangement of the study, instead of printing the list.',
    },
    TODAY,
    ROOT,
    ...ACCEPTANCES,
  ],
  notes: [
    'Status: 0 each study has a candidate that holds, 1 none does, 2 something could not be read, searched or written.',
    'Large studies are searched in several threads; the result is the same.',
    'On a terminal, progress goes to standard error. Ctrl-C ends the search and prints what was found so far, and how far it ' +
      'came; a second Ctrl-C ends the program.',
  ],
  run,
};

async function run(io: Io, given: Given, words: readonly string[]): Promise<number> {
  const [path, name, ...more] = words;
  if (path === undefined || more.length > 0)
    throw new CannotRun('study takes one file, and the name of a study. See: tailshaft study --help');
  if (given.json && given.csv)
    throw new CannotRun('--json and --csv are two forms of one answer: choose one');
  const show = countOf(given, 'show');
  const write = countOf(given, 'write');
  const root = textOf(given, 'root');
  const policy = policyOf(given);
  const read = {
    cwd: io.cwd,
    today: dayOf(given),
    ...(policy ? { policy } : {}),
    ...(root === undefined ? {} : { root }),
  };
  const specs = new Specs(read);
  const spec = await specs.check(resolve(io.cwd, path));
  const chosen = chosenStudies(specs, spec, name);
  if (write !== undefined && chosen.length > 1)
    throw new CannotRun(`${spec.shown} holds several studies: name the one that --write is about`);
  const searchedStudies: SearchedStudy[] = [];
  for (const { vessel, ready, at } of chosen)
    searchedStudies.push(await searchedBy(io, vessel.vessel.name, ready, { ...read, path, ...at }));
  if (write !== undefined)
    return writeCandidate(io, specs, spec, chosen[0]!.ready, searchedStudies[0]!, write);
  if (given.json) io.out(jsonText(studiesJson(searchedStudies, show)));
  else if (given.csv) io.print(studiesCsv(searchedStudies));
  else io.out(searchedStudies.map(one => studyText(io, one, show)).join('\n\n'));
  return searchedStudies.every(one => one.result.holds.length > 0) ? 0 : 1;
}

interface ChosenStudy {
  readonly vessel: JudgedVessel;
  readonly ready: ReadyStudy;
  /** Which vessel of the file, and which of its studies. */
  readonly at: { readonly vessel: number; readonly study: number };
}

function chosenStudies(specs: Specs, spec: CheckedSpec, name: string | undefined): readonly ChosenStudy[] {
  const all = spec.check.vessels.flatMap((vessel, nr) =>
    vessel.reading.studies.map((one, study) => ({ vessel, one, at: { vessel: nr, study } })),
  );
  if (all.length === 0)
    throw new CannotRun(
      `${spec.shown} holds no study: write one in the vessel, such as ${statement('study', 'vessel')!.example}`,
    );
  const found = name === undefined ? all : all.filter(({ one }) => one.name === name);
  if (found.length === 0) {
    const names = all.map(({ one }) => one.name).join(', ');
    throw new CannotRun(
      `${spec.shown} holds no study called ${name}: there ${all.length === 1 ? 'is' : 'are'} ${names}`,
    );
  }
  return found.map(({ vessel, one, at }) => {
    const ready = specs.studyOf(spec, vessel, one);
    if (ready) return { vessel, ready, at };
    const why = spec.findings.find(
      ({ place }) =>
        place.uri === one.place.uri && place.start >= one.place.start && place.end <= one.place.end,
    );
    throw new CannotRun(
      `study ${one.name} of ${spec.shown} cannot be searched: ${why?.message ?? 'it varies nothing that is there'}`,
    );
  });
}

async function writeCandidate(
  io: Io,
  specs: Specs,
  spec: CheckedSpec,
  ready: ReadyStudy,
  { result }: SearchedStudy,
  wanted: number,
): Promise<number> {
  const all = numbered(result.without ?? result);
  const candidate = all[wanted - 1];
  if (!candidate)
    throw new CannotRun(
      all.length === 0
        ? 'no candidate holds, so none is written'
        : `there is no candidate ${wanted}: they go from 1 to ${all.length}`,
    );
  const textOf = (uri: string) => specs.textOf(uri);
  const edits = textEditsForSpelled(ready.editsFor(candidate.choice), textOf);
  const own = edits.filter(one => one.uri === specs.uriOf(spec));
  if (edits.length === 0 || own.length < edits.length)
    throw new CannotRun(`candidate ${wanted} cannot be written into ${spec.shown}`);
  const bytes = await readBytes(spec.path, spec.shown);
  await writeWhole(spec.path, byteOrderMark(bytes) + applyEdits(textOf(specs.uriOf(spec)), own), spec.shown);
  const words = ready.dimensions.map((one, at) => `${one.words} ${one.options[candidate.choice[at]!]}`);
  io.complain(`wrote candidate ${wanted} into ${ready.arrangement} of ${spec.shown}: ${words.join(', ')}`);
  return 0;
}

function countOf(given: Given, name: string): number | undefined {
  const text = textOf(given, name);
  if (text === undefined) return undefined;
  const value = Number(text);
  if (!Number.isInteger(value) || value < 1)
    throw new CannotRun(`--${name} is a whole number from 1, not "${text}"`);
  return value;
}
