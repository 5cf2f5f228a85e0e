import { join } from 'node:path';
import { type Value, valuesBehind } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { checkFile } from './support/check.js';

/** What one example works out: formulas behind its verdicts, rules that judged it, and what the verdicts say. */
interface Used {
  readonly formulas: ReadonlySet<string>;
  readonly judged: ReadonlySet<string>;
  readonly messages: string;
}

const uses = new Map<string, Promise<Used>>();
function usedBy(example: string): Promise<Used> {
  const had = uses.get(example) ?? work(example);
  uses.set(example, had);
  return had;
}

async function work(example: string): Promise<Used> {
  const { check } = await checkFile(join(import.meta.dirname, '..', 'examples', `${example}.shaft`));
  const verdicts = check.vessels.flatMap(one => one.verdicts);
  const roots = verdicts.flatMap(one => [one.capacity, one.demand, ...one.workings]);
  const behind = roots.flatMap(one => (one ? [...valuesBehind(one as Value)] : []));
  return {
    formulas: new Set(behind.flatMap(one => (one.working ? [one.working.name] : []))),
    judged: new Set(verdicts.filter(one => one.outcome === 'holds').map(one => one.rule)),
    messages: verdicts.map(one => one.message).join('\n'),
  };
}

type Proof = { readonly formula: string } | { readonly rule: string } | { readonly says: string };
const CUTTER = 'pilot-cutter/ternhaven';
const WORKBOAT = 'workboat/saltmarsh';
const SERVICE = 'service-vessel/skerrowby';
const LAUNCH = 'motor-launch/reedmouth';
const FERRY = 'ferry/brackle';
const TENDER = 'survey-tender/wadebeck';
const SPORT = 'sport-boat/quickgrass';

