export { BLADE_AREA_METHODS, type BladeAreaMethod, type PropellerMetal } from '@tailshaft/vocabulary';
