export type { StudyReading } from '../reading/vessel.js';
export { type ReadyStudy, readyStudy } from './case.js';
