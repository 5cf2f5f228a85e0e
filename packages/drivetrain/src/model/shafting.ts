export type {
  Bearing,
  Coupling,
  CouplingFacts,
  Propeller,
  PropellerFacts,
  SealKind,
  Shaft,
  ShaftFacts,
  ShaftMaterial,
  ShaftMetal,
  WaterSupply,
} from '@tailshaft/vocabulary';
