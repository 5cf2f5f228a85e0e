export { type CarriedShare, carriedShares, torqueOfShare } from './carried-torque.js';
export * from './simple-sets.js';
export { type GearMesh, type GearTrain, membersOf, type TrainMotion, trainMotion } from './train.js';
export { type TrainRatio, type TrainTorques, trainRatio, trainTorques, WILLIS } from './train-ratio.js';
