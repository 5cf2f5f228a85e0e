import { meshFactor, type Sense } from '@tailshaft/mechanics';
import type { Train } from '../model/gear.js';

/** Output against input seen from aft, from the tooth counts; undefined where they do not settle it. */
export function senseOfTrain(train: Train): Sense | undefined {
  const meshes = train.meshes.map(one => one.value);
  if (meshes.length === 0 || meshes.includes(undefined)) return undefined;
  const external = meshes.filter(one => one?.kind === 'external').length;
  const factor = meshFactor(external, meshes.length - external);
  return factor.known ? factor.value : undefined;
}
