export type { BoltedFlange, ShaftKey, ShaftSection, StrengthCriteria } from '@tailshaft/vocabulary';
