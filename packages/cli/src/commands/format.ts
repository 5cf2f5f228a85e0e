import { formatText } from '@tailshaft/language';
import { count } from '@tailshaft/mechanics';
import { CannotRun } from '../cannot-run.js';
import type { Command, Given } from '../command.js';
import { findSpecs, linksTold, shownPath } from '../specs/find.js';
import { byteOrderMark, decodeSpec, readBytes } from '../specs/read-text.js';
import { writeWhole } from '../specs/write-file.js';
import type { Io } from '../terminal/io.js';

export const format: Command = {
  usage: ['tailshaft format [paths...] [--check]', 'tailshaft format --stdin'],
  about:
    'Formats specs: indents, spaces, blank lines. Meaning, comments, order and line ends stay. Without paths: every spec ' +
    'of the current folder. A block that cannot be read is left as it is.',
  options: [
    { name: 'check', means: 'Write nothing; list the files that would change.' },
    { name: 'stdin', means: 'Format standard input and print it; the path - does the same.' },
  ],
  notes: [
    'Status: 0 done, or nothing to do; 1 with --check where a file would change; 2 something could not be read or written.',
  ],
  run,
};

async function run(io: Io, given: Given, words: readonly string[]): Promise<number> {
  // A lone dash is the usual word for standard input.
  const dash = words.length === 1 && words[0] === '-';
  if (given.stdin || dash) return formatStdin(io, given, dash ? [] : words);
  const failures: string[] = [];
  const changed: string[] = [];
  let seen = 0;
  for (const path of await findEach(io, words, failures)) {
    const shown = shownPath(path, io.cwd);
    try {
      const bytes = await readBytes(path, shown);
      const text = decodeSpec(bytes, shown);
      const laidOut = formatText(text);
      if (laidOut !== text) {
        if (!given.check) await writeWhole(path, byteOrderMark(bytes) + laidOut, shown);
        changed.push(shown);
      }
      // One that could not be written is neither laid out nor as it should be.
      seen += 1;
    } catch (error) {
      if (!(error instanceof CannotRun)) throw error;
      failures.push(error.message);
    }
  }
  for (const shown of changed) io.out(shown);
  for (const failure of failures) io.complain(failure);
  const verb = given.check ? 'would change' : 'formatted';
  if (seen > 0)
    io.complain(`${count(changed.length, 'file')} ${verb}, ${seen - changed.length} already formatted`);
  return failures.length > 0 ? 2 : given.check && changed.length > 0 ? 1 : 0;
}

async function formatStdin(io: Io, given: Given, words: readonly string[]): Promise<number> {
  if (words.length > 0) throw new CannotRun('--stdin takes no paths');
  const text = decodeSpec(await io.readStdin(), 'standard input');
  const laidOut = formatText(text);
  if (given.check) return laidOut === text ? 0 : 1;
  io.print(laidOut);
  return 0;
}

/** Every file that the words name; one that is missing does not keep the others from being laid out. */
async function findEach(io: Io, words: readonly string[], failures: string[]): Promise<string[]> {
  const found = new Set<string>();
  const excluded = words.filter(one => one.startsWith('!'));
  const wanted = words.filter(one => !one.startsWith('!'));
  for (const word of wanted.length > 0 ? wanted : ['.']) {
    try {
      const { paths, links } = await findSpecs([word, ...excluded], io.cwd);
      for (const path of paths) found.add(path);
      if (links.length > 0) failures.push(linksTold(links));
    } catch (error) {
      if (!(error instanceof CannotRun)) throw error;
      failures.push(error.message);
    }
  }
  return [...found].sort();
}
