import { catalogueEntries } from '../support/examples.js';
import type { Seeded } from './seeded.js';

interface Named {
  readonly name: string;
  readonly text: string;
}

export const ENTRIES = catalogueEntries();
const ofKind = (kind: string): readonly Named[] => ENTRIES.filter(one => one.text.startsWith(`${kind} `));
const MATERIALS = ofKind('shaft material');

/** Words behind a word that opens a block of the entry: `rating medium`, `ratio 2.04:1`. */
const heads = ({ text }: Named, word: string): string[] =>
  [...text.matchAll(new RegExp(`^  ${word} (\\S+)`, 'gm'))].map(one => one[1]!);

export interface PartText {
  readonly role: string;
  readonly text: string;
}

/** Parts in their order, with the ways of running of a line that has several movers. */
export interface RandomLine {
  readonly parts: readonly PartText[];
  readonly modes: readonly string[];
}

/** A line of any sort that the language can say: one mover or two, shafts ahead of a box and behind it, a nozzle. */
export function newLine(random: Seeded): RandomLine {
  const sort = random.one(['plain', 'plain', 'plain', 'hybrid', 'motor', 'two engines', 'box'] as const);
  const engine = engineText(random);
  const motor = { role: 'motor', text: `motor ${random.one(ofKind('motor')).name}` };
  const rest = [
    { role: 'shaft', text: shaft(random) },
    { role: 'propeller', text: propeller(random) },
  ];
  switch (sort) {
    case 'plain':
      return { parts: [engine, ...dampers(random), gear(random), ...behind(random), ...rest], modes: [] };
    case 'hybrid':
      return {
        parts: beside(random, [engine, gear(random), ...rest], motor),
        modes: modes(random, [
          'driven by engine',
          'driven by motor',
          'driven by engine and motor  motor power at most 12 kW',
          'driven by engine  generator load 5 kW',
        ]),
      };
    case 'two engines':
      return {
        parts: [engine, random.chance(0.7) ? engine : engineText(random), gear(random), ...rest],
        modes: modes(random, ['driven by first engine', 'driven by second engine', 'driven by both engines']),
      };
    case 'motor':
      return { parts: [motor, ...(random.chance(0.5) ? [box(random)] : []), ...rest], modes: [] };
    case 'box':
      return {
        parts: [
          engine,
          gear(random),
          ...(random.chance(0.5) ? [{ role: 'shaft', text: shaft(random) }] : []),
          box(random),
          ...rest,
        ],
        modes: [],
      };
  }
}

/** Every role of the old line said again: kept, modified in something, or another one. */
export function revisedLine(random: Seeded, old: RandomLine): string[] {
  const fresh = newLine(random).parts;
  const spoken = new Set<string>();
  const parts = old.parts.flatMap(({ role }) => {
    if (spoken.has(role)) return [];
    spoken.add(role);
    const other = fresh.filter(one => one.role === role);
    if (random.chance(0.5) || other.length === 0) return [`retain ${role}`];
    // As many as there were: one of which nothing is said is asked for.
    const many = Math.max(other.length, old.parts.filter(one => one.role === role).length);
    return Array.from({ length: many }, (_, at) => `replace ${(other[at] ?? other.at(-1)!).text}`);
  });
  return random.chance(0.5) ? parts : [...parts, ...old.modes];
}

function engineText(random: Seeded): PartText {
  const engine = random.one(ofKind('engine'));
  return {
    role: 'engine',
    text: `engine ${engine.name} at ${random.one(heads(engine, 'rating'))} { flywheel aft }`,
  };
}

function gear(random: Seeded): PartText {
  const entry = random.one(ofKind('gear'));
  return {
    role: 'gear',
    text: `gear ${entry.name} ratio ${random.one(heads(entry, 'ratio'))} ahead clutch ${random.one(['A', 'B'])}`,
  };
}

function dampers(random: Seeded): PartText[] {
  return random.chance(0.5) ? [coupling(random, true)] : [];
}

function behind(random: Seeded): PartText[] {
  return random.chance(0.3) ? [coupling(random, false)] : [];
}

function coupling(random: Seeded, damps: boolean): PartText {
  const all = ofKind('coupling').filter(one => one.text.includes('kind damper') === damps);
  return { role: 'coupling', text: `coupling ${random.one(all).name}` };
}

/** The motor in front of the gear, behind it, or on the shaft. */
function beside(random: Seeded, parts: readonly PartText[], motor: PartText): PartText[] {
  const at = random.one([1, 2, 3]);
  return [...parts.slice(0, at), motor, ...parts.slice(at)];
}

function box(random: Seeded): PartText {
  const facts = [
    `kind ${random.one(['gear V-drive', 'chain V-drive', 'belt', 'chain', 'gears'])}`,
    `output ${random.one(['same', 'opposite'])} seen from aft`,
    `turns the line back ${random.one(['yes', 'no'])}`,
    `exact ${random.one(['1:1', '1.214:1', '1.5:1'])}`,
    ...(random.chance(0.6) ? [`torque at most ${random.one([400, 2400])} N.m`] : []),
    ...(random.chance(0.6) ? ['thrust at most 12 kN'] : []),
    ...(random.chance(0.6) ? [`input speed at most ${random.one([1200, 4000])} rpm`] : []),
  ];
  return { role: 'transfer', text: `transfer { ${facts.join('  ')} }` };
}

/** The first way of running and some of the others, as the language asks for. */
function modes(random: Seeded, all: readonly string[]): string[] {
  return all
    .filter((_, at) => at === 0 || random.chance(0.6))
    .map((one, at) => `mode ${['passage', 'harbour', 'boost', 'charging'][at]} { ${one} }`);
}

function shaft(random: Seeded): string {
  const diameter = random.one([35, 45, 55, 65, 80, 95]);
  const facts = [
    `material ${random.one(MATERIALS).name}`,
    `diameter ${diameter} mm`,
    `length ${random.one(['1.8', '2.9', '4.2', '6'])} m`,
    ...(random.chance(0.5) ? [`angle ${random.one([0, 3, 8, 12])} deg`] : []),
    ...(random.chance(0.4)
      ? [`coupling end diameter ${random.one([30, 45, 60, 85].filter(one => one <= diameter))} mm`]
      : []),
    ...(random.chance(0.4) ? [`overhang ${random.one([50, 120])} mm`] : []),
    ...(random.chance(0.5)
      ? [
          `bearing aft { kind strut  at ${random.one(['1.5', '2.6'])} m  length ${random.one([90, 240])} mm  housing bore 110 mm  lubrication water }`,
        ]
      : []),
  ];
  return `shaft { ${facts.join('  ')} }`;
}

function propeller(random: Seeded): string {
  const facts = [
    `hand ${random.one(['left', 'right'])}`,
    `blades ${random.one([3, 4, 5])}`,
    `diameter ${random.one([18, 24, 30, 44])} in`,
    `pitch ${random.one([14, 22, 30])} in`,
    ...(random.chance(0.7) ? [`area ratio ${random.one(['0.5', '0.72', '0.9'])}`] : []),
    ...(random.chance(0.5) ? [`tip clearance ${random.one([40, 110])} mm`] : []),
    ...(random.chance(0.4) ? ['material nickel-aluminium bronze'] : []),
    ...(random.chance(0.4) ? ['shaft depth 0.8 m'] : []),
    ...(random.chance(0.15) ? [`nozzle ${random.one(['N19A', 'other'])}  nozzle gap 7 mm`] : []),
    ...(random.chance(0.1) ? [`kind ${random.one(['folding', 'controllable pitch'])}`] : []),
  ];
  return `propeller { ${facts.join('  ')} }`;
}
