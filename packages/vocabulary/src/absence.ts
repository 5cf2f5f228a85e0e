/** What a property is taken as when it is left out. */
export interface Absence {
  /** In words: `a solid shaft`. */
  readonly as: string;
  /** The product estimates it, and says so: then `unknown` is met by the same estimate. Otherwise `unknown` is an open question. */
  readonly estimated: boolean;
}

/** What is said of a property by its block and its words; undefined where its absence is an open question. */
export function absenceOf(block: string, words: string): Absence | undefined {
  const said = ABSENCE[block]?.[words];
  return said === undefined ? undefined : { as: said.replace(/^~ /, ''), estimated: said.startsWith('~ ') };
}

/** Blocks by title, properties by words. `~` stands before what the product estimates. */
const ABSENCE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  bearing: {
    bore: 'bored for the shaft',
    'housing bore': 'made for its bearing',
    'water from': 'where the check asks for it, an open question',
  },
  certificate: {
    'limited by': 'no document limits the power',
  },
  clutch: {
    'clamp force': 'worked out from piston, pressure and spring',
    'clutch speed': 'the input speed',
    exact: 'that of the ratio',
    faces: 'worked out from the plates',
    'friction plates': 'no data of the plates',
    'steel plates': 'no data of the plates',
    'inner diameter': 'no data of the plates',
    'outer diameter': 'no data of the plates',
    'piston inner diameter': 'a piston without a hole',
    'piston outer diameter': 'no data of the piston',
    train: 'the declared sense and ratio stand alone',
  },
  'gear ratio': {
    train: 'the declared sense and ratio stand alone',
    exact: 'the nominal ratio, as a rounded figure',
  },
  transfer: {
    train: 'the declared sense and ratio stand alone',
    efficiency: '~ 97 % unless the vessel assumes another',
  },
  coupling: {
    bore: 'a coupling without a bore',
    'dynamic magnifier': '~ no damping counted',
    flange: 'a coupling without a flange',
    inertia: '~ no inertia counted',
    'joint angle': 'a coupling without a joint',
    'second joint angle': 'a single joint',
    'key width': 'a coupling without a key',
    length: 'no length along the line',
    'passes thrust': 'thrust passes a rigid coupling',
    'relative damping': '~ no damping counted',
    'torsional stiffness': 'rigid against the rest of the line',
    'vibratory torque at most': 'no limit stated',
  },
  'engine in its line': {
    'air humidity': '~ reference conditions of the rating',
    'air pressure': '~ reference conditions of the rating',
    'air temperature': '~ reference conditions of the rating',
    'charge coolant temperature': '~ reference conditions of the rating',
    'power take-off': 'no power take-off',
    'space length': 'no limit to the space',
    'space width': 'no limit to the space',
    'space height': 'no limit to the space',
    'way out length': 'no limit on the way out',
    'way out width': 'no limit on the way out',
  },
  'engine rating': {
    source: 'the source of the entry',
    'measured at': 'at the crankshaft',
  },
  engine: {
    'dynamic magnifier': '~ no damping counted',
  },
  flange: {
    'bolt class': 'what the bolt strengths say',
    'bolt tensile strength': 'what the bolt class says',
    'bolt yield': 'what the bolt class says',
    thickness: 'not compared',
  },
  'gear in its line': {
    'expected output': 'nothing expected',
    'pump set for': 'a gear whose pump turns either way',
  },
  'gear rating': {
    for: 'whatever the fuel',
    from: 'at all speeds of the gear',
    running: 'ahead and astern',
    torque: 'stated in another form',
    power: 'stated in another form',
    'power per speed': 'stated in another form',
  },
  gear: {
    efficiency: '~ 97 % unless the vessel assumes another',
    'installed angle at most': 'no limit stated',
    'running angle at most': 'no limit stated',
    'oil pressure': 'no data of the oil',
    reversing: 'a reversing gear',
    'thrust at most': 'no thrust bearing rated',
  },
  hull: {
    LCB: '~ estimated by the method',
    'block coefficient': '~ estimated by the method',
    'midship coefficient': '~ estimated by the method',
    'prismatic coefficient': '~ estimated by the method',
    'thrust deduction': '~ estimated by the method',
    'wake fraction': '~ estimated by the method',
    'water density': '~ sea water',
    'waterplane coefficient': '~ estimated by the method',
    'wetted surface': '~ estimated by the method',
  },
  key: {
    'tensile yield': 'that of its material',
    width: 'that of the keyway',
  },
  'propeller in its line': {
    'axis to hull': 'measured by the tip clearance',
    'bore large end': 'not yet ordered',
    'bore taper': 'not yet ordered',
    'hub length': '~ estimated from the diameter',
    'keyway width': 'not yet ordered',
    material: 'not yet ordered',
    'effective pitch': 'the pitch',
    kind: 'a fixed propeller',
    series: '~ the series that suits its area ratio',
    'set for hand': 'as its hand says',
    'stamped diameter': 'no stamp read',
    'stamped pitch': 'no stamp read',
    'tip clearance': 'what the axis to the hull leaves',
    'tolerance class': 'asked for where it is ordered',
    'damping factor': '~ a published mean value',
  },
  'shaft material': {
    'endurance limit': 'fatigue is not judged',
    metal: 'where the check asks for it, an open question',
    'tensile strength': 'judged by the torsional yield',
  },
  'shaft section': {
    bore: 'that of the shaft',
  },
  shaft: {
    bore: 'a solid shaft',
    'coupling end diameter': 'the diameter of the shaft',
    'coupling key width': 'no key at the coupling',
    'seal water from': 'a seal without a supply',
    seal: 'no seal stated',
    'taper large end': 'the diameter of the shaft',
    'taper length': 'no taper',
    'tube bore': 'no tube',
  },
  train: {
    input: 'the first driver',
    output: 'the last driven wheel',
  },
  'trial run': {
    'shaft power': 'not read',
    'shaft speed': 'not read',
    speed: 'not read',
  },
  propeller: {
    'axis to hull': 'measured by the tip clearance',
    'bore large end': 'not yet ordered',
    'bore taper': 'not yet ordered',
    'hub length': '~ estimated from the diameter',
    'keyway width': 'not yet ordered',
    material: 'not yet ordered',
    'effective pitch': 'the pitch',
    kind: 'a fixed propeller',
    series: '~ the series that suits its area ratio',
    'set for hand': 'as its hand says',
    'stamped diameter': 'no stamp read',
    'stamped pitch': 'no stamp read',
    'tip clearance': 'what the axis to the hull leaves',
    'tolerance class': 'asked for where it is ordered',
    'damping factor': '~ a published mean value',
  },
};
