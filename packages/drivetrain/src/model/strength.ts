export type { BoltedFlange, ShaftKey, ShaftSection } from '@tailshaft/vocabulary';
