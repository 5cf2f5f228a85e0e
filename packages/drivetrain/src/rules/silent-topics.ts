import type { Verdict } from '../judge/verdict.js';
import { proposalsOf } from '../model/as-found.js';
import type { Arrangement, ShaftLine, Vessel } from '../model/vessel.js';

/** Something that nobody declares, so that the rules about it say nothing: neither that it holds nor that it fails. */
export interface SilentTopic {
  /** `bearings of the shaft` */
  readonly of: string;
  readonly rules: readonly string[];
  /** Paths of the lines or arrangements of which nothing is declared. */
  readonly subjects: readonly string[];
}

interface Topic {
  readonly of: string;
  readonly rules: readonly string[];
  /** Lines that have what the rules are about; absent for a topic of whole arrangements. */
  readonly concerns?: (line: ShaftLine) => boolean;
  /** Arrangements that it is about, for a topic of whole arrangements. */
  readonly arrangements?: (arrangement: Arrangement) => boolean;
}

const hasEngineAndGear = (line: ShaftLine) => line.engine !== undefined && line.gear !== undefined;
const hasGear = (line: ShaftLine) => line.gear !== undefined;
const hasEngine = (line: ShaftLine) => line.engine !== undefined;
const hasPropeller = (line: ShaftLine) => line.propeller !== undefined;
const hasShaft = (line: ShaftLine) => line.shafts.length > 0;
const hasBoth = (line: ShaftLine) => hasShaft(line) && hasPropeller(line);

/** What a line always has, though a spec may leave it out: those rules wake when it is declared. */
const TOPICS: readonly Topic[] = [
  {
    of: 'the propeller shaft',
    rules: ['shafting/diameter', 'shafting/material-named'],
    concerns: line => line.propeller !== undefined && !hasShaft(line),
  },
  { of: 'which way the shift cable moves', rules: ['rotation/shift-cable'], concerns: hasGear },
  {
    of: 'rotation of starter, pumps and fans',
    rules: ['rotation/accessory'],
    concerns: hasEngine,
  },
  {
    of: 'plates, clamp or pressure of the clutches',
    rules: ['capacity/clutch-holding'],
    concerns: hasEngineAndGear,
  },
  { of: 'least input speed of the gear', rules: ['speed/idle-pressure'], concerns: hasEngineAndGear },
  {
    of: 'a limit on the speed in gear at idle',
    rules: ['speed/idle-in-gear'],
    concerns: hasEngineAndGear,
  },
  {
    of: 'hull resistance or shape, with propeller geometry',
    rules: ['propeller/absorbed-power'],
    concerns: hasPropeller,
  },
  {
    of: 'a criterion for the blade area',
    rules: ['propeller/blade-area'],
    concerns: hasPropeller,
  },
  {
    of: 'clearances of the propeller',
    rules: ['propeller/tip-clearance', 'propeller/other-clearances'],
    concerns: hasPropeller,
  },
  {
    of: 'taper and key of shaft and propeller',
    rules: ['propeller/bore-taper', 'propeller/bore-large-end', 'propeller/keyway', 'propeller/hub-length'],
    concerns: hasBoth,
  },
  {
    of: 'metals of propeller and hull',
    rules: ['propeller/material-pair'],
    concerns: hasPropeller,
  },
  {
    of: 'bearings of the shaft',
    rules: ['shafting/bearing-span', 'shafting/span-guide'],
    concerns: hasShaft,
  },
  { of: 'overhang of the propeller', rules: ['shafting/overhang'], concerns: hasBoth },
  {
    of: 'mass or inertia of the propeller',
    rules: ['shafting/propeller-whirl'],
    concerns: hasBoth,
  },
  {
    of: 'overhang and mass of the propeller, for its bending of the shaft',
    rules: ['shafting/combined-stress'],
    concerns: hasBoth,
  },
  { of: 'length, height and material of keys', rules: ['shafting/key-strength'], concerns: hasShaft },
  {
    of: 'class or preload of coupling bolts',
    rules: ['shafting/coupling-bolts'],
    concerns: line => line.couplings.some(one => one.flange !== undefined),
  },
  { of: 'length of the stern bearing', rules: ['shafting/bearing-length'], concerns: hasBoth },
  { of: 'bores of tube, strut and bearings', rules: ['shafting/tube-bore'], concerns: hasShaft },
  {
    of: 'flange and bore of the coupling behind the gear',
    rules: ['shafting/coupling-flange', 'shafting/coupling-bore'],
    concerns: line => hasGear(line) && hasShaft(line),
  },
  {
    of: 'thrust that gear or thrust bearing may carry',
    rules: ['shafting/thrust-capacity'],
    concerns: hasPropeller,
  },
  {
    of: 'angles of engine, gear and shaft',
    rules: ['shafting/angle-limit', 'shafting/angle-stack'],
    concerns: hasShaft,
  },
  {
    of: 'lengths from engine to propeller, before and after',
    rules: ['shafting/length-stack'],
    concerns: line => hasShaft(line) && line.before !== undefined,
  },
  {
    of: 'mounts',
    rules: ['shafting/mount-rating', 'shafting/soft-mounts'],
    concerns: line => hasEngine(line) || line.motor !== undefined,
  },
  {
    of: 'flywheel housing of engine and gear',
    rules: ['interface/flywheel-housing'],
    concerns: hasEngineAndGear,
  },
  {
    of: 'damper between engine and gear',
    rules: ['interface/damper-match', 'interface/damper-spline', 'interface/flywheel-recess'],
    concerns: hasEngineAndGear,
  },
  {
    of: 'inertias and stiffnesses of the line',
    rules: ['interface/torsional-critical'],
    concerns: hasPropeller,
  },
  { of: 'space for the engine', rules: ['interface/engine-space'], concerns: hasEngine },
  { of: 'bed centres', rules: ['interface/bed-centres'], concerns: hasEngine },
  { of: 'gauges and cooler of the gear oil', rules: ['interface/gear-gauges'], concerns: hasGear },
  {
    of: 'power on the certificate',
    rules: ['capacity/certificate'],
    arrangements: one => one.revises !== undefined,
  },
  {
    of: 'weights before and after',
    rules: ['interface/weight-change'],
    arrangements: one => one.revises !== undefined,
  },
];

/** Topics of the arrangements that will be built of which nothing is declared, and the rules that are silent for it. */
export function silentTopics(
  vessel: Vessel,
  verdicts: readonly Verdict[],
  planned: readonly Arrangement[] = proposalsOf(vessel),
): SilentTopic[] {
  if (vessel.arrangements.length === 0) return [{ of: 'arrangements', rules: [], subjects: [vessel.name] }];
  return TOPICS.flatMap(({ of, rules, concerns, arrangements }) => {
    const spoken = verdicts.filter(one => rules.includes(one.rule)).map(one => one.subject);
    const speaks = (path: string) => spoken.some(one => one === path || one.startsWith(`${path}.`));
    const wanted = [
      ...(arrangements ? planned.filter(arrangements) : []),
      ...(concerns ? planned.flatMap(one => one.lines).filter(concerns) : []),
    ];
    const subjects = wanted.map(one => one.path).filter(path => !speaks(path));
    return subjects.length > 0 ? [{ of, rules, subjects }] : [];
  });
}
