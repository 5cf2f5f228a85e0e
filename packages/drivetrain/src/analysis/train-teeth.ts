import type { GearMesh, GearTrain } from '@tailshaft/mechanics';
import type { Mesh, Train } from '../model/gear.js';

/** A declared train as its tooth counts give it, or what keeps it from being worked out. */
export type TeethResult =
  | { readonly known: true; readonly train: GearTrain; readonly input: string; readonly output: string }
  | { readonly known: false; readonly problem: string };

const DROPS_OUT = 'any count: it drops out of the ratio';

/** Members, meshes and what is held or locked, with the member that power enters and the one that it leaves. */
export function teethOfTrain(train: Train): TeethResult {
  if (train.meshes.some(mesh => mesh.value === undefined)) return unknown('a mesh of the train is left open');
  if (train.held.some(one => one.value === undefined))
    return unknown('which member is held still is left open');
  if (train.locked.some(one => one.value === undefined))
    return unknown('which members are locked together is left open');
  return train.meshes.length > 0 ? ofMeshes(train) : ofSet(train);
}

/** Whether a train needs to be told more than its meshes: planets turn by what is held or locked. */
function isPlanetary(train: Train): boolean {
  return train.meshes.length === 0 || train.meshes.some(({ value }) => value?.carrier !== undefined);
}

/** Gears on one shaft share its name; without planets power enters at the first driver and leaves at the last wheel. */
function ofMeshes(train: Train): TeethResult {
  const meshes = train.meshes.map(({ value, origin }) => ({ ...value!, origin }));
  const row = !isPlanetary(train);
  const input = train.input ? train.input.value : row ? meshes[0]!.driver : undefined;
  const output = train.output ? train.output.value : row ? meshes[meshes.length - 1]!.driven : undefined;
  if (input === undefined || output === undefined) {
    return unknown('a train with planets needs its input and its output member');
  }
  return { known: true, train: withStops(meshes.flatMap(meshesOf), train), input, output };
}

type PlacedMesh = Mesh & { readonly origin: object };

function meshesOf({
  driver,
  driverTeeth,
  driven,
  drivenTeeth,
  kind,
  carrier,
  origin,
}: PlacedMesh): GearMesh[] {
  const on = carrier === undefined ? {} : { carrier };
  const pair = { a: driver, teethA: driverTeeth, b: driven, teethB: drivenTeeth, ...on };
  const places = [origin, origin] as const;
  if (kind === 'external' || kind === 'internal') return [{ ...pair, kind, places }];
  if (kind === 'bevel near' || kind === 'bevel far')
    return [{ ...pair, kind: 'bevel', side: kind === 'bevel near' ? 'near' : 'far', places }];
  // A chain or belt keeps the sense, as two external meshes do.
  const link = `${kind} ${driver} to ${driven}`;
  return [
    { ...pair, b: link, teethB: 1, kind: 'external', places: [origin, undefined], assumed: DROPS_OUT },
    { ...pair, a: link, teethA: 1, kind: 'external', places: [undefined, origin], assumed: DROPS_OUT },
  ];
}

/** Sun, one or two planets in series, ring. */
function ofSet(train: Train): TeethResult {
  const [sun, ring] = [train.sunTeeth?.value?.si, train.ringTeeth?.value?.si];
  const [input, output] = [train.input?.value, train.output?.value];
  const stopped = train.held.length + train.locked.length > 0;
  if (sun === undefined || ring === undefined || !input || !output || !stopped) {
    return unknown(
      'a planetary set needs sun teeth, ring teeth, input, output and the member that is held or locked',
    );
  }
  const on = { carrier: 'carrier', assumed: DROPS_OUT } as const;
  const [sunAt, ringAt, planetAt] = [train.sunTeeth, train.ringTeeth, train.planetTeeth].map(
    one => one?.origin,
  );
  // The teeth of the planets drop out of every ratio; these only have to be a whole number that fits inside the ring.
  const teeth = train.planetTeeth?.value?.si ?? Math.max(1, Math.floor((ring - sun) / 2));
  const planets = train.planetRow?.value === 'double' ? ['planet', 'outer planet'] : ['planet'];
  const last = planets[planets.length - 1]!;
  const meshes: GearMesh[] = [
    { a: 'sun', teethA: sun, b: 'planet', teethB: teeth, kind: 'external', places: [sunAt, planetAt], ...on },
  ];
  if (last !== 'planet') {
    const places = [planetAt, planetAt] as const;
    meshes.push({ a: 'planet', teethA: teeth, b: last, teethB: teeth, kind: 'external', places, ...on });
  }
  meshes.push({
    a: last,
    teethA: teeth,
    b: 'ring',
    teethB: ring,
    kind: 'internal',
    places: [planetAt, ringAt],
    ...on,
  });
  return { known: true, train: withStops(meshes, train), input, output };
}

function withStops(meshes: readonly GearMesh[], train: Train): GearTrain {
  return {
    meshes,
    held: train.held.map(one => one.value!).filter(name => name !== 'none'),
    locked: train.locked.map(({ value }) => [value!.one, value!.other] as const),
  };
}

function unknown(problem: string): TeethResult {
  return { known: false, problem };
}
