import { catalogueEntries } from '../support/examples.js';
import { type Seeded, seeded } from './seeded.js';

interface Named {
  readonly name: string;
  readonly text: string;
}

const ENTRIES = catalogueEntries();
const ofKind = (kind: string): readonly Named[] => ENTRIES.filter(one => one.text.startsWith(`${kind} `));
const MATERIALS = ofKind('shaft material');

/** Words behind a word that opens a block of the entry: `rating medium`, `ratio 2.04:1`. */
const heads = ({ text }: Named, word: string): string[] =>
  [...text.matchAll(new RegExp(`^  ${word} (\\S+)`, 'gm'))].map(one => one[1]!);

/** A vessel of random parts of the example catalogue, mostly ill matched: its text with the entries that it names. */
export function randomSpec(seed: number): string {
  const random = seeded(seed);
  const twin = random.chance(0.4);
  const names = twin ? ['Port', 'Starboard'] : ['Centre'];
  const lines = new Map(names.map(name => [name, newLine(random)]));
  const arrangements = [
    block(
      'arrangement existing',
      [...lines].map(([name, parts]) =>
        lineText(
          name,
          parts.map(one => one.text),
        ),
      ),
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

interface PartText {
  readonly role: string;
  readonly text: string;
}

function newLine(random: Seeded): PartText[] {
  const engine = random.one(ofKind('engine'));
  const gear = random.one(ofKind('gear'));
  const damper = ofKind('coupling').filter(one => one.text.includes('kind damper'));
  const behind = ofKind('coupling').filter(one => !one.text.includes('kind damper'));
  return [
    {
      role: 'engine',
      text: `engine ${engine.name} at ${random.one(heads(engine, 'rating'))} { flywheel aft }`,
    },
    ...(random.chance(0.5) ? [{ role: 'coupling', text: `coupling ${random.one(damper).name}` }] : []),
    {
      role: 'gear',
      text: `gear ${gear.name} ratio ${random.one(heads(gear, 'ratio'))} ahead clutch ${random.one(['A', 'B'])}`,
    },
    ...(random.chance(0.3) ? [{ role: 'coupling', text: `coupling ${random.one(behind).name}` }] : []),
    { role: 'shaft', text: shaft(random) },
    { role: 'propeller', text: propeller(random) },
  ];
}

/** Every role of the old line said again: kept, modified in something, or another one. */
function revisedLine(random: Seeded, old: readonly PartText[]): string[] {
  const fresh = newLine(random);
  const spoken = new Set<string>();
  return old.flatMap(({ role }) => {
    if (spoken.has(role)) return [];
    spoken.add(role);
    const other = fresh.filter(one => one.role === role);
    if (random.chance(0.5) || other.length === 0) return [`retain ${role}`];
    return other.map(one => `replace ${one.text}`);
  });
}

function shaft(random: Seeded): string {
  const facts = [
    `material ${random.one(MATERIALS).name}`,
    `diameter ${random.one([35, 45, 55, 65, 80, 95])} mm`,
    `length ${random.one(['1.8', '2.9', '4.2', '6'])} m`,
    ...(random.chance(0.5) ? [`angle ${random.one([0, 3, 8, 12])} deg`] : []),
    ...(random.chance(0.4) ? [`coupling end diameter ${random.one([30, 45, 60, 85])} mm`] : []),
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
  ];
  return `propeller { ${facts.join('  ')} }`;
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
