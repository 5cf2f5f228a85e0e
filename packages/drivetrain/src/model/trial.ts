export type { Trial, TrialPoint, TrialRun } from '@tailshaft/vocabulary';
