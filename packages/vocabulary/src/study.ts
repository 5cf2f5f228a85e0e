import { counted, quantity, ranking, row, ruleName, variation, vocabulary } from './kinds.js';

/** What a study may say: what varies, what must hold, what ranks. */
export const STUDY = vocabulary({
  title: 'study',
  rows: [
    row(
      'vary',
      'vary',
      variation,
      'What is varied, and over which values: a part by its name in the catalogue, or a property of a part or of the hull. Values are listed with commas, or given as a range with its step; `any` takes everything that the catalogue offers.',
      'vary propeller diameter 26 in .. 30 in by 0.5 in',
      { many: true },
    ),
    row(
      'hold',
      'hold',
      ruleName,
      'A check that every candidate must pass, besides those whose failure is an error; `every check` means all of them.',
      'hold propeller/cup',
      { many: true },
    ),
    row(
      'rank',
      'rank by',
      ranking,
      'Quantity that ranks the candidates that hold. With several, candidates that no other beats in all of them are marked.',
      'rank by speed at full power',
      { many: true },
    ),
    row('show', 'show', quantity('number'), 'Number of the best candidates to show.', 'show 20', {
      range: counted('1', '1000'),
      absent: 'ten',
    }),
  ],
  blocks: [],
});
