/** Sets of inputs just within a relation and just beyond it, in the order of their names. */
interface Relation {
  readonly inputs: readonly string[];
  readonly within: readonly (readonly number[])[];
  readonly beyond: readonly (readonly number[])[];
}

/** One number beside another that is 1. */
const ABOVE = { within: [[1.000_001, 1], [9, 1]], beyond: [[1, 1], [0.999_999, 1], [0, 1]] }; // biome-ignore format: pairs
const NOT_ABOVE = { within: [[1, 1], [0.999_999, 1], [0, 1]], beyond: [[1.000_001, 1], [9, 1]] }; // biome-ignore format: pairs
const POSITIVE_PAIR = { within: [[1e-6, 1e-6], [1, 9]], beyond: [[0, 1], [1, 0], [-1, 1], [1, -1], [-1, -1], [0, 0]] }; // biome-ignore format: pairs
const QUARTER = { within: [[1.25, 1], [0.75, 1], [1, 1]], beyond: [[1.250_01, 1], [0.749_99, 1]] }; // biome-ignore format: pairs
/** Outside before inside. */
const RING = { within: [[1, 0.999_999], [1, 0.5]], beyond: [[1, 1], [1, 1.000_001]] }; // biome-ignore format: pairs

const pair = (one: string, other: string, rows: Omit<Relation, 'inputs'>): Relation => ({
  inputs: [one, other],
  ...rows,
});

const THIRD = { within: [[1.333_333, 1], [0.666_667, 1], [1, 1]], beyond: [[1.333_4, 1], [0.666_6, 1], [0, 1]] }; // biome-ignore format: pairs

