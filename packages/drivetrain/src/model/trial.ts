export type { DockStep, Drill, Trial, TrialPoint, TrialRun } from '@tailshaft/vocabulary';
