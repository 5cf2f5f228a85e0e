import { ENTRIES, newLine, revisedLine } from './random-line.js';
import { type Seeded, seeded } from './seeded.js';

/** A vessel of random parts of the example catalogue, mostly ill matched: its text with the entries that it names. */
export function randomSpec(seed: number): string {
  const random = seeded(seed);
  const twin = random.chance(0.4);
  const names = twin ? ['Port', 'Starboard'] : ['Centre'];
  const lines = new Map(names.map(name => [name, newLine(random)]));
  const arrangements = [
    block(
      'arrangement existing',
      [...lines].map(([name, { parts, modes }]) => lineText(name, [...parts.map(one => one.text), ...modes])),
    ),
  ];
  if (random.chance(0.6)) {
    const revised = names.map(name => lineText(name, revisedLine(random, lines.get(name)!)));
    arrangements.push(block('arrangement proposed revises existing', revised));
  }
  const spec = block('vessel Randomly', [duty(random), hull(random), ...arrangements, ...criteria(random)]);
  const words = new Set(spec.match(/[\w-]+/g));
  return [...ENTRIES.filter(one => words.has(one.name)).map(one => one.text), spec].join('\n');
}

function duty(random: Seeded): string {
  const word = random.one(['pleasure', 'light', 'medium', 'heavy', 'continuous']);
  return `duty ${word} { hours ${random.one([300, 1500, 4000])} per year  passengers ${random.one(['none', 'carried'])} }`;
}

function hull(random: Seeded): string {
  return random.chance(0.5)
    ? 'hull planing { waterline length 10.9 m  displacement 11.8 t  chine beam 2.9 m  deadrise 20 deg  LCG 3.7 m  VCG 1.1 m }'
    : 'hull displacement { waterline length 11.6 m  displacement 19.5 t  resistance 1.6 kN at 5 kn  resistance 4.5 kN at 7 kn  resistance 13 kN at 9 kn  wake fraction 0.2  thrust deduction 0.17 }';
}

function criteria(random: Seeded): string[] {
  const facts = [
    'gear torque margin at least 5 %',
    'tip clearance at least 15 %',
    'blade area by Keller',
    'tip speed at most 38 m/s',
    'shaft diameter by small-craft formula factor 5.0',
  ].filter(() => random.chance(0.3));
  const wanted = ['require propellers turn outward', 'require speed at least 8 kn at full power'];
  return [
    ...(facts.length > 0 ? [block('criteria', facts)] : []),
    ...wanted.filter(() => random.chance(0.3)),
  ];
}

const lineText = (name: string, parts: readonly string[]): string => block(`shaftline ${name}`, parts);

function block(head: string, statements: readonly string[]): string {
  return `${head} {\n${statements.map(one => `  ${one}\n`).join('')}}`;
}
