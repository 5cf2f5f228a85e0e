export type {
  Bearing,
  Coupling,
  CouplingFacts,
  Propeller,
  PropellerFacts,
  Shaft,
  ShaftFacts,
  ShaftMaterial,
  ShaftMetal,
  WaterSupply,
} from '@tailshaft/vocabulary';
