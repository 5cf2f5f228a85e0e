export {
  BLADE_AREA_METHODS,
  type BladeAreaMethod,
  type PropellerCriteria,
  type PropellerMake,
  type PropellerMetal,
  type PropellerPlace,
} from '@tailshaft/vocabulary';
