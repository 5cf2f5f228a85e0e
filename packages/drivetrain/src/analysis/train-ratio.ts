import {
  type GearTrain,
  given,
  type Origin,
  trainRatio as ratioOfTrain,
  type Value,
} from '@tailshaft/mechanics';
import type { Mesh, Train } from '../model/gear.js';

const DROPS_OUT = 'any count: it drops out of the ratio';

/** What tooth counts give: input ÷ output speed, negative where the sense is reversed; or why they give nothing. */
export type TrainResult =
  | { readonly known: true; readonly ratio: Value<'ratio'> }
  | { readonly known: false; readonly problem: string };

/** The signed ratio of a declared train, a row of meshes or a planetary set. */
export function signedTrainRatio(train: Train): TrainResult {
  const meshes = train.meshes.flatMap(({ value, origin }) => (value ? [{ ...value, origin }] : []));
  if (meshes.length < train.meshes.length)
    return { known: false, problem: 'a mesh of the train is left open' };
  return meshes.length > 0 ? ratioOfRow(meshes) : ratioOfSet(train);
}

/** The size of the ratio alone, where the train has one. */
export function unsignedTrainRatio(train: Train): Value<'ratio'> | undefined {
  const result = signedTrainRatio(train);
  return result.known ? { ...result.ratio, si: Math.abs(result.ratio.si) } : undefined;
}

type PlacedMesh = Mesh & { readonly origin: Origin };

/** Gears on one shaft share its name; power enters at the first driver and leaves at the last driven wheel. */
function ratioOfRow(meshes: readonly PlacedMesh[]): TrainResult {
  const row: GearTrain = { meshes: meshes.flatMap(meshOf) };
  return ratioOfTrain(row, meshes[0]!.driver, meshes[meshes.length - 1]!.driven);
}

function meshOf({
  driver,
  driverTeeth,
  driven,
  drivenTeeth,
  kind,
  origin,
}: PlacedMesh): GearTrain['meshes'][number][] {
  const pair = { a: driver, teethA: driverTeeth, b: driven, teethB: drivenTeeth };
  const places = [origin, origin] as const;
  if (kind === 'external' || kind === 'internal') return [{ ...pair, kind, places }];
  // A chain or belt keeps the sense, as two external meshes do.
  const link = `${kind} ${driver} to ${driven}`;
  return [
    { ...pair, b: link, teethB: 1, kind: 'external', places: [origin, undefined], assumed: DROPS_OUT },
    { ...pair, a: link, teethA: 1, kind: 'external', places: [undefined, origin], assumed: DROPS_OUT },
  ];
}

function ratioOfSet(train: Train): TrainResult {
  const [sun, ring] = [train.sunTeeth?.value?.si, train.ringTeeth?.value?.si];
  const [input, output, held] = [train.input?.value, train.output?.value, train.held?.value];
  if (held === 'none') {
    const reason = 'no member is held: the set turns as one piece';
    return { known: true, ratio: given('ratio of the locked set', 'i', 'ratio', 1, { assumed: reason }) };
  }
  if (sun === undefined || ring === undefined || !input || !output || !held) {
    return {
      known: false,
      problem: 'a planetary set needs sun teeth, ring teeth, input, output and the held member',
    };
  }
  const planet = { carrier: 'carrier', assumed: DROPS_OUT } as const;
  const [sunAt, ringAt, planetAt] = [train.sunTeeth, train.ringTeeth, train.planetTeeth].map(
    one => one?.origin,
  );
  // The teeth of the planets drop out of every ratio; these only have to be a whole number that fits inside the ring.
  const teeth = train.planetTeeth?.value?.si ?? Math.max(1, Math.floor((ring - sun) / 2));
  const chain = train.planetRow?.value === 'double' ? ['planet', 'outer planet'] : ['planet'];
  const last = chain[chain.length - 1]!;
  return ratioOfTrain(
    {
      meshes: [
        {
          a: 'sun',
          teethA: sun,
          b: 'planet',
          teethB: teeth,
          kind: 'external',
          places: [sunAt, planetAt],
          ...planet,
        },
        ...(chain.length > 1
          ? [
              {
                a: 'planet',
                teethA: teeth,
                b: last,
                teethB: teeth,
                kind: 'external' as const,
                places: [planetAt, planetAt] as const,
                ...planet,
              },
            ]
          : []),
        {
          a: last,
          teethA: teeth,
          b: 'ring',
          teethB: ring,
          kind: 'internal',
          places: [planetAt, ringAt],
          ...planet,
        },
      ],
      held: [held],
    },
    input,
    output,
  );
}
