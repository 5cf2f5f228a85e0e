/** Sets of inputs just within a relation and just beyond it, in the order of their names. */
export interface Relation {
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

const POUND = 0.453_592_37;
const LONG_TON = 2240 * POUND;
const HORSE = 550 * POUND * 9.806_65 * 0.3048;

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
  'bearing bore larger than the shaft': [pair('bearingBore', 'shaftDiameter', ABOVE)],
  'tube bore larger than the shaft': [pair('tubeBore', 'shaftDiameter', ABOVE)],
  'the tip clears the hull': [
    pair('axisToHull', 'propellerDiameter', { within: [[0.500_001, 1]], beyond: [[0.5, 1], [0.499_999, 1]] }), // biome-ignore format: pairs
  ],
  'block at most prismatic': [pair('blockCoefficient', 'prismaticCoefficient', NOT_ABOVE)],
  'shaft diameter at the key at most the rule diameter': [pair('diameterAtKey', 'ruleDiameter', NOT_ABOVE)],
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
  'change at most a tenth of the displacement; beyond that the stability calculations must be redone': [
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
  'take-off power below engine power': [
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
    pair('firstAngle', 'secondAngle', { within: [[1.5707, -1.5707], [0, 0]], beyond: [[1.5708, 0], [0, 1.5708], [-1.5708, 0], [Math.PI / 2, 0]] }), // biome-ignore format: pairs
  ],
  'all three inertias are positive': [
    { inputs: ['J1', 'J2', 'J3'], within: [[1, 1, 1]], beyond: [[0, 1, 1], [1, 0, 1], [1, 1, 0], [-1, 1, 1]] }, // biome-ignore format: rows
  ],
  'diameter at the small end above zero': [
    { inputs: ['largeEnd', 'taperLength', 'taper'], within: [[1, 2, 0.499_999]], beyond: [[1, 2, 0.5], [1, 2, 0.51]] }, // biome-ignore format: rows
  ],
  'diameter there above zero': [
    { inputs: ['largeEnd', 'distance', 'taper'], within: [[1, 2, 0.499_999]], beyond: [[1, 2, 0.5], [1, 2, 0.51]] }, // biome-ignore format: rows
  ],
  'displaced volume at most length × beam × draught': [
    {
      inputs: ['displacedVolume', 'waterlineLength', 'beam', 'draught'],
      within: [[6, 1, 2, 3], [5, 1, 2, 3]], // biome-ignore format: rows
      beyond: [[6.000_01, 1, 2, 3]],
    },
  ],
  'the oil overcomes the return springs': [
    // π/4 (2² − 1²) m² of 1 MPa: 2 356 194.5 N.
    {
      inputs: ['oilPressure', 'outsideDiameter', 'insideDiameter', 'springForce'],
      within: [[1e6, 2, 1, 2_356_194], [2e6, 2, 1, 4_712_388], [1e6, 2, 0, 3_141_592], [1, 2, 1, 0]], // biome-ignore format: rows
      beyond: [[1e6, 2, 1, 2_356_195], [2e6, 2, 1, 4_712_390], [1e6, 2, 0, 3_141_593], [0, 2, 1, 0]], // biome-ignore format: rows
    },
  ],
  'dry air pressure is above zero': [
    {
      inputs: ['pressure', 'humidityFactor', 'humidity', 'saturation'],
      within: [[100, 1, 0.5, 199], [100, 0.5, 1, 199], [100, 0, 1, 999], [1, 1, 0, 999]], // biome-ignore format: rows
      beyond: [[100, 1, 0.5, 200], [100, 0.5, 1, 200], [100, 1, 1, 100], [100, 2, 1, 51]], // biome-ignore format: rows
    },
  ],
  'hull straight over the disc, rising aft by δ; shaft falling aft by α; together below 45 degrees': [
    pair('shaftAngle', 'hullRise', {
      within: [[0.7853, 0], [0, 0.7853], [-0.7853, 0], [0.4, 0.385], [0.9, -0.2]], // biome-ignore format: pairs
      beyond: [[0.7854, 0], [0, 0.7854], [-0.7854, 0], [0.4, 0.386], [0.9, -0.1], [Math.PI / 4, 0]], // biome-ignore format: pairs
    }),
  ],
  'open propeller at the bollard': [
    pair('diameter', 'power', { within: [[1e-6, 0], [1, 1]], beyond: [[0, 1], [-1, 1], [1, -1e-6]] }), // biome-ignore format: pairs
  ],
  'shock factors are 1 to 3: 1.5 and 1 steady, up to 2 and 1.5 with shock': [
    pair('bendingFactor', 'torsionFactor', {
      within: [[1, 1], [3, 3], [1, 3], [3, 1]], // biome-ignore format: pairs
      beyond: [[0.999, 1], [1, 0.999], [3.001, 1], [1, 3.001]], // biome-ignore format: pairs
    }),
  ],
  'tooth counts are whole and above zero': [
    {
      inputs: ['sun', 'ring', 'planet', 'driver', 'driven'],
      within: [[1, 1, 1, 1, 1], [20, 60, 20, 17, 31]], // biome-ignore format: rows
      beyond: [0, 1, 2, 3, 4].flatMap(at => [0, -1, 1.5].map(bad => [20, 60, 20, 17, 31].with(at, bad))),
    },
  ],
  'displacement-length ratio 60 to 600': [
    // Long tons, over the cube of hundreds of feet: 100 ft and 50 ft.
    pair('displacement', 'waterlineLength', {
      within: [[60.01 * LONG_TON, 30.48], [599.9 * LONG_TON, 30.48], [7.51 * LONG_TON, 15.24], [74.9 * LONG_TON, 15.24]], // biome-ignore format: pairs
      beyond: [[59.99 * LONG_TON, 30.48], [600.1 * LONG_TON, 30.48], [7.49 * LONG_TON, 15.24], [75.1 * LONG_TON, 15.24]], // biome-ignore format: pairs
    }),
  ],
  'power at most what the hull can use; beyond it the speed shown is the cap and the method does not apply': [
    // 100 ft and 100 long tons: 8.26 / 100^0.311 = 1.97233 = 10.665 / (224 000 lb / P)^(1/3), so P = 1416.8 hp.
    {
      inputs: ['displacement', 'power', 'waterlineLength'],
      within: [[100 * LONG_TON, 1416 * HORSE, 30.48]],
      beyond: [[100 * LONG_TON, 1418 * HORSE, 30.48]],
    },
  ],
  'planing: speed-length ratio of the result at least 2.5 (from memory); below it this hull does not plane': [
    // 25 ft: 12.5 kn = 200 √(P / 20 000 lb), so P = 78.125 hp.
    {
      inputs: ['power', 'displacement', 'constant', 'waterlineLength'],
      within: [[78.2 * HORSE, 20_000 * POUND, 200, 7.62]],
      beyond: [[78.0 * HORSE, 20_000 * POUND, 200, 7.62]],
    },
  ],
  // √(9.80665 · 40) = 19.806 m/s.
  'Froude number up to 0.45 (from memory)': [
    pair('vesselSpeed', 'waterlineLength', { within: [[8.91, 40], [0, 40]], beyond: [[8.92, 40], [-0.01, 40]] }), // biome-ignore format: pairs
  ],
  'Froude number up to 0.82, about the fastest of the worked example (from memory)': [
    pair('vesselSpeed', 'waterlineLength', { within: [[16.23, 40], [0, 40]], beyond: [[16.25, 40], [-0.01, 40]] }), // biome-ignore format: pairs
  ],
  'expanded area ratio within 0.05 of the one tested with its number of blades: 0.65 of 3, 0.70 of 4, 0.75 of 5':
    [
      pair('blades', 'areaRatio', {
        within: [[3, 0.601], [3, 0.699], [4, 0.651], [4, 0.749], [5, 0.701], [5, 0.799]], // biome-ignore format: pairs
        beyond: [[3, 0.599], [3, 0.701], [4, 0.649], [4, 0.751], [5, 0.699], [5, 0.801], [6, 0.7], [2, 0.7]], // biome-ignore format: pairs
      }),
    ],
  // Oosterveld and Van Oossanen 1975, the propellers of the series (from memory, as the condition says).
  'expanded area ratio among those tested for this number of blades (from memory)': [
    pair('blades', 'areaRatio', {
      within: [[2, 0.3], [3, 0.35], [3, 0.8], [4, 0.4], [4, 1], [5, 0.45], [5, 1.05], [6, 0.5], [6, 0.8], [7, 0.55], [7, 0.85]], // biome-ignore format: pairs
      beyond: [[2, 0.29], [2, 0.31], [3, 0.34], [3, 0.81], [4, 0.39], [4, 1.01], [5, 0.44], [5, 1.06], [6, 0.49], [6, 0.81], [7, 0.54], [7, 0.86], [8, 0.6], [1, 0.3]], // biome-ignore format: pairs
    }),
  ],
};
