/*
 * The words that a value, header or sentence may be made of, each list once. The types of the model follow from them.
 */

/** What a part of a line is, in the order of the power flow. */
export const ROLES = ['engine', 'motor', 'coupling', 'gear', 'transfer', 'shaft', 'propeller'] as const;
/** What a revision does with a part. */
export const ACTIONS = ['replace', 'retain', 'modify', 'remove'] as const;
/** Why lines may differ from what is usual. */
export const REASONS = ['same hand', 'inward turning', 'unequal ratios'] as const;
export const SIDES = ['port', 'starboard', 'centre'] as const;
export const HANDS = ['left', 'right'] as const;
export const HULL_FORMS = ['planing', 'semi-displacement', 'displacement'] as const;

/** Which way a pair turns over the top, seen from aft. */
export const TURNS = ['outward', 'inward'] as const;
/** How a requirement bounds its quantity. */
export const BOUNDS = ['at least', 'at most', 'is'] as const;

/**
 * Duty words of the trade, lighter first; words on one step name the same class. Makers use the words differently:
 * any other word is compared only with itself.
 */
export const DUTY_STEPS = [
  ['pleasure', 'recreational'],
  ['light', 'light-duty'],
  ['medium', 'medium-duty', 'intermediate', 'intermittent'],
  ['heavy', 'heavy-duty'],
  ['continuous', 'workboat'],
] as const;
/** The word of each step that is offered. */
export const DUTY_CLASSES = DUTY_STEPS.map(([first]) => first);

/** How a value came to be known. */
export const EVIDENCE_KINDS = [
  'measured',
  'plate',
  'drawing',
  'sheet',
  'sister vessel',
  'hearsay',
  'assumed',
] as const;

/** Longer phrases first where one begins with the other. */
export const ROTATIONS = [
  'standard',
  'opposite',
  'clockwise',
  'counter-clockwise',
  'either by pump index',
  'either',
] as const;
/** Where a turning sense is looked at from. `front` is the end away from the flywheel. */
export const VIEWS = ['flywheel', 'front', 'aft', 'forward'] as const;
export const OUTPUT_SENSES = ['same', 'opposite'] as const;
/** How an output sense is looked at, where the line turns back. */
export const SEEN = ['from aft', 'each seen at its own end'] as const;
export const LAYOUTS = ['coaxial', 'parallel-offset', 'down-angle', 'V-drive', 'U-drive'] as const;
export const PILOT_KINDS = ['male', 'female'] as const;
/** How the wheels of a mesh meet: the words, and what they are called in the model. */
export const MESH_KINDS = [
  ['internal', 'internal'],
  ['by chain', 'chain'],
  ['by belt', 'belt'],
  ['bevel near', 'bevel near'],
  ['bevel far', 'bevel far'],
  ['external', 'external'],
] as const;
export const SHAFT_FORMULAS = [
  ['small-craft formula', 'small-craft'],
  ['class formula', 'class'],
] as const;

export const DAMAGES = ['broken', 'cracked', 'bent', 'worn', 'corroded', 'overheated', 'struck'] as const;
export const DAMAGE_PLACES = [
  'keyway',
  'taper',
  'thread',
  'coupling end',
  'section change',
  'bearing',
  'seal',
  'between bearings',
  'flange',
  'bolts',
  'blade',
  'hub',
  'teeth',
  'clutch',
  'housing',
  'elsewhere',
] as const;
export const NOZZLE_SECTIONS = ['none', 'N19A', 'N37', 'other'] as const;
export const BLADE_AREA_METHODS = [
  'Keller',
  'Burrill 2.5 %',
  'Burrill 5 %',
  'Burrill 10 %',
  'flat-face 10 %',
  'handbook loading',
] as const;
export const SPEED_METHODS = [
  'Savitsky',
  'Holtrop 1982',
  'Holtrop 1984',
  'given resistance',
  'given speed',
  'Crouch',
  'handbook displacement',
] as const;
export const DRIVEN_BY = [
  'engine',
  'motor',
  'engine and motor',
  'first engine',
  'second engine',
  'both engines',
] as const;
/** How pressure is taken to spread over the plates of a clutch. */
export const CLUTCH_MODELS = ['uniform wear', 'uniform pressure'] as const;
/** Conditions that engines are rated in. */
export const RATING_CONDITIONS = ['ISO-3046-1', 'IACS-M28'] as const;
/** What a constant of Crouch's formula takes and gives: its speed, power and mass. */
export const CROUCH_UNITS = ['kn hp lb', 'mph hp lb', 'kn kW kg'] as const;
/** Of a gear that joins two engines. */
export const INPUT_SHAFTS = ['first', 'second'] as const;
export const DRILLS = ['loss of control', 'full astern', 'stop', 'one engine'] as const;

/** Words that are usual where any word may stand. */
export const USUAL_WORDS = {
  standard: ['ISO-8665', 'ISO-3046-1', 'SAE-J1349'],
  'member of the train': ['sun', 'ring', 'carrier', 'none'],
  accessory: ['starter', 'alternator', 'raw-water-pump', 'coolant-pump'],
  'duty class': DUTY_CLASSES,
  'hull form': HULL_FORMS,
} as const;

/** Words that join the parts of a value. */
export const JOINING = [
  'at',
  'viewed',
  'from',
  'seen',
  'with',
  'on',
  'dated',
  'per',
  'year',
  'x',
  'factor',
] as const;
/** An open question, in the place of any value or of any part of one. */
export const UNKNOWN = 'unknown';

export type Joining = (typeof JOINING)[number];
export type Role = (typeof ROLES)[number];
export type Action = (typeof ACTIONS)[number];
export type EvidenceKind = (typeof EVIDENCE_KINDS)[number];
export type View = (typeof VIEWS)[number];
export type RotationWord = (typeof ROTATIONS)[number];
export type Hand = (typeof HANDS)[number];
export type Side = (typeof SIDES)[number];

export function isRole(word: string | undefined): word is Role {
  return (ROLES as readonly (string | undefined)[]).includes(word);
}

export function isAction(word: string | undefined): word is Action {
  return (ACTIONS as readonly (string | undefined)[]).includes(word);
}

/** Whether a part of this role says in its header which ratio is fitted. */
export function takesRatio(word: string | undefined): word is 'gear' | 'transfer' {
  return word === 'gear' || word === 'transfer';
}
