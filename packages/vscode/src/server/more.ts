/*
 * What takes pictures, comparisons and texts to answer: seldom asked for, and a tenth of the server, so it stands in a file
 * of its own, which is read when somebody asks.
 */
export { catalogues } from './catalogues.js';
export { coloured } from './coloured.js';
export { compareAnswer, marksAnswer, wantedAnswer } from './compare.js';
export { reportAnswer, reportOfText } from './report.js';
export { sheetAnswer, sheetFileAnswer } from './sheet.js';
export { candidateAnswer, studiesAnswer } from './studies.js';
