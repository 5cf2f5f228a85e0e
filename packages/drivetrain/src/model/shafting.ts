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
  WaterSupply,
} from '@tailshaft/vocabulary';
