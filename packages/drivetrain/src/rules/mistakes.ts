/** One way in which a drivetrain goes wrong, by its number in the catalogue of mistakes. */
export interface Mistake {
  /** `R01`; the letter is the subject. */
  readonly number: string;
  readonly title: string;
  /** What a person has to see and record, where a spec before the work cannot show the mistake. */
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
  { number: 'R03', title: 'Nobody asked whether that clutch may run ahead' },
  { number: 'R04', title: 'Rotation without the end it is seen from' },
  { number: 'R05', title: 'Rotation read at the front taken for that at the flywheel' },
  { number: 'R06', title: 'Engine of the other rotation, propeller kept' },
  { number: 'R07', title: 'Engines of a pair on each other’s side' },
  { number: 'R08', title: 'Gears of a pair on each other’s side' },
  { number: 'R09', title: 'Both propellers of a pair of one hand' },
  { number: 'R10', title: 'Pair turns inward and nobody says why' },
  { number: 'R11', title: 'Another ratio of the same gear turns its output the other way' },
  { number: 'R12', title: 'Engine that faces aft, or a line turned back, left out of account' },
  { number: 'R13', title: 'Oil pump of the gear not set for its input rotation' },
  { number: 'R14', title: 'Starter, water pump or fan made for the other rotation' },
  { number: 'R15', title: 'Shift cable works the lever the wrong way' },
  { number: 'R16', title: 'Folding or feathering propeller assembled for the other hand' },
  { number: 'R17', title: 'Rotation known from hearsay only' },
  { number: 'R18', title: 'Controllable pitch propeller behind a reversing gear' },

  { number: 'T01', title: 'Nominal ratio used where the exact one is known' },
  { number: 'T02', title: 'Ratio of the clutch that is not the ahead one' },
  { number: 'T03', title: 'Ratios of a pair differ' },
  { number: 'T04', title: 'Kept shaft carries more torque behind a deeper ratio' },
  { number: 'T05', title: 'More torque into the gear than this ratio is rated for' },
  { number: 'T06', title: 'Rating of the gear read at another speed' },
  { number: 'T07', title: 'Rating of the gear for lighter duty than that of the vessel' },
  { number: 'T08', title: 'Rating of the gear for engines of the other fuel' },
  { number: 'T09', title: 'Engine turns the gear faster than it may' },
  { number: 'T10', title: 'Power without class, hours or standard' },
  { number: 'T11', title: 'Power at the crankshaft taken for power at the propeller shaft' },
  { number: 'T12', title: 'Power take-off left out of the account' },
  { number: 'T13', title: 'Kept propeller asks for more power than there is' },
  { number: 'T14', title: 'Kept propeller leaves power unused' },
  { number: 'T15', title: 'Same vessel speed now wants more engine speed, and nobody told the owner' },
  { number: 'T16', title: 'Too fast with the engine idling in gear' },
  { number: 'T17', title: 'Idles slower than the gear needs for its oil pressure' },
  { number: 'T18', title: 'Slow running asked of a gear that has no slip device' },
  { number: 'T19', title: 'More power aboard than the certificate says' },
  { number: 'T20', title: 'Motor chosen by the engine power it is said to equal' },

  { number: 'P01', title: 'Propeller too large for its opening' },
  { number: 'P02', title: 'Tip clearance lost to a change of diameter, wrongly reckoned' },
  { number: 'P03', title: 'Clearance of rudder or strut not known' },
  { number: 'P04', title: 'Blade tips too fast' },
  { number: 'P05', title: 'Blade area too small for the thrust' },
  { number: 'P06', title: 'Size stamped on the hub taken for the size of the blades' },
  { number: 'P07', title: 'Pitches of a pair further apart than their making explains' },
  { number: 'P08', title: 'Bore and shaft of different taper' },
  { number: 'P09', title: 'Bore and taper of the same name and different size' },
  { number: 'P10', title: 'Keyways that are not alike' },
  { number: 'P11', title: 'Hub too long or too short for the taper' },
  { number: 'P12', title: 'Cup of the blades not said' },
  { number: 'P13', title: 'Rule of thumb for pitch carried over to another sort of vessel' },
  { number: 'P14', title: 'Propeller ordered without a tolerance class' },
  { number: 'P15', title: 'Metals that eat each other, without protection' },

