import { RULES } from '@tailshaft/drivetrain';
import { randomFrom } from '../../packages/language/test/server/random.js';
import { exampleSpecs, joinedExample } from '../support/examples.js';

/** Specs that are mutated: those of the examples with their catalogue, and those of the rules. */
const bases = [
  ...exampleSpecs.map(joinedExample),
  ...RULES.map(rule => rule.examples().failing),
  ...RULES.map(rule => rule.examples().passing),
];

const NUMBERS = [
  '0',
  '-1',
  '1e9',
  '1e-9',
  '1e308',
  '0.5',
  '1/0',
  '1 3/4',
  '٣',
  '12:1',
  '..',
  '1,5',
  'unknown',
];
const SCRAPS = [
  ...[
    '{',
    '}',
    '{}',
    '[',
    ']',
    '"',
    '//',
    '/*',
    '*/',
    '\\',
    ',',
    ':1',
    '\r\n',
    '\r',
    '\t',
    '\u2028',
    '\ufeff',
  ],
  ...[
    '\u0000',
    '\u202e',
    '🚢',
    'ø',
    'unknown',
    'import "x"\n',
    'retain',
    'gear',
    'revises',
    'mirrors',
    'at',
    '..',
  ],
];

type Random = (limit: number) => number;
type Change = (text: string, random: Random) => string;

const one = <T>(of: readonly T[], random: Random): T => of[random(of.length)]!;

/** Lines from one on that make a block, or the line alone. */
function blockAt(lines: readonly string[], from: number): number {
  let depth = 0;
  for (let at = from; at < lines.length; at++) {
    depth += (lines[at]!.match(/\{/g)?.length ?? 0) - (lines[at]!.match(/\}/g)?.length ?? 0);
    if (depth <= 0) return at + 1;
  }
  return lines.length;
}

const byLines = (change: (lines: string[], at: number, end: number, random: Random) => void): Change => {
  return (text, random) => {
    const lines = text.split('\n');
    const at = random(lines.length);
    change(lines, at, blockAt(lines, at), random);
    return lines.join('\n');
  };
};

const CHANGES: readonly Change[] = [
  byLines((lines, at, end) => void lines.splice(at, end - at)),
  byLines((lines, at, end) => void lines.splice(at, 0, ...lines.slice(at, end))),
  byLines((lines, at, end, random) => {
    const moved = lines.splice(at, end - at);
    lines.splice(random(lines.length + 1), 0, ...moved);
  }),
  byLines((lines, at) => void lines.splice(at, 1)),
  byLines((lines, at, _, random) => {
    const other = random(lines.length);
    [lines[at], lines[other]] = [lines[other]!, lines[at]!];
  }),
  (text, random) => {
    const numbers = [...text.matchAll(/\d+(?:\.\d+)?/g)];
    if (numbers.length === 0) return text;
    const found = one(numbers, random);
    return text.slice(0, found.index) + one(NUMBERS, random) + text.slice(found.index + found[0].length);
  },
  (text, random) => {
    const words = [...text.matchAll(/[a-z]+/gi)];
    if (words.length < 2) return text;
    const found = one(words, random);
    return text.slice(0, found.index) + one(words, random)[0] + text.slice(found.index + found[0].length);
  },
  (text, random) => {
    const at = random(text.length + 1);
    return text.slice(0, at) + one(SCRAPS, random) + text.slice(at + random(4));
  },
];

/** A spec with one to four changes: the same one for the same seed. */
export function mutated(seed: number): { base: string; text: string } {
  const random = randomFrom(((seed * 7919) % 2147483646) + 1);
  for (let skipped = 0; skipped < 3; skipped++) random(2);
  const base = one(bases, random);
  let text = base;
  for (let left = 1 + random(4); left > 0; left--) text = one(CHANGES, random)(text, random);
  return { base, text };
}
