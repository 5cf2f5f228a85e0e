import type { StudyResult } from '@tailshaft/drivetrain';
import { element } from '../document/markup.js';
import { blocksHtml } from '../document/to-html.js';
import { studySection } from '../sections/study.js';

/** The studies of a vessel beside its text; a press on the number of a candidate writes it. */
export function studiesPanel(results: readonly StudyResult[]): string {
  return element(
    'section',
    { class: 'sheet panel studies' },
    blocksHtml(results.map(studySection), { level: 2, acts: true }),
  ).source;
}
