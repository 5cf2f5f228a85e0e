/**
 * A figure, or a day, that cannot be above another one of the same thing: where it is, one of the two is wrong. Of a range it
 * is the lower end that cannot be above, and the upper end that nothing else can be above.
 */
export interface Relation {
  readonly less: string;
  /** Fields of the same block, `^field` of the part around it, `sections.diameter` of blocks in it: the greatest counts. */
  readonly than: readonly string[];
  /** How often the other it may be, where that is not once. */
  readonly times?: number;
}

/** Days of something that was done: one that is still to come is a slip. Others are days by which something is due. */
export const DONE_ON: readonly string[] = ['examined', 'dated', 'madeGoodOn'];

/**
 * Days of statements of which one cannot be before the other. The survey is what was measured of the vessel as found; a document
 * is what the facts of a part come from. `grave` where either date must be wrong; else the text may only lack a later issue.
 */
export const ORDER_OF_DAYS = [
  { before: 'survey', after: 'trial', grave: true },
  { before: 'document', after: 'trial', grave: false },
  { before: 'document', after: 'revision', grave: false },
] as const;

const at = (less: string, ...than: string[]): Relation => ({ less, than });

/**
 * What holds between figures of one block, by its title, whatever is built: geometry, and definitions of the trade. Where it is
 * more than that, the factor says so.
 */
export const RELATIONS: Readonly<Record<string, readonly Relation[]>> = {
  shaft: [
    at('couplingEnd', 'diameter', 'sections.diameter'),
    at('taperLargeEnd', 'diameter', 'sections.diameter'),
    at('keywayWidth', 'diameter', 'sections.diameter'),
    at('couplingKeyWidth', 'couplingEnd', 'diameter'),
    at('taperLength', 'length'),
    at('bearingSpan', 'length'),
    at('overhang', 'length'),
    at('examined', 'examDue'),
  ],
  damage: [at('dated', 'madeGoodOn')],
  key: [
    at('width', '^diameter', '^sections.diameter'),
    at('height', '^diameter', '^sections.diameter'),
    at('length', '^length'),
  ],
  bearing: [at('bore', 'housingBore'), at('collarInside', 'collarOutside')],
  'shaft material': [
    at('torsionalYield', 'tensileYield'),
    at('tensileYield', 'tensileStrength'),
    at('enduranceLimit', 'tensileStrength'),
    at('shearModulus', 'youngsModulus'),
  ],
  coupling: [at('keyWidth', 'bore'), at('bore', 'flange.outsideDiameter')],
  flange: [
    at('boltCircle', 'outsideDiameter'),
    at('pilot', 'boltCircle'),
    at('bolts', 'boltCircle'),
    at('boltYield', 'boltStrength'),
  ],
  propeller: [
    at('boreLargeEnd', 'diameter'),
    at('keywayWidth', 'boreLargeEnd'),
    at('hubLength', 'diameter'),
    at('nozzleGap', 'diameter'),
    // A design pitch that the blades cannot be set to.
    at('pitch', 'pitchRange'),
    at('pitchRange', 'pitch'),
    // Blades are as long developed as expanded, and as wide within some percent: common practice, no source.
    { less: 'developedAreaRatio', than: ['areaRatio'], times: 1.15 },
    { less: 'areaRatio', than: ['developedAreaRatio'], times: 1.15 },
  ],
  clutch: [at('innerDiameter', 'outerDiameter'), at('pistonInnerDiameter', 'pistonOuterDiameter')],
  gear: [at('inputSpeedMin', 'inputSpeedMax')],
  train: [at('sunTeeth', 'ringTeeth'), at('planetTeeth', 'ringTeeth')],
  engine: [at('installedAngleMax', 'runningAngleMax')],
  motor: [at('installedAngleMax', 'runningAngleMax'), at('power', 'peakPower')],
  hull: [
    at('beam', 'waterlineLength'),
    at('chineBeam', 'beam'),
    at('gravityForward', 'waterlineLength'),
    at('lightship', 'displacement'),
    // By definition: block is prismatic × midship, and none of them is above 1.
    at('blockCoefficient', 'prismaticCoefficient'),
    at('blockCoefficient', 'midshipCoefficient'),
    at('blockCoefficient', 'waterplaneCoefficient'),
  ],
};
