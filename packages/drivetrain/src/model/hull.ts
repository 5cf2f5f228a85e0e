export {
  type HullForm,
  type HullMaterial,
  SPEED_METHODS,
  type SpeedMethod,
} from '@tailshaft/vocabulary';
