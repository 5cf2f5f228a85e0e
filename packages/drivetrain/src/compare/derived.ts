import {
  handThatDrivesAhead,
  percent,
  type Sense,
  signedPercent,
  turnFromAft,
  type Value,
} from '@tailshaft/mechanics';
import { hasTipRoom, tipRoomOf } from '../analysis/clearance.js';
import type { LineAnalysis } from '../analysis/line.js';
import { ratioWords } from '../analysis/telling.js';
import { Needs } from '../judge/needs.js';
import type { DerivedChange } from './change.js';
import type { Side, SideLine } from './side.js';

/** What is worked out for every line, before and after. A line that is new or gone is told of as such elsewhere. */
export function derivedChanges(before: Side, after: Side): DerivedChange[] {
  const changes: DerivedChange[] = [];
  for (const [key, old] of before.lines) {
    const now = after.lines.get(key);
    if (now) for (const row of ROWS) changes.push(...rowChange(row, old, now));
  }
  return changes;
}

/** Everything that is worked out of one line, in words; what cannot be told is left out. */
export function derivedOf({ analysis }: SideLine): { readonly what: string; readonly words: string }[] {
  return ROWS.flatMap(row => {
    const value = usable(row.of(analysis));
    if (value === undefined) return [];
    const words =
      typeof value !== 'object'
        ? value
        : row.as === 'ratio'
          ? ratioWords(value.si)
          : row.as === 'percent'
            ? percent(value.si)
            : analysis.tell(value);
    return [{ what: row.what, words }];
  });
}

interface Row {
  readonly what: string;
  readonly weight: number;
  readonly of: (analysis: LineAnalysis) => Value | string | undefined;
  /** How a ratio is said: `2.04:1`, or `15 %`. */
  readonly as?: 'ratio' | 'percent';
}

const turn = (sense: Sense | undefined) => sense && `${turnFromAft(sense)} seen from aft`;

/** Senses first: they decide whether the vessel goes ahead at all. */
const ROWS: readonly Row[] = [
  { what: 'shaft sense ahead', weight: 15, of: one => turn(one.rotation.ahead) },
  { what: 'propeller hand needed', weight: 16, of: one => neededHand(one) },
  { what: 'shaft sense astern', weight: 42, of: one => turn(one.rotation.astern) },
  { what: 'propeller turns', weight: 17, of: one => one.rotation.turning },
  { what: 'ahead clutch', weight: 19, of: one => one.rotation.clutch?.name },
  { what: 'pump setting needed', weight: 38, of: one => one.rotation.neededPump },
  { what: 'ratio ahead', as: 'ratio', weight: 40, of: one => one.overallRatio('ahead').value },
  { what: 'ratio astern', as: 'ratio', weight: 43, of: one => one.overallRatio('astern').value },
  { what: 'rated power at the crankshaft', weight: 40, of: one => one.rated.value?.power },
  { what: 'rated engine speed', weight: 41, of: one => one.rated.value?.speed },
  { what: 'gear input torque at rated power', weight: 40, of: one => gearInput(one)?.torque },
  { what: 'peak torque of the engine', weight: 41, of: one => one.peakTorque.value?.torque },
  { what: 'shaft speed at rated power', weight: 40, of: one => atRated(one)?.shaft?.speed },
  { what: 'shaft torque at rated power', weight: 40, of: one => atRated(one)?.shaft?.torque },
  { what: 'shaft torque at peak torque', weight: 41, of: one => atPeak(one)?.shaft?.torque },
  { what: 'power at the propeller shaft', weight: 41, of: one => atRated(one)?.shaft?.power },
  { what: 'shaft speed at idle', weight: 42, of: one => one.idleShaftSpeed.value },
  { what: 'estimated speed at idle', weight: 42, of: one => one.idleVesselSpeed.value },
  { what: 'governed engine speed', weight: 43, of: one => one.governedSpeed.value },
  {
    what: 'power absorbed at rated speed, share of the power delivered to the propeller',
    as: 'percent',
    weight: 40,
    of: one => propulsion(one)?.demand,
  },
  { what: 'predicted vessel speed at full throttle', weight: 41, of: one => fullThrottle(one)?.vesselSpeed },
  { what: 'predicted engine speed at full throttle', weight: 41, of: one => fullThrottle(one)?.engineSpeed },
  { what: 'propeller thrust at full throttle', weight: 42, of: one => fullThrottle(one)?.thrust },
  { what: 'tip clearance of the diameter', as: 'percent', weight: 41, of: one => tipClearance(one) },
  { what: 'tip speed at rated power', weight: 41, of: one => tipSpeedAtRated(one) },
];

