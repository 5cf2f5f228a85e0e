import type { ModelEdit } from '../judge/route.js';
import type { Gear } from '../model/gear.js';
import { statementOf } from '../model/part.js';

/** What to change of the gear's statement in the line. */
export interface GearWords {
  readonly name?: string;
  readonly ratio?: string;
  readonly clutch?: string;
  /** Input rotation that the pump of the gear is to be set for. */
  readonly pump?: string;
  /** How the statement of a gear fitted anew begins; without it the gear that is there is changed in its place. */
  readonly fitted?: 'gear' | 'replace gear';
}

/** Edits that put another catalogue gear, ratio or ahead clutch into the line. */
export function gearEdits(gear: Gear, words: GearWords): ModelEdit[] {
  if (mustBeWrittenAnew(gear, words))
    return [{ do: 'replace', at: gear.origin, text: statement(gear, words) }];
  const { name, ratio, clutch, pump } = words;
  const edits: ModelEdit[] = [];
  if (name !== undefined && name !== gear.entry?.name && gear.nameOrigin) {
    edits.push({ do: 'replace', at: gear.nameOrigin, text: name });
  }
  if (ratio !== undefined) edits.push(written(gear, 'ratio', ratio, gear.ratioUsed));
  if (clutch !== undefined && clutch !== gear.aheadClutch?.value) {
    edits.push(written(gear, 'ahead clutch', clutch, gear.aheadClutch));
  }
  if (pump !== undefined) edits.push({ do: 'set', host: gear.origin, property: 'pump set for', text: pump });
  return edits;
}

/** A retained gear is no longer retained when its ratio or model changes; one fitted anew has name, ratio and clutch. */
function mustBeWrittenAnew(gear: Gear, { fitted }: GearWords): boolean {
  if (statementOf(gear) === 'retained') return true;
  return fitted !== undefined && !(gear.nameOrigin && gear.ratioUsed && gear.aheadClutch);
}

function written(
  gear: Gear,
  property: string,
  text: string,
  fact: Gear['aheadClutch' | 'ratioUsed'],
): ModelEdit {
  return fact ? { do: 'replace', at: fact.origin, text } : { do: 'set', host: gear.origin, property, text };
}

function statement(gear: Gear, { name, ratio, clutch, pump, fitted }: GearWords): string {
  const ratioText = ratio ?? gear.ratioUsed?.written;
  const clutchText = clutch ?? gear.aheadClutch?.value;
  const kept = !fitted && (name === undefined || name === gear.entry?.name);
  const what = kept ? 'modify gear' : `${fitted ?? 'replace gear'} ${name}`;
  return [
    what,
    ratioText ? ` ratio ${ratioText}` : '',
    clutchText ? ` ahead clutch ${clutchText}` : '',
    pump ? ` { pump set for ${pump} }` : '',
  ].join('');
}
