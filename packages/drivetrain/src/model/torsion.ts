export type {
  CollarThrustBearing,
  CouplingTorsion,
  EngineTorsion,
  Excitation,
  PropellerTorsion,
  RollingThrustBearing,
  ShaftTorsion,
} from '@tailshaft/vocabulary';