  { number: 'L01', title: 'Shaft thinner than the chosen criterion asks' },
  { number: 'L02', title: 'Factor of the shaft formula for lighter service' },
  { number: 'L03', title: 'Shaft of an unnamed grade' },
  { number: 'L04', title: 'Weaker grade at the old diameter' },
  { number: 'L05', title: 'Bearings so far apart that the shaft whirls in its running range' },
  { number: 'L06', title: 'Span of the bearings outside the usual band of diameters' },
  { number: 'L07', title: 'Packed gland that held the shaft up is gone' },
  { number: 'L08', title: 'Propeller too far behind its bearing' },
  { number: 'L09', title: 'Tube, strut or bearing too narrow for the new shaft' },
  { number: 'L10', title: 'Coupling flanges that do not meet' },
  { number: 'L11', title: 'Bore or key of the half coupling does not fit the shaft' },
  { number: 'L12', title: 'Flexible coupling weaker than the torque in it' },
  { number: 'L13', title: 'Flexible coupling bought to cure misalignment' },
  { number: 'L14', title: 'Joint in the line and nothing behind it that takes the thrust' },
  { number: 'L15', title: 'Gear that took the thrust removed' },
  { number: 'L16', title: 'More thrust than its bearing may carry' },
  { number: 'L17', title: 'Engine or shaft steeper than allowed' },
  { number: 'L18', title: 'Angles of engine, gear and shaft that do not add up' },
  { number: 'L19', title: 'Lengths along the line that do not add up' },
  { number: 'L20', title: 'Soft mounts on a line that cannot move' },
  { number: 'L21', title: 'Mounts not rated for the thrust and torque that reach them' },
  { number: 'L22', title: 'Water-lubricated bearing or seal without water' },
  { number: 'L23', title: 'Shaft examination that falls into the work, left out' },

  { number: 'I01', title: 'Flywheel housings of different size' },
  { number: 'I02', title: 'Damper that does not sit in the flywheel' },
  { number: 'I03', title: 'Damper not matched to the engine' },
  { number: 'I04', title: 'Splines of damper and gear input that differ' },
  { number: 'I05', title: 'No torsional statement after the system changed' },
  { number: 'I06', title: 'Engine that does not fit its space or its way out' },
  { number: 'I07', title: 'Weight or balance changed more than the stability record allows' },
  { number: 'I08', title: 'Mounts that do not stand on the beds' },
  { number: 'I09', title: 'Gear without cooler or without gauges' },
  { number: 'I10', title: 'Nobody asked whether the gear may turn with its engine stopped' },

  { number: 'U01', title: 'Horsepower of an unnamed kind' },
  { number: 'U02', title: 'Statute and nautical miles mixed up' },
  { number: 'U03', title: 'US and imperial gallons mixed up' },
  { number: 'U04', title: 'Metric and inch sizes that nearly agree' },
  { number: 'U05', title: 'Tons of an unnamed kind' },
  { number: 'U06', title: 'Torque without its unit' },
  { number: 'U07', title: 'Tensile yield taken for torsional yield' },
  { number: 'U08', title: 'Round ratio that may not be exact' },
  { number: 'U09', title: 'Data sheet old or undated' },
  {
    number: 'U10',
    title: 'Delivered part that is not the one ordered',
    toSee:
      'Delivered parts held against this sheet before they go aboard: plates, serial and suffix, exact ratio, rotation, pump setting, housing, flange, hand stamped on the hub; what differs is sent back, or becomes a new revision',
  },
  { number: 'U11', title: 'Value copied from a sister vessel' },
  { number: 'U12', title: 'Acceptance that has run out, or that nobody gave' },
  { number: 'U13', title: 'Requirement that nothing verifies' },

  {
    number: 'V01',
    title: 'Engine does not reach its rated speed at full throttle',
    toSee:
      'Speed at full throttle, loaded and clean, against rated speed: where it falls short, tachometer, throttle travel, fuel and air are looked at before the propeller',
  },
  {
    number: 'V02',
    title: 'Engine runs on its governor at full throttle',
    toSee:
      'Speed at full throttle against the governor: an engine held there has a light propeller; whether that is reserve meant for growth and fouling is written down',
  },
  {
    number: 'V03',
    title: 'Trial run light, or with a foul bottom',
    toSee:
      'State of the trial: displacement, fuel, water, people, state of hull and propeller, wind, depth; a trial run light is run again loaded',
  },
  {
    number: 'V04',
    title: 'Tachometer never checked',
    toSee:
      'Each tachometer held against an independent counter at two speeds or more, with both readings recorded',
  },
  {
    number: 'V05',
    title: 'Engines of a pair at different speed or load under the same lever',
    toSee:
      'Both engines of a pair at the same lever: speed and load recorded for each; more than 2 to 3 % between them is traced to ratio, pitch or throttle travel',
  },
  {
    number: 'V06',
    title: 'No record of direction at the dock',
    toSee:
      'Direction at the dock: with the vessel made fast and at low power, each side alone and from every control station, lever ahead pulls ahead; each shaft watched and its turn recorded',
  },
  {
    number: 'V07',
    title: 'No record of going astern and stopping',
    toSee:
      'Full astern and a stop from full speed, with time, distance and engine speeds recorded, and no overload of the engine astern',
  },
  {
    number: 'V08',
    title: 'Helm does not show which way the shafts turn',
    toSee:
      'Indication of shaft or thrust direction at every helm, where passengers are carried; shown to work in both directions',
  },
];
