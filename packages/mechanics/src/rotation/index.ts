export * from './chain.js';
export * from './engine-rotation.js';
export * from './labels.js';
export * from './propeller-hand.js';
export {
  type FlywheelFacing,
  oppositeSense,
  otherTurn,
  type Sense,
  senseSeen,
  type Told,
  type Turn,
  turnFromAft,
  type ViewPoint,
} from './sense.js';
export * from './stage.js';
export * from './twin.js';