const atRated = (one: LineAnalysis) => one.rated.value && one.loads(one.rated.value);
const atPeak = (one: LineAnalysis) => one.peakTorque.value && one.loads(one.peakTorque.value);
const gearInput = (one: LineAnalysis) => one.line.gear && atRated(one)?.entering.get(one.line.gear);
const neededHand = (one: LineAnalysis) => one.rotation.ahead && handThatDrivesAhead(one.rotation.ahead);
const propulsion = (one: LineAnalysis) => one.propulsion?.value;
const fullThrottle = (one: LineAnalysis) => {
  const full = propulsion(one)?.full;
  return full?.applies ? full : undefined;
};
const tipClearance = ({ line: { propeller } }: LineAnalysis) =>
  propeller && hasTipRoom(propeller) ? tipRoomOf(propeller, new Needs())?.share : undefined;
const tipSpeedAtRated = (one: LineAnalysis) =>
  one.operatingPoints.find(point => point.name === 'rated power' && point.direction === 'ahead')?.tipSpeed;

/** Differences below this are rounding. */
export const SAME = 1e-9;

/** Both sides are told in the units of the later one. A larger change is graver than a smaller one of its kind. */
function rowChange(row: Row, old: SideLine, now: SideLine): DerivedChange[] {
  const [was, is] = [usable(row.of(old.analysis)), usable(row.of(now.analysis))];
  if (was === undefined && is === undefined) return [];
  const share = shareOf(was, is);
  if (share === undefined ? was === is : Math.abs(share) < SAME) return [];
  const tell = (value: Value | string | undefined) =>
    typeof value !== 'object'
      ? value
      : row.as === 'ratio'
        ? ratioWords(value.si)
        : row.as === 'percent'
          ? percent(value.si)
          : now.analysis.tell(value);
  const [before, after] = [tell(was), tell(is)];
  const lost = is === undefined ? LOST : 0;
  return [
    {
      kind: 'derived',
      what: row.what,
      subject: now.key,
      before,
      after,
      ...(share === undefined ? {} : { share }),
      ...(typeof was === 'object' ? { valueBefore: was } : {}),
      ...(typeof is === 'object' ? { valueAfter: is } : {}),
      weight: row.weight - lost + (share === undefined ? 0 : 0.9 / (1 + Math.abs(share))),
      words: `${row.what}: ${before ?? 'not known'} → ${after ?? 'not known'}${shareWords(share)}`,
    },
  ];
}

/** A figure that was known and no longer is weighs more than one that changed. */
export const LOST = 15;

function usable(value: Value | string | undefined): Value | string | undefined {
  return typeof value === 'object' && !Number.isFinite(value.si) ? undefined : value;
}

/** After over before, less one; undefined where either is no number. */
export function shareOf(was: Value | string | undefined, is: Value | string | undefined): number | undefined {
  if (typeof was !== 'object' || typeof is !== 'object') return undefined;
  if (was.si === is.si) return 0;
  const share = is.si / was.si - 1;
  return Number.isFinite(share) ? share : undefined;
}

/** ` (+23 %)`. */
export function shareWords(share: number | undefined): string {
  if (share === undefined) return '';
  return ` (${signedPercent(share)})`;
}
