import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/**
 * How often a loop runs may depend on how much a spec holds, never on how large a number in it is: a count of 1e308
 * cylinders must not be counted up to. A loop over a list ends with it; any other needs its line here, with what ends it.
 */
const ENDS: readonly (readonly [file: string, holds: string, end: string])[] = [
  ['cure/least-change.ts', 'stride <= strides', 'the strides that the code asks for'],
  ['cure/wanted-part.ts', 'taken.has', 'the entries that share a name'],
  ['analysis/weights.ts', 'names.has', 'the arrangements of the vessel'],
  ['compare/pairing.ts', 'round.has(at)', 'the things that are paired'],
  ['compare/statements.ts', 'map.has(free)', 'the statements that share a name'],
  ['document/to-markdown.ts', 'Math.min(6, level)', 'six'],
  ['drawing/lines-from-aft.ts', 'length: number', 'seven blades, others are drawn as three'],
  ['hull/monotone-curve.ts', 'piece < last', 'the points of the curve'],
  ['hull/planing-resistance.ts', 'steps', 'the steps that the code asks for'],
  ['hull/savitsky.ts', 'high < 1e6', 'twenty doublings'],
  ['hull/wake-thrust.ts', 'index <= last', 'the rows of the table'],
  ['propeller/engine-curve.ts', 'index < last', 'the rows of the curve'],
  ['propeller/polynomial.ts', 'power >= 0', 'the coefficients of the series'],
  ['propeller/roots.ts', 'pieces', 'the pieces that the code asks for'],
  ['rules/shafting/bolt-routes.ts', 'added <= more', 'MOST_MORE'],
  ['sections/check-parts.ts', 'common < shortest', 'the words of a phrase'],
  ['study/order.ts', 'judging.checks', 'the rules on the lines'],
  ['study/result.ts', 'at >= 0', 'the things that are varied'],
  ['study/search.ts', 'index < end', 'the combinations, a million at most'],
  ['study/search.ts', 'first < end', 'the combinations, a million at most'],
  ['study/search.ts', 'first + piece', 'the combinations of one piece'],
  ['study/search.ts', 'vesselWith', 'the combinations, of which one is known to go together'],
  ['study/search.ts', 'steps.next()', 'the end of the search'],
  ['train/linear-equations.ts', 'unknowns', 'the members of the train'],
  ['vibration/torsional/bisect-count.ts', 'wanted <= total', 'the inertias of the train'],
  ['vibration/torsional/bisect-count.ts', 'countBelow(top)', 'doubling leaves the number range'],
  ['vibration/torsional/bisect-count.ts', 'middle = high / 2', 'halving leaves no number between'],
  ['vibration/torsional/element-torques.ts', 'queue.pop()', 'the shafts of the train'],
  ['vibration/torsional/excitation-orders.ts', 'length: multiples', 'the multiples that the code asks for'],
  ['vibration/torsional/forced-response.ts', 'size', 'the inertias of the train'],
  ['vibration/torsional/referred-system.ts', 'queue.pop()', 'the shafts of the train'],
  ['vibration/torsional/square-system.ts', 'size', 'the rows of the system'],
  ['vibration/torsional/symmetric-eigen.ts', 'size', 'the rows of the matrix'],
  ['vibration/torsional/torsional-speeds.ts', 'queue.shift()', 'the shafts of the train'],
  ['working/render.ts', 'step.depth', 'how deep a working is'],
];

const FOLDERS = ['mechanics', 'vocabulary', 'drivetrain', 'sheet'];

/** Counted to a number in the code, a constant, or the length of a list; over a list; a queue that empties. */
const PLAIN = [
  /^for \((?:const|let) .* (?:of|in) /,
  /^for \(let \w+ = [^;]+; [^;]*\w+ <=? (?:\d+|[A-Z][A-Z_]+|[\w.!]+\.length)(?: &&[^;]*)?;/,
  /^Array\.from\(\{ length: (?:\d+|[A-Z][A-Z_]+|[\w.]+\.length)(?: [+-] 1)? \}/,
];

const A_LOOP = /\b(?:for|while) \(.*|\bdo \{.*|Array\.from\(\{ ?length.*|new Array\b.*|\.repeat\(.*/g;

interface Loop {
  readonly file: string;
  readonly text: string;
}

function loops(): Loop[] {
  return FOLDERS.flatMap(name => {
    const folder = join(import.meta.dirname, '../../packages', name, 'src');
    return readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter(path => path.endsWith('.ts'))
      .flatMap(path => loopsIn(readFileSync(join(folder, path), 'utf8'), path.replaceAll('\\', '/')));
  });
}

function loopsIn(text: string, file: string): Loop[] {
  return text
    .split('\n')
    .filter(line => !/^\s*(?:\*|\/\/|\/\*)/.test(line))
    .flatMap(line => line.match(A_LOOP) ?? [])
    .map(found => ({ file, text: found }));
}

const isPlain = ({ text }: Loop) => PLAIN.some(one => one.test(text));
const isExplained = ({ file, text }: Loop) =>
  ENDS.some(([path, holds]) => file === path && text.includes(holds));

describe('no loop counts up to a number of the author', () => {
  it('each that is not over a list says what ends it', () => {
    expect(loops().filter(one => !isPlain(one) && !isExplained(one))).toEqual([]);
  });

  it('and nothing is explained that is not there', () => {
    const all = loops().filter(one => !isPlain(one));
    const idle = ENDS.filter(
      ([path, holds]) => !all.some(one => one.file === path && one.text.includes(holds)),
    );
    expect(idle).toEqual([]);
  });

  it.each([
    'for (let count = now.count; count <= 2 * now.count; count += 1) {',
    'for (let ratio = first; ratio <= Math.min(1.05, first + 0.06); ratio += 0.01) {',
    'for (let steps = 1; steps * step <= highest; steps++) {',
    'Array.from({ length: cylinders.si }, (_, i) => i)',
    'while (high < wanted.si) high *= 2;',
  ])('sees %s', text => {
    expect(loopsIn(text, 'a.ts').filter(one => !isPlain(one))).toHaveLength(1);
  });

  it.each([
    'for (const one of all) {',
    'for (let i = 0; i < rows.length; i++)',
    'for (let i = 0; i < 80; i++) {',
  ])('and leaves %s alone', text => {
    expect(loopsIn(text, 'a.ts').every(isPlain)).toBe(true);
  });
});
