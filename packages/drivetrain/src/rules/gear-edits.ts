import { asStated, type NewFact, type NewValue, named } from '@tailshaft/vocabulary';
import type { ModelEdit } from '../judge/route.js';
import type { Gear } from '../model/gear.js';
import { statementOf } from '../model/part.js';

/** What to change of the gear's statement in the line. */
export interface GearChange {
  readonly name?: string;
  readonly ratio?: NewValue;
  readonly clutch?: string;
  /** Input rotation that the pump of the gear is to be set for. */
  readonly pump?: NewValue;
  /** How the statement of a gear fitted anew begins; without it the gear that is there is changed in its place. */
  readonly fitted?: 'here' | 'in its place';
}

/** Edits that put another catalogue gear, ratio or ahead clutch into the line. */
export function gearEdits(gear: Gear, change: GearChange): ModelEdit[] {
  if (mustBeStatedAnew(gear, change)) return [statement(gear, change)];
  const { name, ratio, clutch, pump } = change;
  const edits: ModelEdit[] = [];
  if (name !== undefined && name !== gear.entry?.name && gear.nameOrigin) {
    edits.push({ do: 'replace', at: gear.nameOrigin, value: named(name) });
  }
  if (ratio !== undefined) edits.push(written(gear, 'ratio', ratio, gear.ratioUsed));
  if (clutch !== undefined && clutch !== gear.aheadClutch?.value) {
    edits.push(written(gear, 'ahead clutch', named(clutch), gear.aheadClutch));
  }
  if (pump !== undefined) edits.push({ do: 'set', host: gear.origin, property: 'pump set for', value: pump });
  return edits;
}

/** A retained gear is no longer retained when its ratio or model changes; one fitted anew has name, ratio and clutch. */
function mustBeStatedAnew(gear: Gear, { fitted }: GearChange): boolean {
  if (statementOf(gear) === 'retained') return true;
  return fitted !== undefined && !(gear.nameOrigin && gear.ratioUsed && gear.aheadClutch);
}

function written(
  gear: Gear,
  property: string,
  value: NewValue,
  fact: Gear['aheadClutch' | 'ratioUsed'],
): ModelEdit {
  return fact ? { do: 'replace', at: fact.origin, value } : { do: 'set', host: gear.origin, property, value };
}

function statement(gear: Gear, { name, ratio, clutch, pump, fitted }: GearChange): ModelEdit {
  const ratioNow = ratio ?? (gear.ratioUsed && asStated(gear.ratioUsed));
  const clutchNow = clutch ?? gear.aheadClutch?.value;
  const kept = !fitted && (name === undefined || name === gear.entry?.name);
  const facts: NewFact[] = [
    ...(ratioNow ? [{ property: 'ratio', value: ratioNow }] : []),
    ...(clutchNow ? [{ property: 'ahead clutch', value: named(clutchNow) }] : []),
    ...(pump ? [{ property: 'pump set for', value: pump }] : []),
  ];
  if (kept) return { do: 'state', at: gear.origin, statement: { action: 'modify', role: 'gear', facts } };
  const action = fitted === 'here' ? {} : { action: 'replace' as const };
  return {
    do: 'state',
    at: gear.origin,
    statement: { ...action, role: 'gear', ...(name === undefined ? {} : { name }), facts },
  };
}
