/** One way in which a drivetrain goes wrong, by its number in the catalogue of mistakes. */
export interface Mistake {
  /** `R01`; the letter is the subject. */
  readonly number: string;
  readonly title: string;
  /** What the inspector has to confirm and record, where a spec before the work cannot show the mistake. */
  readonly toSee?: string;
}

export const MISTAKE_SUBJECTS: Readonly<Record<string, string>> = {
  R: 'Rotation, hand, side',
  T: 'Ratio, speed, torque',
  P: 'Propeller',
  L: 'Shaft line',
  I: 'Interfaces and fit',
  U: 'Units, identity, papers',
  V: 'Trials and running',
};

/**
 * The catalogue of mistakes, complete. Each is either held by the rules that carry its number, or stands on the
 * checklist of the sheet with the words of `toSee`.
 */
export const MISTAKES: readonly Mistake[] = [
  { number: 'R01', title: 'Propeller of the wrong hand for the way its shaft turns ahead' },
  { number: 'R02', title: 'Ahead in a clutch that must not carry full power ahead' },
  { number: 'R03', title: 'Permission of the ahead clutch not asked for' },
  { number: 'R04', title: 'Rotation without its viewpoint' },
  { number: 'R05', title: 'Rotation read from the front taken as read from the flywheel' },
  { number: 'R06', title: 'Engine of opposite rotation, propeller retained' },
  { number: 'R07', title: 'Engines of a handed pair exchanged' },
  { number: 'R08', title: 'Gears of a handed pair exchanged' },
  { number: 'R09', title: 'Both propellers of a twin of the same hand' },
  { number: 'R10', title: 'Inward-turning pair without a reason' },
  { number: 'R11', title: 'Change of ratio that reverses the output sense' },
  { number: 'R12', title: 'Reversed engine or turned-back line not allowed for' },
  { number: 'R13', title: 'Gear oil pump not set for the input rotation' },
  { number: 'R14', title: 'Starter, water pump or fan for the opposite rotation' },
  { number: 'R15', title: 'Shift cable that moves the lever the wrong way' },
  { number: 'R16', title: 'Folding or feathering propeller assembled for the other hand' },
  { number: 'R17', title: 'Rotation known by hearsay only' },
  { number: 'R18', title: 'Controllable pitch propeller behind a reversing gear' },

  { number: 'T01', title: 'Nominal ratio used where the exact one is known' },
  { number: 'T02', title: 'Ratio of the wrong clutch' },
  { number: 'T03', title: 'Ratios of a pair differ' },
  { number: 'T04', title: 'Retained shaft carries more torque behind a deeper ratio' },
  { number: 'T05', title: 'Input torque above the gear rating at this ratio' },
  { number: 'T06', title: 'Gear rating read at another speed' },
  { number: 'T07', title: 'Gear rating for lighter duty than that of the vessel' },
  { number: 'T08', title: 'Gear rating for engines of the other fuel' },
  { number: 'T09', title: 'Governed speed above the gear’s greatest input speed' },
  { number: 'T10', title: 'Power without class, hours or standard' },
  { number: 'T11', title: 'Crankshaft power taken for propeller shaft power' },
  { number: 'T12', title: 'Power take-off not allowed for' },
  { number: 'T13', title: 'Retained propeller absorbs more power than there is' },
  { number: 'T14', title: 'Retained propeller leaves power unused' },
  { number: 'T15', title: 'Same vessel speed now needs more engine speed, and the owner was not told' },
  { number: 'T16', title: 'Too fast with the engine idling in gear' },
  { number: 'T17', title: 'Idle below the gear’s least input speed' },
  { number: 'T18', title: 'Slow running with a gear that has no slip device' },
  { number: 'T19', title: 'Installed power above the certificate' },
  { number: 'T20', title: 'Motor chosen by the engine power it is said to equal' },

  { number: 'P01', title: 'Propeller too large for its opening' },
  { number: 'P02', title: 'Tip clearance wrongly computed after a change of diameter' },
  { number: 'P03', title: 'Clearance to rudder or strut not known' },
  { number: 'P04', title: 'Tip speed too high' },
  { number: 'P05', title: 'Blade area too small for the thrust' },
  { number: 'P06', title: 'Stamped size taken for the measured size' },
  { number: 'P07', title: 'Pitches of a pair further apart than their tolerances' },
  { number: 'P08', title: 'Bore and shaft with different tapers' },
  { number: 'P09', title: 'Bore and taper of the same nominal size that differ' },
  { number: 'P10', title: 'Keyways of different width' },
  { number: 'P11', title: 'Hub too long or too short for the taper' },
  { number: 'P12', title: 'Cup not stated' },
  { number: 'P13', title: 'Rule of thumb for pitch from another kind of vessel' },
  { number: 'P14', title: 'Propeller ordered without a tolerance class' },
  { number: 'P15', title: 'Dissimilar metals in contact without protection' },

  { number: 'L01', title: 'Shaft thinner than the chosen criterion requires' },
  { number: 'L02', title: 'Shaft safety factor for lighter service' },
  { number: 'L03', title: 'Shaft of an unnamed grade' },
  { number: 'L04', title: 'Weaker grade at the old diameter' },
  { number: 'L05', title: 'Bearing span that whirls in the running range' },
  { number: 'L06', title: 'Bearing span outside the usual band of diameters' },
  { number: 'L07', title: 'Packed gland that supported the shaft removed' },
  { number: 'L08', title: 'Too much propeller overhang' },
  { number: 'L09', title: 'Tube, strut or bearing too narrow for the new shaft' },
  { number: 'L10', title: 'Coupling flanges that do not match' },
  { number: 'L11', title: 'Half-coupling bore or key that does not fit the shaft' },
  { number: 'L12', title: 'Torque above the coupling rating' },
  { number: 'L13', title: 'Flexible coupling used to cover misalignment' },
  { number: 'L14', title: 'Joint without a thrust bearing behind it' },
  { number: 'L15', title: 'Gear that carried the thrust removed' },
  { number: 'L16', title: 'Thrust above the bearing rating' },
  { number: 'L17', title: 'Engine or shaft steeper than allowed' },
  { number: 'L18', title: 'Angles of engine, gear and shaft that do not add up' },
  { number: 'L19', title: 'Lengths along the line that do not add up' },
  { number: 'L20', title: 'Soft mounts on a rigid line' },
  { number: 'L21', title: 'Mounts not rated for their thrust and torque' },
  { number: 'L22', title: 'Water-lubricated bearing or seal without a water supply' },
  { number: 'L23', title: 'Shaft examination due during the work, left out' },

  { number: 'I01', title: 'Flywheel housings of different size' },
  { number: 'I02', title: 'Damper that does not sit flat on the flywheel' },
  { number: 'I03', title: 'Damper not matched to the engine' },
  { number: 'I04', title: 'Splines of damper and gear input that differ' },
  { number: 'I05', title: 'No torsional statement after the system changed' },
  { number: 'I06', title: 'Engine that does not fit its space or access' },
  { number: 'I07', title: 'Weight or balance outside the stability record' },
  { number: 'I08', title: 'Engine mounts that do not line up with the beds' },
  { number: 'I09', title: 'Gear without cooler or without gauges' },
  { number: 'I10', title: 'Freewheeling with the engine stopped not asked about' },

  { number: 'U01', title: 'Horsepower of an unstated kind' },
  { number: 'U02', title: 'Statute and nautical miles mixed up' },
  { number: 'U03', title: 'US and imperial gallons mixed up' },
  { number: 'U04', title: 'Metric and inch sizes that nearly agree' },
  { number: 'U05', title: 'Tons of an unstated kind' },
  { number: 'U06', title: 'Torque without its unit' },
  { number: 'U07', title: 'Tensile yield taken for torsional yield' },
  { number: 'U08', title: 'Round ratio that may not be exact' },
  { number: 'U09', title: 'Data sheet old or undated' },
  {
    number: 'U10',
    title: 'Delivered part that is not the one ordered',
    toSee:
      'Delivered parts compared with this sheet before they go aboard: plates, serial and suffix, exact ratio, rotation, pump setting, housing, flange, hand stamped on the hub; send back what differs, or issue a new revision',
  },
  { number: 'U11', title: 'Value copied from a sister vessel' },
  { number: 'U12', title: 'Acceptance that has expired, or that nobody signed' },
  { number: 'U13', title: 'Requirement that nothing verifies' },

  {
    number: 'V01',
    title: 'Engine does not reach its rated speed at full throttle',
    toSee:
      'Speed at full throttle, loaded and clean, against rated speed: where it falls short, check tachometer, throttle travel, fuel and air before the propeller',
  },
  {
    number: 'V02',
    title: 'Engine on its governor at full throttle',
    toSee:
      'Speed at full throttle against the governor: an engine held there has a light propeller; record whether that is a reserve for growth and fouling',
  },
  {
    number: 'V03',
    title: 'Trial run light, or with a foul bottom',
    toSee:
      'State of the trial: displacement, fuel, water, people, state of hull and propeller, wind, depth; repeat a light trial loaded',
  },
  {
    number: 'V04',
    title: 'Tachometer never checked',
    toSee:
      'Each tachometer compared with an independent counter at two speeds or more, with both readings recorded',
  },
  {
    number: 'V05',
    title: 'Engines of a pair at different speed or load under the same lever',
    toSee:
      'Both engines of a pair at the same lever: speed and load recorded for each; trace more than 2 to 3 % between them to ratio, pitch or throttle travel',
  },
  {
    number: 'V06',
    title: 'No record of direction at the dock',
    toSee:
      'Direction at the dock: with the vessel made fast and at low power, each side alone and from every control station, lever ahead drives ahead; watch each shaft and record its rotation',
  },
  {
    number: 'V07',
    title: 'No record of going astern and stopping',
    toSee:
      'Full astern and a stop from full speed, with time, distance and engine speeds recorded, and no overload of the engine astern',
  },
  {
    number: 'V08',
    title: 'No indication of thrust direction at the helm',
    toSee:
      'Indication of shaft or thrust direction at every helm, where passengers are carried; proven in both directions',
  },
];
