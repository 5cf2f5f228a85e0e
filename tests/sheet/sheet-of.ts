import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { LineAnalysis, type ShaftLine } from '@tailshaft/drivetrain';
import { behindText, failuresOf, findingsOf, placeOf } from '@tailshaft/language';
import type { SheetInput } from '@tailshaft/sheet';
import { type Checked, checkFile, checkText, TODAY } from '../support/check.js';

const EXAMPLES = join(import.meta.dirname, '..', '..', 'examples');

const sheets = new Map<string, Promise<SheetInput>>();

/** The sheet input of the first vessel of an example, which is judged once for all that is asked of it. */
export function sheetOfExample(path: string): Promise<SheetInput> {
  const had = sheets.get(path) ?? checkFile(join(EXAMPLES, path)).then(sheetInput);
  sheets.set(path, had);
  return had;
}

export function readExample(path: string): string {
  return readFileSync(join(EXAMPLES, path), 'utf8');
}

export async function sheetOfText(text: string): Promise<SheetInput> {
  return sheetInput(await checkText(text));
}

export function sheetInput({ check, uri, text }: Checked): SheetInput {
  const { vessel, verdicts } = check.vessels[0]!;
  const texts = new Map([[uri, text]]);
  const textOf = (file: string) => {
    const had = texts.get(file);
    if (had !== undefined) return had;
    const read = readFileSync(fileURLToPath(file), 'utf8');
    texts.set(file, read);
    return read;
  };
  const where = (file: string, offset: number) =>
    `${basename(file)}:${textOf(file).slice(0, offset).split('\n').length}`;
  const analyses = new Map<ShaftLine, LineAnalysis>();
  const ofEntries = check.entries.flatMap(one => one.verdicts);
  return {
    vessel,
    verdicts: [...verdicts, ...ofEntries],
    entryVerdicts: ofEntries,
    failures: failuresOf(findingsOf(check), check.vessels[0]!),
    analysisOf: line => {
      const had = analyses.get(line) ?? new LineAnalysis(line, vessel);
      analyses.set(line, had);
      return had;
    },
    today: TODAY,
    problems: check.problems.map(one => ({ message: one.message, where: where(uri, one.start) })),
    behindText: behindText(check),
    placeText: origin => where(placeOf(origin).uri, placeOf(origin).start),
  };
}
