import { basename } from 'node:path';
import { behindText, failuresOf, type JudgedVessel, type Place } from '@tailshaft/language';
import {
  makePaper,
  type PAPER_WORDS,
  paperHtml,
  paperMarkdown,
  type SheetInput,
  vesselSheetHtml,
  vesselSheetMarkdown,
} from '@tailshaft/sheet';
import { judgedOf } from '../specs/spec-set.js';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import { digestOf } from './digest.js';
import { pdfFile } from './pdf-file.js';

export const FORMATS = ['html', 'pdf', 'markdown'] as const;
export type Format = (typeof FORMATS)[number];
export type PaperWord = (typeof PAPER_WORDS)[number];

/** A paper of one vessel as it is written to a file; without a word the sheet for the screen. */
export async function contentOf(
  input: SheetInput,
  word: PaperWord | undefined,
  format: Format,
  open: boolean,
): Promise<string | Uint8Array> {
  if (format === 'pdf') return pdfFile(makePaper(input, word ?? 'full'));
  if (word === undefined)
    return format === 'markdown' ? vesselSheetMarkdown(input) : vesselSheetHtml(input, { open });
  const paper = makePaper(input, word);
  return format === 'markdown' ? paperMarkdown(paper) : paperHtml(paper);
}

/** What a sheet and every paper of a vessel is made from. */
export function sheetInput(specs: Specs, spec: CheckedSpec, chosen: JudgedVessel, today: string): SheetInput {
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
