/*
 * What answers somebody who points at a word, types or opens a menu. No finding needs any of it, so it is read when it is
 * first asked for: a server starts without a tenth of its code.
 */
export { CodeActions } from '../actions/provider.js';
export { TailshaftFormatter } from '../format/provider.js';
export { NameProviders } from '../names/providers.js';
export { CallHierarchy } from './call-hierarchy.js';
export { Completions } from './completion/completion.js';
export { importsAfterRename } from './file-renames.js';
export { propertyHelp } from './help/property-help.js';
export { Hovers } from './hover/hover.js';
export { sourceLinks } from './source-links.js';
export { candidateEdit, studyResults } from './study-answers.js';
export { workingAt } from './working.js';