/** By the words of the condition; several where formulas name the same inputs otherwise. */
export const RELATIONS: Readonly<Record<string, readonly Relation[]>> = {
  'the power is at least half of that of the declared point: below, an engine burns more for each unit of work':
    [
      pair('power', 'declaredPower', { within: [[0.5, 1], [0.500_001, 1], [2, 1]], beyond: [[0.499_999, 1], [0, 1]] }), // biome-ignore format: pairs
    ],
  'the power lies between those of the declared points': [
    {
      inputs: ['power', 'lowerPower', 'upperPower'],
      within: [[1, 1, 2], [1.5, 1, 2], [2, 1, 2]], // biome-ignore format: rows
      beyond: [[0.999_999, 1, 2], [2.000_001, 1, 2]], // biome-ignore format: rows
    },
  ],
  'powers within a third of each other': [pair('power', 'referencePower', THIRD)],
  'the bore is smaller than the outside diameter': [
    pair('outsideDiameter', 'bore', { within: [...RING.within, [1, 0]], beyond: RING.beyond }),
  ],
  'the bore is not negative and smaller than the outside diameter': [
    pair('d', 'di', { within: [...RING.within, [1, 0]], beyond: [...RING.beyond, [1, -0.000_001]] }),
  ],
  'the collar is larger outside than inside': [pair('outsideDiameter', 'insideDiameter', RING)],
  'the piston is a ring or a disc': [
    pair('outsideDiameter', 'insideDiameter', {
      within: [...RING.within, [1, 0]],
      beyond: [...RING.beyond, [1, -0.000_001]],
    }),
  ],
  'the outer radius is above the inner one, and that above zero': [
    pair('outerRadius', 'innerRadius', {
      within: [...RING.within, [1, 1e-9]],
      beyond: [...RING.beyond, [1, 0], [1, -1]],
    }),
  ],
  'the shaft goes into the bearing': [pair('bearingBore', 'shaftDiameter', ABOVE)],
  'the shaft passes the tube': [pair('tubeBore', 'shaftDiameter', ABOVE)],
  'the tip clears the hull': [
    pair('axisToHull', 'propellerDiameter', { within: [[0.500_001, 1]], beyond: [[0.5, 1], [0.499_999, 1]] }), // biome-ignore format: pairs
  ],
  'block at most prismatic': [pair('blockCoefficient', 'prismaticCoefficient', NOT_ABOVE)],
  'the shaft at the key is thinner than the rule diameter or equal': [
    pair('diameterAtKey', 'ruleDiameter', NOT_ABOVE),
  ],
  'the speed is at most the motor’s greatest': [pair('speed', 'greatestSpeed', NOT_ABOVE)],
  'the load is at most half the dynamic rating': [
    pair('equivalentLoad', 'dynamicRating', { within: [[0.5, 1], [0.49, 1]], beyond: [[0.500_001, 1]] }), // biome-ignore format: pairs
  ],
  'the span is at least 10 diameters, a slender shaft': [
    pair('span', 'outsideDiameter', { within: [[10, 1], [11, 1]], beyond: [[9.999_99, 1]] }), // biome-ignore format: pairs
  ],
  'the critical speed is below 0.8 of rated speed: no barred range is allowed above (from memory)': [
    pair('criticalSpeed', 'ratedSpeed', { within: [[0.799_999, 1]], beyond: [[0.8, 1], [0.800_001, 1]] }), // biome-ignore format: pairs
  ],
  'the bolt is at least as strong as the shaft and at most 1.7 times': [
    pair('boltTensileStrength', 'shaftTensileStrength', { within: [[1, 1], [1.7, 1]], beyond: [[0.999_999, 1], [1.700_01, 1]] }), // biome-ignore format: pairs
  ],
  'mass is left after the change': [
    pair('displacement', 'massChange', { within: [[1, -0.999_999], [1, 5]], beyond: [[1, -1], [1, -1.000_001]] }), // biome-ignore format: pairs
  ],
  'the change is at most a tenth of the displacement; beyond, the stability book must be done again': [
    pair('displacement', 'massChange', { within: [[1, 0.1], [1, -0.1], [1, 0]], beyond: [[1, 0.100_01], [1, -0.100_01]] }), // biome-ignore format: pairs
  ],
  'the mass sits between the supports': [pair('a', 'b', POSITIVE_PAIR)],
  'both inertias are positive': [pair('J1', 'J2', POSITIVE_PAIR)],
  'both stiffnesses are positive': [pair('k1', 'k2', POSITIVE_PAIR)],
  'both diameters above zero': [pair('referenceDiameter', 'diameter', POSITIVE_PAIR)],
  'both pitches above zero': [pair('referencePitch', 'pitch', POSITIVE_PAIR)],
  'both powers above zero': [pair('referencePower', 'power', POSITIVE_PAIR)],
  'both speeds above zero': [pair('referenceSpeed', 'speed', POSITIVE_PAIR)],
  'both ratios are above zero': [pair('assumed', 'actual', POSITIVE_PAIR)],
  'demand and limit are above zero': [pair('torqueLimit', 'demandTorque', POSITIVE_PAIR)],
  'beam and hull draught above zero': [pair('waterlineBeam', 'hullDraught', POSITIVE_PAIR)],
  'the propeller drives: KT and KQ above zero': [
    pair('thrustCoefficient', 'torqueCoefficient', POSITIVE_PAIR),
  ],
  'the shaft turns and the pitch is above zero': [pair('shaftSpeed', 'pitch', POSITIVE_PAIR)],
  'diameters within a quarter of each other': [pair('diameter', 'referenceDiameter', QUARTER)],
  'pitches within a quarter of each other': [pair('pitch', 'referencePitch', QUARTER)],
  'length over beam 3.9 to 9.5 (from memory)': [
    pair('waterlineLength', 'beam', { within: [[3.9, 1], [9.5, 1], [6, 1]], beyond: [[3.899_99, 1], [9.500_01, 1]] }), // biome-ignore format: pairs
  ],
  'the take-off asks less than the engine gives': [
    pair('power', 'takeOff', { within: [[1, 0.999_999], [1, 0]], beyond: [[1, 1], [1, 1.000_001]] }), // biome-ignore format: pairs
  ],
  'hours a year from 0 to the 8766 of a year, years not negative': [
    pair('hoursPerYear', 'years', { within: [[0, 0], [8766, 1]], beyond: [[8766.01, 1], [-0.01, 1], [1, -0.01]] }), // biome-ignore format: pairs
  ],
  'plates alternate: the two counts are whole, above zero and differ by at most one': [
    pair('driving', 'driven', { within: [[3, 3], [3, 4], [4, 3], [1, 1]], beyond: [[3, 5], [5, 3], [0, 1], [1, 0], [2.5, 3], [3, 2.5]] }), // biome-ignore format: pairs
  ],
  'sea margin 0 to 50 %, engine margin 0 to 30 %': [
    pair('seaMargin', 'engineMargin', { within: [[0, 0], [0.5, 0.3]], beyond: [[0.500_01, 0.1], [0.1, 0.300_01], [-0.000_01, 0.1], [0.1, -0.000_01]] }), // biome-ignore format: pairs
  ],
  'relative humidity from 0 to 100 %': [
    pair('humidity', 'referenceHumidity', { within: [[0, 0], [1, 1]], beyond: [[1.000_01, 0.5], [0.5, 1.000_01], [-0.000_01, 0.5], [0.5, -0.000_01]] }), // biome-ignore format: pairs
  ],
  'both joint angles are below 90 degrees and lie in one plane': [
    pair('firstAngle', 'secondAngle', { within: [[1.5707, -1.5707], [0, 0]], beyond: [[1.5708, 0], [0, 1.5708], [-1.5708, 0]] }), // biome-ignore format: pairs
  ],
  'all three inertias are positive': [
    { inputs: ['J1', 'J2', 'J3'], within: [[1, 1, 1]], beyond: [[0, 1, 1], [1, 0, 1], [1, 1, 0], [-1, 1, 1]] }, // biome-ignore format: rows
  ],
  'something is left at the small end': [
    { inputs: ['largeEnd', 'taperLength', 'taper'], within: [[1, 2, 0.499_999]], beyond: [[1, 2, 0.5], [1, 2, 0.51]] }, // biome-ignore format: rows
  ],
  'something is left there': [
    { inputs: ['largeEnd', 'distance', 'taper'], within: [[1, 2, 0.499_999]], beyond: [[1, 2, 0.5], [1, 2, 0.51]] }, // biome-ignore format: rows
  ],
  'the hull fits in the box of its length, beam and draught': [
    {
      inputs: ['displacedVolume', 'waterlineLength', 'beam', 'draught'],
      within: [[6, 1, 2, 3], [5, 1, 2, 3]], // biome-ignore format: rows
      beyond: [[6.000_01, 1, 2, 3]],
    },
  ],
};
