export * from './ambiguous.js';
export * from './convert.js';
export * from './find.js';
export * from './format.js';
export * from './natural.js';
export * from './preferred.js';
export { editDistance, suggestUnit } from './suggest.js';
export { asciiSpelling, typographic } from './typographic.js';
export { describeUnit, measures, type Unit, type UnitSystem } from './unit.js';
