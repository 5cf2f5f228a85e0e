export type { StudyReading } from '../reading/vessel.js';
export { MOST_CANDIDATES, type ReadyStudy, readyStudy } from './case.js';
