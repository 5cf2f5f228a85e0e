type Kept = readonly (readonly [what: RegExp, because: string])[];

const SPANS = 'which spans there are is not known until the place of every bearing is';
const WHOLE = 'the masses and springs are one system: nothing is told of a part of it';
const OTHER_CHECK = 'the other half is told by the check of which it is the demand';

/** Numbers that a check told and does not tell while another fact is open, each with its reason: the fact and the number. */
export const HALF_NOT_TOLD: Readonly<Record<string, Kept>> = {
  'capacity/retained-propeller-overload': [
    [/10 % left to a trial$/, 'the power that reaches it stands there, of which that is a share'],
  ],
  'capacity/retained-propeller-light': [
    [/./, 'capacity/retained-propeller-overload waits for the same, and tells it'],
  ],
  'propeller/absorbed-power': [
    [/at full throttle$/, 'the balance of engine, hull and propeller is one computation'],
  ],
  'propeller/blade-area': [[/propeller thrust$/, 'propeller/absorbed-power tells the run that it is of']],
  'shafting/diameter': [
    [/^without shaft diameter by: /, 'by which criterion, with what factor, is the question'],
    [/^without power: /, 'what the shaft takes at a speed rests on the speed that stands with the power'],
  ],
  'shafting/combined-stress': [
    [
      /^without (tensile yield|diameter|at): /,
      'the column factor of the thrust rests on it, and the stress on that',
    ],
  ],
  'shafting/bearing-span': [[/^without at: /, SPANS]],
  'shafting/span-guide': [[/^without at: /, SPANS]],
  'shafting/propeller-whirl': [[/critical speed of an order$/, WHOLE]],
  'interface/torsional-stress': [[/./, WHOLE]],
  'interface/barred-range': [[/./, WHOLE]],
  'shafting/key-strength': [[/key length in/, OTHER_CHECK]],
};
