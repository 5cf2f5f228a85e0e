export * from './assumable.js';
export * from './facts/index.js';
export * from './header.js';
export * from './kinds.js';
export * from './lookup.js';
export * from './meanings.js';
export { amount, inUnit, numberIn, quantityOf, ratioTo1 } from './new-quantity.js';
export * from './new-value.js';
export * from './range.js';
export * from './relations.js';
export * from './requirable.js';
export { spell, spellQuantity } from './spell.js';
export * from './statements.js';
export * from './units.js';
export * from './words.js';
export { AHEAD_CLUTCH, CRITERIA, PROPELLER, RATED_AT, SHAFT_MATERIAL };

import { ENGINE, ENGINE_PLACE, MOTOR, MOTOR_PLACE, RATED_AT } from './engine.js';
import { AHEAD_CLUTCH, GEAR, GEAR_PLACE, TRANSFER, TRANSFER_PLACE } from './gear.js';
import type { HEADER_ROWS } from './header.js';
import { HELM } from './helm.js';
import type { BlockRow, Row, Vocabulary } from './kinds.js';
import { MODE } from './mode.js';
import { PRACTICE } from './practice.js';
import { PROJECT, REVISION } from './record.js';
import { COUPLING, COUPLING_PLACE, PROPELLER, PROPELLER_PLACE, SHAFT, SHAFT_MATERIAL } from './shafting.js';
import type { StatementWord } from './statements.js';
import { STUDY } from './study.js';
import { TRIAL } from './trial.js';
import { CERTIFICATE, CRITERIA, DUTY, HULL } from './vessel.js';
import type { Role } from './words.js';

/** What a catalogue entry of each kind may say. */
const ENTRIES = {
  engine: ENGINE,
  motor: MOTOR,
  gear: GEAR,
  transfer: TRANSFER,
  coupling: COUPLING,
  'shaft material': SHAFT_MATERIAL,
  propeller: PROPELLER,
  practice: PRACTICE,
} as const;

/** What a part may say at its place in a line: everything of its entry, and how it stands there. */
const PLACES = {
  engine: ENGINE_PLACE,
  motor: MOTOR_PLACE,
  gear: GEAR_PLACE,
  transfer: TRANSFER_PLACE,
  coupling: COUPLING_PLACE,
  shaft: SHAFT,
  propeller: PROPELLER_PLACE,
} as const satisfies Record<Role, Vocabulary>;

/** What the blocks of a vessel may say. */
const SETTINGS = {
  duty: DUTY,
  hull: HULL,
  criteria: CRITERIA,
  certificate: CERTIFICATE,
  helm: HELM,
  trial: TRIAL,
  project: PROJECT,
  revision: REVISION,
  study: STUDY,
} as const;

/** What the ways of running of a line may say. */
export const MODE_VOCABULARY: Vocabulary = MODE;

export type EntryKind = keyof typeof ENTRIES;
export type SettingsKind = keyof typeof SETTINGS;

export const ENTRY_VOCABULARY: Readonly<Record<string, Vocabulary>> = ENTRIES;
export const PLACE_VOCABULARY: Readonly<Record<string, Vocabulary>> = PLACES;
export const VESSEL_VOCABULARY: Readonly<Record<string, Vocabulary>> = SETTINGS;
export function isEntryKind(kind: string): kind is EntryKind {
  return Object.hasOwn(ENTRIES, kind);
}

/** The vocabularies by kind, with the fields and words of their rows in their types. */
export interface Vocabularies {
  readonly entries: typeof ENTRIES;
  readonly places: typeof PLACES;
  readonly settings: typeof SETTINGS;
}

type WordsOf<V> =
  V extends Vocabulary<infer R extends Row, infer B extends BlockRow>
    ? R['words'] | B['words'] | WordsOf<B['block']>
    : never;

/** Words or a phrase that properties and statements begin with. What names one by this type follows when it is renamed. */
export type Spelling =
  | WordsOf<
      (typeof ENTRIES)[EntryKind] | (typeof PLACES)[Role] | (typeof SETTINGS)[SettingsKind] | typeof MODE
    >
  | (typeof HEADER_ROWS)[keyof typeof HEADER_ROWS]['words']
  | EntryKind
  | StatementWord;

/** A word of the text as one that the language may know, so that the compiler holds what it is compared with to the tables. */
export function asSpelling(text: string | undefined): Spelling | undefined {
  return text as Spelling | undefined;
}
