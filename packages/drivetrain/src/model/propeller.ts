export {
  BLADE_AREA_METHODS,
  type BladeAreaMethod,
  type NozzleSection,
  type PropellerCriteria,
  type PropellerMake,
  type PropellerMetal,
  type PropellerPlace,
} from '@tailshaft/vocabulary';
