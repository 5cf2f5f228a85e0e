import type { Block } from '../document/blocks.js';
import type { SheetInput } from '../input.js';
import { CAUTION_LINE } from '../sections/cautions.js';
import { Sheet } from '../sheet.js';
import { comparisonBlocks } from './comparison.js';
import { fullBlocks } from './full.js';
import { type Paper, runningHead } from './paper.js';
import { propellerOrderBlocks } from './propeller-order.js';
import { shaftLineBlocks } from './shaft-line.js';
import { specificationBlocks } from './specification.js';
import { standingWords } from './stands.js';
import { summaryBlocks } from './summary.js';
import { titleBlock } from './title-block.js';
import { trialFormBlocks } from './trial-form.js';
import { weightsBlocks } from './weights.js';
import type { PaperWord } from './words.js';

interface Kind {
  readonly title: string;
  readonly reader: string;
  readonly blocks: (sheet: Sheet) => Block[];
}

/** Every paper, whom it is for, and what it is made of. */
export const PAPERS: Readonly<Record<PaperWord, Kind>> = {
  summary: { title: 'Summary', reader: 'the owner', blocks: summaryBlocks },
  specification: { title: 'Drivetrain specification', reader: 'the yard', blocks: specificationBlocks },
  'propeller-order': {
    title: 'Propeller order',
    reader: 'the propeller maker',
    blocks: propellerOrderBlocks,
  },
  'shaft-line': {
    title: 'Shaft line submittal',
    reader: 'class, flag and surveyor',
    blocks: shaftLineBlocks,
  },
  weights: { title: 'Weight and moments', reader: 'the stability reviewer', blocks: weightsBlocks },
  'trial-form': { title: 'Trial form', reader: 'the trial crew', blocks: trialFormBlocks },
  comparison: { title: 'Comparison of arrangements', reader: 'the reviewer', blocks: comparisonBlocks },
  full: { title: 'Drivetrain sheet', reader: 'the file', blocks: fullBlocks },
};

/** A paper of a vessel, with its title block first and what fails behind it. */
export function makePaper(input: SheetInput, word: PaperWord): Paper {
  const { title, reader, blocks } = PAPERS[word];
  // A paper leads nowhere: no part of a drawing is to be followed.
  const { placeKey: _, ...still } = input;
  const sheet = new Sheet(still, { forPaper: true });
  return {
    word,
    title,
    reader,
    vessel: input.vessel.title ?? input.vessel.name,
    running: runningHead(input),
    dated: input.today,
    standing: standingWords(sheet),
    caution: CAUTION_LINE,
    blocks: [titleBlock(input, `${title}, for ${reader}`), ...blocks(sheet)],
  };
}
