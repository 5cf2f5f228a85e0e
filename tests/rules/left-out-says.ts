/**
 * The properties whose absence says something in the trade, by the title of their block and their words, with what and why.
 * Everything else that is left out is taken as an open question, or is met by an estimate that an `unknown` is met by as well.
 */
export const LEFT_OUT_SAYS: Readonly<Record<string, string>> = {
  'gear in its line|ratio': 'a gear that is offered with one ratio has that one',
  'engine in its line|at': 'an engine with one rating is used at that one',
  'engine in its line|power take-off': 'an engine drives nothing else unless somebody fits it',
  'clutch|exact': 'a sheet gives a clutch a ratio of its own where it differs from that of its ratio',
  'clutch|clutch speed': 'a sheet gives it for a clutch behind a mesh; others turn with the input',
  'train|input': 'drivers are written in the order that power passes, the first is the input',
  'train|output': 'wheels are written in the order that power passes, the last is the output',
  'gear rating|from': 'a sheet bounds the speeds of a rating where it bounds them at all',
  'gear rating|for': 'a sheet tells fuels apart where its ratings differ by them',
  'gear rating|running': 'a sheet tells ahead and astern apart where its ratings differ by them',
  'input shaft|rotation': 'a sheet tells the two inputs apart where they take different rotations',
  'input shaft|speed at most': 'a sheet tells the two inputs apart where their speeds differ',
  'input shaft|exact': 'a sheet gives an input a ratio of its own where the two differ',
  'coupling in its line|passes thrust': 'its kind says so: a rigid coupling passes thrust, a joint does not',
  'coupling in its line|second joint angle': 'a coupling has one joint unless it is made with two',
  'flange|bolt class': 'bolts whose yield and strength are written need no class',
  'flange|bolt yield': 'the class stamped on a bolt is its yield',
  'flange|bolt tensile strength': 'the class stamped on a bolt is its strength',
  'shaft|bore': 'a shaft is solid unless it is bored',
  'shaft|taper large end': 'a taper is turned from the diameter of the shaft',
  'shaft|coupling end diameter': 'a shaft is as thick at its end unless it is turned down',
  'shaft|coupling key width': 'an end without a keyway has none; where one would decide, it is asked for',
  'shaft|runout': 'a record that was not taken cannot be stale',
  'shaft|fatigue statement': 'a calculation that exists is named',
  'damage|cause': 'what caused it is rarely known',
  'damage|made good': 'nothing was done unless it is written',
  'damage|made good on': 'the day is asked for where a record is held against it',
  'shaft section|bore': 'a bore goes through: a section says its own where it is another',
  'key|width': 'a key is as wide as its keyway',
  'key|tensile yield': 'the material of a key says its yield',
  'propeller in its line|kind': 'a propeller is fixed unless it is said to fold, feather or turn its blades',
  'propeller in its line|nozzle': 'a propeller turns in the open unless its nozzle is named',
  'dock step|shaft turns':
    'a step is judged by the pull; the sense of the shaft is noted where somebody looked',
  'propeller in its line|set for hand': 'only convertible blades are set; others are of their hand',
  'certificate|limited by': 'a certificate that a document limits names it',
  'engine in its line|damage': 'what happened to a part is written where something did',
  'motor in its line|damage': 'what happened to a part is written where something did',
  'gear in its line|damage': 'what happened to a part is written where something did',
  'transfer in its line|damage': 'what happened to a part is written where something did',
  'coupling in its line|damage': 'what happened to a part is written where something did',
  'shaft|damage': 'what happened to a part is written where something did',
  'propeller in its line|damage': 'what happened to a part is written where something did',
  'trial|ballast': 'ballast taken aboard for a trial is written',
  'drill|station': 'a vessel with one station is drilled from it',
  'drill|time': 'what was not taken is not written',
  'drill|distance': 'what was not taken is not written',
  'drill|engine speed': 'what was not read is not written',
  'drill|remark': 'what was seen is written',
  'helm|required by': 'which text applies is named where one does',
  // Blocks, which cannot be written as unknown at all.
  'coupling in its line|flange': 'a coupling with a flange describes it',
  'gear ratio|train': 'the declared sense and ratio stand; the train only proves them',
  'clutch|train': 'the declared sense and ratio stand; the train only proves them',
  'trial|dock': 'direction at the dock may be told as a whole',
  'trial|drill': 'a drill that was run is written',
  'helm|station': 'stations that are described are written; where passengers are carried they are asked for',
  'transfer in its line|train': 'the declared sense and ratio stand; the train only proves them',
};

/** Blocks in which nothing need be written: what is left out there is not chosen, or not filled in. */
export const CHOICES: Readonly<Record<string, string>> = {
  practice: 'what a practice does not set is as usual, and every verdict says which criterion judged',
  study: 'what a study shows is how it is told',
  project: 'what a project is filed under is read by no check',
  'open matter': 'who does what until when is read by no check',
  revision: 'who signed for a revision is read by no check',
  signature: 'who signed for a revision is read by no check',
  criteria: 'a criterion that nobody chooses is the usual one, and the verdict says which judged',
};

/** What is written otherwise settles these whatever they say, and they are asked for where nothing does. */
export const SETTLED_OTHERWISE: Readonly<Record<string, string>> = {
  'clutch|output':
    'the train of the clutch gives its sense; written as unknown it says that the train is doubted',
};
