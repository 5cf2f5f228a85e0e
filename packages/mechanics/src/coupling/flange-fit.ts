import type { Value } from '../core/value.js';
import { compareValues, type InterfaceDifference, notStated } from '../geometry/interface-difference.js';
import type { FlywheelHousing } from '../tables/flywheel-housings.js';

export type PilotKind = 'male' | 'female' | 'none';

/** What two flanges must agree on. Whatever is not known stays absent. */
export interface Flange {
  readonly outsideDiameter?: Value<'length'> | undefined;
  readonly boltCircle?: Value<'length'> | undefined;
  readonly bolts?: Value<'number'> | undefined;
  /** Nominal bolt diameter. */
  readonly boltSize?: Value<'length'> | undefined;
  readonly pilot?: PilotKind | undefined;
  readonly pilotDiameter?: Value<'length'> | undefined;
  readonly thickness?: Value<'length'> | undefined;
}

/** What still counts as equal, m; room for one side printed in inches and the other in millimetres. Common practice. */
const flangeFitTolerances = {
  outsideDiameter: 1e-3,
  boltCircle: 0.25e-3,
  boltSize: 0.1e-3,
  pilotDiameter: 0.1e-3,
  thickness: 1e-3,
} as const;

/** Compares two flanges that are to be bolted together; an empty list means all agree. */
export function compareFlanges(one: Flange, other: Flange): InterfaceDifference[] {
  const allow = flangeFitTolerances;
  return [
    ...compareValues(
      'outside diameter',
      one.outsideDiameter,
      other.outsideDiameter,
      allow.outsideDiameter,
      false,
    ),
    ...compareValues('bolt circle', one.boltCircle, other.boltCircle, allow.boltCircle),
    ...compareValues('number of bolts', one.bolts, other.bolts, 0),
    ...compareValues('bolt size', one.boltSize, other.boltSize, allow.boltSize),
    ...comparePilots(one, other),
    ...compareValues('thickness', one.thickness, other.thickness, allow.thickness, false),
  ];
}

/** A spigot needs a recess of its diameter; two flanges without either are centred by their bolts. */
function comparePilots(one: Flange, other: Flange): InterfaceDifference[] {
  const missing = notStated('pilot', one.pilot, other.pilot);
  if (missing) return [missing];
  const mates = `${one.pilot} ${other.pilot}`;
  if (mates === 'none none') return [];
  const tolerance = flangeFitTolerances.pilotDiameter;
  if (mates === 'male female' || mates === 'female male')
    return compareValues('pilot diameter', one.pilotDiameter, other.pilotDiameter, tolerance);
  return [{ feature: 'pilot', result: 'differs', one: one.pilot!, other: other.pilot!, prevents: true }];
}

/** Features in which two flywheel housing sizes differ, from the standard's own dimensions; empty when they mate. */
export function compareHousings(engine: FlywheelHousing, gear: FlywheelHousing): string[] {
  const differs: string[] = [];
  if (engine.pilotBore.min !== gear.pilotBore.min) differs.push('pilot bore');
  if (engine.boltCircle !== gear.boltCircle) differs.push('bolt circle');
  if (engine.holes !== gear.holes) differs.push('number of holes');
  if (engine.inchThread !== gear.inchThread) differs.push('thread');
  if (engine.depth !== gear.depth) differs.push('housing depth');
  return differs;
}
