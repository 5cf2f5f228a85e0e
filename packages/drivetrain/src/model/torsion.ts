export type { Excitation, RollingThrustBearing } from '@tailshaft/vocabulary';