/** Every method of the product that a spec can call for, with an example that does. */
const METHODS: readonly [method: string, example: string, ...Proof[]][] = [
  // Rotation
  ['rotation along the line and propeller hand', WORKBOAT, { rule: 'rotation/propeller-hand' }],
  ['a line whose engine faces aft', SPORT, { rule: 'rotation/propeller-hand' }],
  ['pump setting of the gear', CUTTER, { rule: 'rotation/pump-index' }],
  ['outward turning of a pair', FERRY, { rule: 'rotation/turning-requirement' }],
  // Speed and ratio
  ['exact ratio and shaft speed', SERVICE, { formula: 'propeller shaft speed' }, { rule: 'ratio/train' }],
  ['tip speed', SERVICE, { formula: 'propeller tip speed' }],
  ['speed in gear at idle', CUTTER, { formula: 'vessel speed from pitch and slip' }],
  ['ratios of a pair', FERRY, { rule: 'ratio/unequal-sides' }],
  // Torque, power, thrust
  [
    'torque and power through each stage',
    CUTTER,
    { formula: 'torque after a ratio' },
    { formula: 'power after a stage' },
  ],
  ['rating of the gear at peak torque', WORKBOAT, { formula: 'torque of a power per speed' }],
  [
    'power in other air and coolant',
    SERVICE,
    { formula: 'power at ambient conditions' },
    { formula: 'ambient power adjustment' },
  ],
  ['power take-off', FERRY, { formula: 'power left by a take-off' }],
  // Clutch
  [
    'clutch holding torque',
    WORKBOAT,
    { formula: 'clutch holding torque, uniform wear' },
    { formula: 'clutch holding torque, uniform pressure' },
  ],
  ['clamp of a hydraulic piston', SERVICE, { formula: 'clamp force of a hydraulic piston' }],
  ['service factor of a clutch', SERVICE, { formula: 'service factor of a clutch' }],
  // Gear trains
  ['ratio from tooth counts', WORKBOAT, { formula: 'speed ratio of a gear train' }],
  [
    'planetary sets, ahead and astern',
    CUTTER,
    { formula: 'speed ratio of a gear train' },
    { rule: 'ratio/train' },
    { rule: 'rotation/train-sense' },
    { says: 'clutch A give 2.1429:1, which is the declared 2.143:1' },
    { says: 'clutch B of gear Rowan-7 reverses the rotation, as declared' },
  ],
  [
    'torque that a clutch or brake carries in its train',
    CUTTER,
    { formula: 'torque carried by a member of a gear train' },
    { formula: 'torque carried in a gear train' },
    { says: 'which holds front-ring, carries 2 times the torque that enters' },
  ],
  // Shaft
  [
    'shaft by the small-craft formula',
    CUTTER,
    { formula: 'power per speed of the fitted shaft, small-craft formula' },
  ],
  [
    'shaft by the class formula',
    SERVICE,
    { formula: 'power per speed of the fitted shaft, class formula' },
    { formula: 'class shaft diameter' },
  ],
  ['power that the shaft takes', LAUNCH, { formula: 'power allowed by power per speed' }],
  [
    'taper, keyway and bore',
    SERVICE,
    { rule: 'propeller/bore-taper' },
    { rule: 'propeller/keyway' },
    { formula: 'shift of a hub on its taper' },
  ],
  [
    'flanges and bore of a coupling',
    SERVICE,
    { rule: 'shafting/coupling-flange' },
    { rule: 'shafting/coupling-bore' },
  ],
  [
    'joints',
    FERRY,
    { formula: 'highest speed ratio of a universal joint' },
    { formula: 'residual angle of two universal joints in phase' },
  ],
  [
    'bending, torsion and thrust together',
    SERVICE,
    { formula: 'shear stress of bending, torsion and thrust, ASME form' },
    { formula: 'equivalent stress by distortion energy' },
    { formula: 'bending moment of the overhung propeller' },
  ],
  [
    'a stepped and hollow shaft',
    TENDER,
    { says: 'hollow (bore 20 mm) shaft outside its sections' },
    { formula: 'least whirling speed of a stepped span' },
  ],
  ['yield factor of a shaft', TENDER, { formula: 'factor against yield' }],
  ['fatigue of a shaft', TENDER, { formula: 'safety factor in fatigue of the fitted shaft' }],
  [
    'keys',
    SERVICE,
    { formula: 'key length in shear' },
    { formula: 'key length in crushing' },
    { formula: 'class key area' },
  ],
  [
    'fitted coupling bolts',
    SERVICE,
    { formula: 'torque of coupling bolts in shear' },
    { formula: 'class fitted bolt diameter by power' },
    { formula: 'class fitted bolt diameter by shaft' },
  ],
  ['clamped coupling bolts', TENDER, { formula: 'torque of clamped flanges by friction' }],
  // Bearings
  ['span by the whirling formula', CUTTER, { formula: 'whirling speed of a bearing span' }],
  ['span by diameters', CUTTER, { formula: 'bearing span in diameters' }],
  ['overhang', CUTTER, { formula: 'propeller overhang in diameters' }],
  ['length of the stern bearing', SERVICE, { formula: 'bearing length in diameters' }],
  [
    'clearance of bearing and tube',
    SERVICE,
    { formula: 'bearing clearance' },
    { formula: 'thickest shaft for the tube' },
  ],
  [
    'thrust bearing',
    LAUNCH,
    { rule: 'shafting/thrust-path' },
    { formula: 'bollard thrust by power and diameter' },
  ],
  [
    'life of the thrust bearing of the gear',
    SERVICE,
    { rule: 'shafting/thrust-bearing-life' },
    { formula: 'rating life in time' },
    { formula: 'running time over years of duty' },
  ],
  [
    'life of a thrust bearing in the shaft, against a life asked for',
    FERRY,
    { formula: 'basic rating life' },
    { says: 'at least 25000 h by the criteria' },
  ],
  ['water of the bearings', CUTTER, { rule: 'shafting/bearing-water' }],
  // Vibration
  [
    'lateral critical with the overhung propeller',
    SERVICE,
    { formula: 'Dunkerley lateral frequency of an overhung propeller, forward end pinned' },
  ],
  [
    'torsional frequencies of the geared line',
    SERVICE,
    { formula: 'torsional natural frequencies of a train' },
    { rule: 'interface/torsional-critical' },
  ],
  ['the same of both lines of a pair', FERRY, { formula: 'torsional natural frequencies of a train' }],
  [
    'a coupling that gives behind the gear',
    FERRY,
    { formula: 'half the inertia of a coupling' },
    { says: '175.2 Hz' },
  ],
  [
    'vibratory stress by damped forced response against the class limits',
    SERVICE,
    { formula: 'vibratory torque by damped forced response' },
    { formula: 'permissible torsional vibration stress, continuous' },
    { formula: 'size factor of torsional vibration limits' },
  ],
  [
    'vibratory stress as a calculation declares it',
    FERRY,
    { says: 'of the shaft, as declared; IACS UR M68 allows' },
  ],
  ['speeds to be barred', SERVICE, { rule: 'interface/barred-range' }],
  ['vibratory torque of a coupling', SERVICE, { rule: 'capacity/coupling-vibratory-torque' }],
  // Propeller
  [
    'open water by the B series',
    SERVICE,
    { formula: 'B-series thrust coefficient' },
    { formula: 'B-series torque coefficient' },
  ],
  ['open water by the Gawn series', SPORT, { says: 'By Gawn series' }],
  ['engine and propeller together', WORKBOAT, { formula: 'engine and propeller equilibrium' }],
  ['load of a kept propeller', LAUNCH, { formula: 'propeller power demand by the propeller law' }],
  ['blade area by Keller', CUTTER, { formula: 'least expanded area ratio by Keller' }],
  ['blade area by Burrill', SERVICE, { formula: 'least expanded area ratio by Burrill' }],
  ['tip clearance', SERVICE, { formula: 'tip gap in the aperture' }],
  // Hull
  ['planing resistance', CUTTER, { says: 'speed by Savitsky' }],
  [
    'displacement resistance, one screw',
    SERVICE,
    { says: 'speed by Holtrop 1984' },
    { formula: 'Holtrop 1984 wake fraction, single screw' },
  ],
  [
    'displacement resistance, two screws',
    FERRY,
    { says: 'speed by Holtrop 1982' },
    { formula: 'Holtrop-Mennen wake fraction, twin screw' },
  ],
  ['resistance given as a table', WORKBOAT, { says: 'speed by given resistance' }],
  ['planing estimate', SPORT, { formula: 'planing speed by Crouch' }],
  ['displacement estimate', LAUNCH, { formula: 'displacement speed, handbook' }],
  ['bollard pull', SERVICE, { says: 'bollard thrust at full ahead is' }],
  ['predicted speed and engine load', CUTTER, { formula: 'vessel, propeller and engine balance' }],
  // Trial
  [
    'readings of a trial against prediction and requirement',
    WORKBOAT,
    { rule: 'trial/conditions' },
    { rule: 'trial/full-throttle' },
    { rule: 'trial/prediction' },
    { rule: 'trial/requirement' },
    { says: 'at full throttle in "builder\'s trial": 8.1 kn read, ' },
  ],
  // Motors
  [
    'torque of a motor over its speed',
    LAUNCH,
    { formula: 'motor torque at a speed' },
    { rule: 'capacity/motor-equivalent' },
  ],
  // Geometry and weight
  ['angles of engine, gear and shaft', CUTTER, { formula: 'angle left open by the stack' }],
  ['lengths along the line', SERVICE, { formula: 'shift of the shaft coupling face' }],
  ['weight and balance', SERVICE, { formula: 'centre of gravity after the change' }],
  [
    'flywheel, housing and damper',
    SERVICE,
    { rule: 'interface/flywheel-housing' },
    { rule: 'interface/flywheel-recess' },
    { rule: 'interface/damper-match' },
  ],
  ['room for the engine', SERVICE, { rule: 'interface/engine-space' }],
];

describe('every method is used by an example', () => {
  it.each(METHODS)('%s: %s', async (_, example, ...proofs) => {
    const used = await usedBy(example);
    for (const proof of proofs) {
      if ('formula' in proof) expect([...used.formulas]).toContain(proof.formula);
      else if ('rule' in proof) expect([...used.judged]).toContain(proof.rule);
      else expect(used.messages).toContain(proof.says);
    }
  });
});

it('says in its messages that an acceptance covers the weight that left the launch', async () => {
  const used = await usedBy(LAUNCH);
  expect(used.messages).toMatch(/−173 kg \(−7\.2 % of lightship\).*Accepted by naval architect of the owner/);
});
