export type { PanelChoice, PanelChoices } from './choice.js';
export { type Panel, sheetPanel } from './panel.js';
export { chartsFile, type Picture, picturesFile } from './picture-file.js';
export { studiesPanel } from './studies.js';
