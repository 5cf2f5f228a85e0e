import type { Origin } from '@tailshaft/mechanics';
import type { ModelEdit } from '../judge/route.js';
import type { Gear } from '../model/gear.js';

/** What to change of the gear's statement in the line. */
export interface GearWords {
  readonly name?: string;
  readonly ratio?: string;
  readonly clutch?: string;
}

/** Edits that put another catalogue gear, ratio or ahead clutch into the line. */
export function gearEdits(gear: Gear, words: GearWords): ModelEdit[] {
  if (gear.change === 'retained') return [{ do: 'replace', at: gear.origin, text: statement(gear, words) }];
  const edits: ModelEdit[] = [];
  if (words.name !== undefined && words.name !== gear.entry?.name && gear.nameOrigin) {
    edits.push({ do: 'replace', at: gear.nameOrigin, text: words.name });
  }
  if (words.ratio !== undefined) edits.push(written(gear, 'ratio', gear.ratioUsed?.origin, words.ratio));
  if (words.clutch !== undefined && words.clutch !== gear.aheadClutch?.value) {
    edits.push(written(gear, 'ahead clutch', gear.aheadClutch?.origin, words.clutch));
  }
  return edits;
}

function written(gear: Gear, property: string, at: Origin | undefined, text: string): ModelEdit {
  return at ? { do: 'replace', at, text } : { do: 'set', host: gear.origin, property, text };
}

/** A retained gear is no longer retained when its ratio or model changes: the whole statement is written anew. */
function statement(gear: Gear, { name, ratio, clutch }: GearWords): string {
  const ratioText = ratio ?? gear.ratioUsed?.written;
  const clutchText = clutch ?? gear.aheadClutch?.value;
  const what = name === undefined || name === gear.entry?.name ? 'modify gear' : `replace gear ${name}`;
  return [what, ratioText ? ` ratio ${ratioText}` : '', clutchText ? ` ahead clutch ${clutchText}` : ''].join(
    '',
  );
}
