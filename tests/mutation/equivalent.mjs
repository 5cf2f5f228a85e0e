// Mutants that no test could tell from the source, each with its reason: they are not tried and not counted.

/**
 * By the end of the path of a source (left out: any): what it says, what the mutant says instead, and why that is the
 * same. `to` left out stands for every mutant of `from`.
 */
const EQUIVALENT = [
  {
    from: /^(\w+)\.known \? \1\.value : undefined$/,
    to: /^\w+\.value$/,
    because: 'what is not known has no value',
  },
  {
    path: 'rotation/chain.ts',
    from: 'sense * factor.value',
    to: 'sense / factor.value',
    because: 'both are 1 or −1',
  },
  {
    path: 'rotation/twin.ts',
    from: 'engine * clutch.factor',
    to: 'engine / clutch.factor',
    because: 'both are 1 or −1',
  },
  ...[
    ['<', '<='],
    ['>', '>='],
  ].map(([from, to]) => ({
    path: 'train/linear-equations.ts',
    from: new RegExp(` ${from} ZERO$`),
    to: new RegExp(` ${to} ZERO$`),
    because: 'a remainder of exactly what tells rounding from a number is neither',
  })),
  {
    path: 'train/linear-equations.ts',
    from: 'i === next || factor === 0',
    to: 'i === next',
    because: 'a factor of nought takes nothing off a row',
  },
  {
    path: 'train/train-ratio.ts',
    from: 'Math.abs(speed) < 1e-12',
    to: 'Math.abs(speed) <= 1e-12',
    because: 'a speed of exactly what tells rounding from a number is neither',
  },
  ...[
    ['<=', '<'],
    ['>=', '>'],
    ['<', '<='],
  ].map(([from, to]) => ({
    path: 'geometry/rounding-slack.ts',
    from: new RegExp(`^value ${from} `),
    to: new RegExp(`^value ${to} `),
    because: 'one part in 10⁹ is room for rounding, and which side its end lies on is rounding too',
  })),
  {
    path: 'geometry/length-stack.ts',
    from: /^(?:1|i \+ 1)$/,
    because: 'the number in a name only tells parts apart',
  },
  {
    path: 'geometry/weight-change.ts',
    from: /^(?:1|i \+ 1)$/,
    because: 'the number in a name only tells parts apart',
  },
  {
    path: 'hull/planing-resistance.ts',
    from: /^(?:!solved \|\| )?solved\.size >= MOST_SPEEDS$|^SOLVED\.size >= MOST_HULLS$/,
    because: 'how much is remembered shows in the time alone',
  },
  ...['resistanceWithin', 'equilibriumAt'].map(name => ({
    path: 'hull/planing-resistance.ts',
    from: `${name}(numbers, V, solved)`,
    to: `${name}(numbers, V, undefined as never)`,
    because: 'what was solved before is found again',
  })),
  {
    path: 'hull/planing-resistance.ts',
    from: /^last \+ 1 < steps/,
    to: /^last \+ 1 <= steps|^within/,
    because: 'behind the last speed there is none, at which nothing is within the limits',
  },
  {
    path: 'hull/speed-prediction.ts',
    from: /^(?:128|1e-9|1e-3)$/,
    because: 'how finely a root is looked for, and what only keeps a division from nought',
  },
];

const fits = (wanted, text) => (typeof wanted === 'string' ? wanted === text : wanted.test(text));

/** Whether a mutant of this source is known to be none. */
export function equivalentIn(path) {
  const rows = EQUIVALENT.filter(one => one.path === undefined || path.endsWith(one.path));
  return mutant =>
    rows.some(one => fits(one.from, mutant.from) && (one.to === undefined || fits(one.to, mutant.to)));
}
