export type {
  Accessory,
  Engine,
  EngineFacts,
  EngineRating,
  Motor,
  MotorFacts,
  Mounts,
} from '@tailshaft/vocabulary';
